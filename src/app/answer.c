#include "trammel-config.h"
#include "app/answer.h"
#include <glib/gi18n-lib.h>
#include "app/answer-fields.h"
#include "app/caption.h"
#include "app/explain-button.h"
#include "app/fit-offer.h"
#include "app/group.h"
#include "app/theme.h"
#include "app/tooltip.h"
#include "drawing/chord-figure.h"
#include "figures/unweighed.h"
#include "figures/usual-whole.h"

struct _TrammelAnswer {
  GtkWidget parent;
  TrammelSession *session;
  GtkWidget *column;
  GtkWidget *mark_figure, *mark_unit, *mark_place, *margin_figure, *margin_sigma, *band_words;
  GtkWidget *station_button, *band_button, *chord, *headline, *type_mass, *airframe, *mass_buttons, *move, *second, *second_line;
  GPtrArray *fields;      /* of TrammelField in the two popovers, lent */
};

static guint mass_wanted_signal;

G_DEFINE_FINAL_TYPE (TrammelAnswer, trammel_answer, GTK_TYPE_WIDGET)

static void
answer_draw_chord (GtkDrawingArea *area, cairo_t *cr, int width, int height, gpointer data)
{
  TrammelAnswer *self = TRAMMEL_ANSWER (data);
  const Look look = theme_look (GTK_WIDGET (self));

  draw_chord_figure (cr, &look, trammel_session_figures (self->session), width, height);
}

static void
answer_show_band (TrammelAnswer *self)
{
  const Target target = aeroplane_traits (trammel_session_aeroplane (self->session)).target;
  g_autofree char *from = units_number_exact (target.from);
  g_autofree char *to = units_number_exact (target.to);
  g_autofree char *aim = units_number_exact (target.aim);
  /* Translators: the wanted static margin in percent, e.g. "5 to 15, aim 12" */
  g_autofree char *words = g_strdup_printf (_("%s to %s, aim %s"), from, to, aim);

  gtk_label_set_text (GTK_LABEL (self->band_words), words);
}

/* While nothing but parts weighs anything. */
static bool
answer_offers_airframe (TrammelAnswer *self)
{
  const Aeroplane *aeroplane = trammel_session_aeroplane (self->session);

  return !airframe_is_weighed (aeroplane) && !(aeroplane_traits (aeroplane).airframe > 0);
}

static void
answer_refresh (TrammelAnswer *self)
{
  const Advice *advice = trammel_session_advice (self->session);
  const char *unit = advice->has_mark ? units_length_name (trammel_session_units (self->session)) : "";

  gtk_label_set_text (GTK_LABEL (self->mark_figure), advice->mark_figure);
  gtk_label_set_text (GTK_LABEL (self->mark_unit), unit);
  gtk_label_set_text (GTK_LABEL (self->mark_place), advice->mark_place);
  gtk_widget_set_visible (self->station_button, advice->has_mark);
  gtk_label_set_text (GTK_LABEL (self->margin_figure), advice->margin_figure);
  gtk_label_set_text (GTK_LABEL (self->margin_sigma), advice->margin_sigma);
  if (advice->has_mark)
    gtk_widget_remove_css_class (self->mark_figure, "answer-words");
  else
    gtk_widget_add_css_class (self->mark_figure, "answer-words");
  if (advice->has_margin)
    gtk_widget_remove_css_class (self->margin_figure, "answer-words");
  else
    gtk_widget_add_css_class (self->margin_figure, "answer-words");
  gtk_label_set_text (GTK_LABEL (self->headline), advice->headline);
  gtk_widget_set_visible (self->mass_buttons, advice->unweighed != NULL);
  gtk_widget_set_visible (self->airframe, answer_offers_airframe (self));
  gtk_widget_set_visible (self->move, advice->to_move != NULL);
  gtk_label_set_text (GTK_LABEL (self->second), advice->second);
  tooltip_set (self->headline, gtk_widget_get_visible (self->second) ? NULL : advice->second);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->chord), GTK_ACCESSIBLE_PROPERTY_LABEL, advice->chord_text, -1);
  answer_show_band (self);
  for (guint i = 0; i < self->fields->len; i++)
    trammel_field_refresh (g_ptr_array_index (self->fields, i));
  gtk_widget_queue_draw (self->chord);
}

/* Who opens the fields wants to type into the first. */
static void
answer_popover_shown (GtkWidget *popover, TrammelField *first)
{
  trammel_field_edit (first, "");
}

/* Made when first opened: at the start nobody waits for it. */
static void
answer_need_popover (TrammelAnswer *self, GtkMenuButton *button, const char *heading, FieldList list)
{
  GtkWidget *popover, *group;

  if (gtk_menu_button_get_popover (button) != NULL)
    return;
  popover = gtk_popover_new ();
  group = trammel_group_new (heading);

  for (size_t i = 0; i < list.count; i++) {
    GtkWidget *field = trammel_field_new (self->session, &list.specs[i]);

    g_ptr_array_add (self->fields, field);
    trammel_group_add (TRAMMEL_GROUP (group), field);
    if (i == 0)
      g_signal_connect_object (popover, "map", G_CALLBACK (answer_popover_shown), field, G_CONNECT_AFTER);
  }
  gtk_widget_set_size_request (group, 250, -1);
  gtk_popover_set_child (GTK_POPOVER (popover), group);
  gtk_menu_button_set_popover (button, popover);
}

static void
answer_open_station (GtkMenuButton *button, gpointer answer)
{
  answer_need_popover (answer, button, _("Balance Mark"), answer_station_fields ());
}

static void
answer_open_band (GtkMenuButton *button, gpointer answer)
{
  answer_need_popover (answer, button, _("Wanted Static Margin"), answer_band_fields ());
}

static GtkWidget *
answer_label (const char *css_class, const char *text)
{
  GtkWidget *label = gtk_label_new (text);

  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_widget_add_css_class (label, css_class);
  return label;
}

static GtkWidget *
answer_button (TrammelAnswer *self, GtkWidget *child, GtkMenuButtonCreatePopupFunc open, const char *name)
{
  GtkWidget *button = gtk_menu_button_new ();

  gtk_menu_button_set_child (GTK_MENU_BUTTON (button), child);
  gtk_widget_set_halign (gtk_widget_get_parent (child), GTK_ALIGN_START);      /* not in its middle, when a line is short */
  gtk_menu_button_set_create_popup_func (GTK_MENU_BUTTON (button), open, self, NULL);
  gtk_widget_add_css_class (button, "flat");
  gtk_widget_add_css_class (button, "answer-button");
  gtk_widget_set_tooltip_text (button, name);
  gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
  gtk_accessible_update_property (GTK_ACCESSIBLE (gtk_widget_get_first_child (button)), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
  gtk_widget_set_halign (button, GTK_ALIGN_START);
  return button;
}

/* What a figure is, and the button that tells how it came about: beside the name, where it takes no room from the figure. */
static GtkWidget *
answer_heading (TrammelAnswer *self, const char *name, ExplainedFigure explained, const char *id)
{
  GtkWidget *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 4);

  gtk_box_append (GTK_BOX (line), answer_label ("dim-label", name));
  gtk_box_append (GTK_BOX (line), trammel_explain_button_new (self->session, explained, name, id));
  return line;
}

static GtkWidget *
answer_figure_line (GtkWidget *figure, GtkWidget *beside)
{
  GtkWidget *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 4);

  gtk_widget_set_valign (figure, GTK_ALIGN_BASELINE);
  gtk_widget_set_valign (beside, GTK_ALIGN_BASELINE);
  gtk_box_append (GTK_BOX (line), figure);
  gtk_box_append (GTK_BOX (line), beside);
  return line;
}

static GtkWidget *
answer_mark_column (TrammelAnswer *self)
{
  GtkWidget *column = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);

  self->mark_figure = answer_label ("answer-figure", "");
  self->mark_unit = answer_label ("answer-unit", "");
  self->mark_place = caption_new (NULL);
  gtk_label_set_max_width_chars (GTK_LABEL (self->mark_place), 22);
  gtk_label_set_width_chars (GTK_LABEL (self->mark_place), 16);
  self->station_button = answer_button (self, self->mark_place, answer_open_station, _("Change the station of the balance mark"));
  gtk_box_append (GTK_BOX (column), answer_heading (self, _("Balance Mark"), EXPLAIN_MARK, "0"));
  gtk_box_append (GTK_BOX (column), answer_figure_line (self->mark_figure, self->mark_unit));
  gtk_box_append (GTK_BOX (column), self->station_button);
  gtk_widget_set_hexpand (column, TRUE);
  return column;
}

/* A small patch of the band's hatch before its words, so that the drawing explains itself. */
static void
answer_draw_swatch (GtkDrawingArea *area, cairo_t *cr, int width, int height, gpointer data)
{
  const Look look = theme_look (GTK_WIDGET (data));

  look_set_source (cr, look.band);
  cairo_set_line_width (cr, look.hatch_width);
  cairo_rectangle (cr, 0.75, 0.75, width - 1.5, height - 1.5);
  cairo_clip_preserve (cr);
  cairo_stroke (cr);
  for (double x = -height; x < width; x += look.hatch_step) {
    cairo_move_to (cr, x, height);
    cairo_line_to (cr, x + height, 0);
  }
  cairo_stroke (cr);
}

static GtkWidget *
answer_margin_column (TrammelAnswer *self)
{
  GtkWidget *column = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);
  GtkWidget *band = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);
  GtkWidget *swatch = gtk_drawing_area_new ();

  self->margin_figure = answer_label ("answer-figure", "");
  self->margin_sigma = answer_label ("answer-sigma", "");
  self->band_words = caption_new (NULL);
  gtk_drawing_area_set_content_width (GTK_DRAWING_AREA (swatch), 20);
  gtk_drawing_area_set_content_height (GTK_DRAWING_AREA (swatch), 11);
  gtk_widget_set_valign (swatch, GTK_ALIGN_CENTER);
  gtk_drawing_area_set_draw_func (GTK_DRAWING_AREA (swatch), answer_draw_swatch, self, NULL);
  theme_follow (swatch);
  gtk_box_append (GTK_BOX (band), swatch);
  gtk_box_append (GTK_BOX (band), self->band_words);
  self->band_button = answer_button (self, band, answer_open_band, _("Change the wanted static margin"));
  gtk_box_append (GTK_BOX (column), answer_heading (self, _("Static Margin"), EXPLAIN_STATIC_MARGIN, NULL));
  gtk_box_append (GTK_BOX (column), answer_figure_line (self->margin_figure, self->margin_sigma));
  gtk_box_append (GTK_BOX (column), self->band_button);
  return column;
}

/* What has the keyboard is to be seen: the thing is selected, and its rows are the panel's work. */
static void
answer_want_mass (TrammelAnswer *self)
{
  const Piece *piece = trammel_session_advice (self->session)->unweighed;

  if (piece == NULL)
    return;
  trammel_session_select (self->session, selection_of (piece->id));
  g_signal_emit (self, mass_wanted_signal, 0);
}

static void
answer_lay_airframe (TrammelAnswer *self)
{
  trammel_session_do (self->session, usual_airframe_beneath (trammel_session_aeroplane (self->session)), _("Usual Airframe"));
}

/* Beneath the headline: it does, or leads to, what that asks for. */
static GtkWidget *
answer_action (TrammelAnswer *self, const char *words, const char *tooltip, GCallback clicked)
{
  GtkWidget *button = gtk_button_new_with_label (words);

  gtk_widget_set_halign (button, GTK_ALIGN_START);
  gtk_widget_set_focus_on_click (button, FALSE);
  gtk_widget_set_tooltip_text (button, tooltip);
  g_signal_connect_swapped (button, "clicked", clicked, self);
  return button;
}

static GtkWidget *
answer_mass_buttons (TrammelAnswer *self)
{
  GtkWidget *buttons = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 8);

  self->type_mass = answer_action (self, _("Type the Mass"), NULL, G_CALLBACK (answer_want_mass));
  self->airframe = answer_action (self, _("Usual Airframe"), fit_offer_airframe_words (), G_CALLBACK (answer_lay_airframe));
  gtk_box_append (GTK_BOX (buttons), self->type_mass);
  gtk_box_append (GTK_BOX (buttons), self->airframe);
  return buttons;
}

/* What the headline asks for, in one step. */
static void
answer_move (TrammelAnswer *self)
{
  trammel_session_do (self->session, part_at_advice (trammel_session_figures (self->session), trammel_session_advice (self->session)->to_move),
                      _("Move to Aim"));
}

static void
answer_fill (TrammelAnswer *self)
{
  GtkWidget *figures = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 12);

  gtk_box_append (GTK_BOX (figures), answer_mark_column (self));
  gtk_box_append (GTK_BOX (figures), answer_margin_column (self));
  self->chord = g_object_new (GTK_TYPE_DRAWING_AREA, "accessible-role", GTK_ACCESSIBLE_ROLE_IMG, NULL);
  gtk_drawing_area_set_content_height (GTK_DRAWING_AREA (self->chord), 84);
  gtk_drawing_area_set_draw_func (GTK_DRAWING_AREA (self->chord), answer_draw_chord, self, NULL);
  theme_follow (self->chord);
  self->headline = answer_label ("answer-headline", "");
  gtk_label_set_wrap (GTK_LABEL (self->headline), TRUE);
  gtk_widget_set_focusable (self->headline, TRUE);
  self->second = answer_label ("dim-label", "");
  gtk_label_set_wrap (GTK_LABEL (self->second), TRUE);
  gtk_widget_set_hexpand (self->second, TRUE);
  /* A box would have the sentence search for the least width at its height each time it is laid out. */
  self->second_line = gtk_grid_new ();
  gtk_grid_set_column_spacing (GTK_GRID (self->second_line), 4);
  gtk_grid_attach (GTK_GRID (self->second_line), self->second, 0, 0, 1, 1);
  gtk_grid_attach (GTK_GRID (self->second_line),
                   trammel_explain_button_new (self->session, EXPLAIN_BALANCE_POINT, _("Balance Point"), NULL), 1, 0, 1, 1);
  self->column = gtk_box_new (GTK_ORIENTATION_VERTICAL, 6);
  gtk_widget_add_css_class (self->column, "answer");
  gtk_box_append (GTK_BOX (self->column), figures);
  gtk_box_append (GTK_BOX (self->column), self->chord);
  gtk_box_append (GTK_BOX (self->column), self->headline);
  gtk_box_append (GTK_BOX (self->column), self->mass_buttons = answer_mass_buttons (self));
  gtk_box_append (GTK_BOX (self->column), self->move = answer_action (self, _("Move to Aim"),
                  _("What the sentence above asks for, as far as the rail goes"), G_CALLBACK (answer_move)));
  gtk_box_append (GTK_BOX (self->column), self->second_line);
  gtk_widget_set_parent (self->column, GTK_WIDGET (self));
}

static void
trammel_answer_dispose (GObject *object)
{
  TrammelAnswer *self = TRAMMEL_ANSWER (object);

  g_clear_pointer (&self->fields, g_ptr_array_unref);
  g_clear_pointer (&self->column, gtk_widget_unparent);
  g_clear_object (&self->session);
  G_OBJECT_CLASS (trammel_answer_parent_class)->dispose (object);
}

static void
trammel_answer_class_init (TrammelAnswerClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = trammel_answer_dispose;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (klass), GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_css_name (GTK_WIDGET_CLASS (klass), "answer");
  mass_wanted_signal = g_signal_new ("mass-wanted", TRAMMEL_TYPE_ANSWER, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
}

static void
trammel_answer_init (TrammelAnswer *self)
{
  self->fields = g_ptr_array_new ();
}

GtkWidget *
trammel_answer_new (TrammelSession *session)
{
  TrammelAnswer *self = g_object_new (TRAMMEL_TYPE_ANSWER, NULL);

  self->session = g_object_ref (session);
  answer_fill (self);
  g_signal_connect_object (session, "changed", G_CALLBACK (answer_refresh), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (trammel_session_settings (session), "changed", G_CALLBACK (answer_refresh), self,
                           G_CONNECT_SWAPPED | G_CONNECT_AFTER);
  answer_refresh (self);
  return GTK_WIDGET (self);
}

void
trammel_answer_set_short (TrammelAnswer *self, bool is_short)
{
  gtk_widget_set_visible (self->second_line, !is_short);
  answer_refresh (self);
}

void
trammel_answer_read (TrammelAnswer *self)
{
  /* A label refuses to grab the keyboard; its window can give it. */
  gtk_root_set_focus (gtk_widget_get_root (self->headline), self->headline);
}
