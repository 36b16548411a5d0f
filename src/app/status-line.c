#include "app/status-line.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "app/plan-work.h"
#include "app/pull.h"
#include "app/steady-words.h"
#include "app/tooltip.h"

enum { SPACING = 6, ZOOM_MS = 100 };     /* ZOOM_MS: figures that follow one another faster are not read */

/* How wide a label's words are, though they may be cut short: measured again when they or their font change. */
typedef struct { char *words; guint font; int width; } WordsWidth;

struct _TrammelStatusLine {
  GtkWidget parent;
  TrammelSheetCanvas *sheet;
  GtkWidget *hint, *place, *zoom;       /* place: along and across; zoom: the words on its button */
  WordsWidth hint_width;
  guint rest;                           /* will show the zoom again; 0: it was shown long ago */
  bool zoomed;                          /* since it was shown */
};

G_DEFINE_FINAL_TYPE (TrammelStatusLine, trammel_status_line, GTK_TYPE_WIDGET)

static void
trammel_status_line_dispose (GObject *object)
{
  TrammelStatusLine *self = TRAMMEL_STATUS_LINE (object);
  GtkWidget *child;

  g_clear_handle_id (&self->rest, g_source_remove);
  g_clear_object (&self->sheet);
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self))) != NULL)
    gtk_widget_unparent (child);
  g_clear_pointer (&self->hint_width.words, g_free);
  G_OBJECT_CLASS (trammel_status_line_parent_class)->dispose (object);
}

static void
trammel_status_line_class_init (TrammelStatusLineClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = trammel_status_line_dispose;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (klass), GTK_TYPE_BOX_LAYOUT);
  gtk_widget_class_set_css_name (GTK_WIDGET_CLASS (klass), "statusline");
}

static void
trammel_status_line_init (TrammelStatusLine *self)
{
  gtk_box_layout_set_spacing (GTK_BOX_LAYOUT (gtk_widget_get_layout_manager (GTK_WIDGET (self))), SPACING);
}

char *
status_place_along (Units units, double x)
{
  g_autofree char *figure = units_length_figure (units, fabs (x));

  /* Translators: %s is a length: how far a place is behind, or before, the line that all is measured from. */
  return g_strdup_printf (x < 0 ? _("%s ahead") : _("%s aft"), figure);
}

char *
status_place_side (Units units, double y)
{
  g_autofree char *figure = units_length_figure (units, fabs (y));
  g_autofree char *nothing = units_length_figure (units, 0);

  if (!isfinite (y) || g_str_equal (figure, nothing))
    return g_steal_pointer (&figure);
  /* Translators: %s is a length. */
  return g_strdup_printf (y < 0 ? _("%s to port") : _("%s to starboard"), figure);
}

char *
status_place_across (Units units, double y)
{
  g_autofree char *side = status_place_side (units, y);
  g_autofree char *nothing = units_length_figure (units, 0);

  return g_str_equal (side, nothing) ? g_strdup (_("on the centre line")) : g_steal_pointer (&side);
}

static int
words_width (WordsWidth *self, GtkWidget *label)
{
  const char *words = gtk_label_get_label (GTK_LABEL (label));
  const guint font = pango_context_get_serial (gtk_widget_get_pango_context (label));

  if (g_strcmp0 (self->words, words) != 0 || self->font != font) {
    g_autoptr (PangoLayout) layout = gtk_widget_create_pango_layout (label, words);

    pango_layout_get_pixel_size (layout, &self->width, NULL);
    g_free (self->words);
    self->words = g_strdup (words);
    self->font = font;
  }
  return self->width;
}

static int
status_line_wanted_width (TrammelStatusLine *self)
{
  int width = 0;

  for (GtkWidget *child = gtk_widget_get_first_child (GTK_WIDGET (self)); child != NULL; child = gtk_widget_get_next_sibling (child)) {
    int natural = 0;

    if (child == self->hint)
      natural = words_width (&self->hint_width, child);
    else if (child == self->place)
      natural = trammel_steady_words_width (TRAMMEL_STEADY_WORDS (child));
    else
      gtk_widget_measure (child, GTK_ORIENTATION_HORIZONTAL, -1, NULL, &natural, NULL, NULL);
    width += natural + SPACING;
  }
  return width;
}

/* Where hint and place have no room the hint stays whole: the rulers and the plate say where the pointer is, too. */
static void
status_line_make_room (TrammelStatusLine *self)
{
  const int width = gtk_widget_get_width (GTK_WIDGET (self));
  const bool room = width == 0 || status_line_wanted_width (self) <= width;

  gtk_widget_set_visible (self->place, room);
}

/* What is pulled, else where the pointer is. The side view knows no port and starboard. */
static void
status_line_show_place (TrammelStatusLine *self)
{
  const Units units = trammel_session_units (trammel_sheet_canvas_session (self->sheet));
  Pull *pull = trammel_sheet_canvas_pull (self->sheet);
  g_autofree char *along = NULL, *across = NULL;
  Point place;
  bool known = trammel_sheet_canvas_pointer (self->sheet, &place);

  if (pull != NULL && !pull_is_of_side (pull) && point_is_finite (pull_place (pull))) {
    place = pull_place (pull);
    known = true;
  }
  along = known ? status_place_along (units, place.x) : g_strdup ("");
  across = known ? status_place_across (units, place.y) : g_strdup ("");
  trammel_steady_words_set (TRAMMEL_STEADY_WORDS (self->place), 0, along);
  trammel_steady_words_set (TRAMMEL_STEADY_WORDS (self->place), 1, across);
  status_line_make_room (self);
}

static void
status_line_show_hint (TrammelStatusLine *self)
{
  /* Said twice it would be read twice. */
  const bool told = trammel_plan_work_is_told (trammel_plan_work_of (self->sheet));
  const char *hint = told ? NULL : trammel_sheet_canvas_hint (self->sheet);

  gtk_label_set_label (GTK_LABEL (self->hint), hint != NULL ? hint : "");
  tooltip_set (self->hint, hint);
  status_line_make_room (self);
}

/* 100 % is true size on this monitor. */
static void
status_line_show_zoom (TrammelStatusLine *self)
{
  const double percent = 100 * trammel_sheet_canvas_view (self->sheet)->scale / trammel_sheet_canvas_true_scale (self->sheet);
  g_autofree char *text = units_percent (percent);

  trammel_steady_words_set (TRAMMEL_STEADY_WORDS (self->zoom), 0, text);
  self->zoomed = false;
}

static gboolean
status_line_zoom_rested (gpointer data)
{
  TrammelStatusLine *self = data;

  if (self->zoomed) {
    status_line_show_zoom (self);
    return G_SOURCE_CONTINUE;
  }
  self->rest = 0;
  return G_SOURCE_REMOVE;
}

/* At once, and while the zoom goes on now and then: every figure shown is told to screen readers and takes its part of a frame. */
static void
status_line_follow_zoom (TrammelStatusLine *self)
{
  self->zoomed = true;
  if (self->rest != 0)
    return;
  status_line_show_zoom (self);
  self->rest = g_timeout_add (ZOOM_MS, status_line_zoom_rested, self);
}

static GtkWidget *
status_line_button (GtkWidget *takes, const char *icon, const char *name, const char *keys)
{
  /* Translators: what a button does and, in brackets, its key. */
  g_autofree char *tooltip = g_strdup_printf (_("%s (%s)"), name, keys);

  gtk_button_set_icon_name (GTK_BUTTON (takes), icon);
  gtk_widget_set_tooltip_text (takes, tooltip);
  gtk_widget_add_css_class (takes, "flat");
  gtk_widget_set_focus_on_click (takes, FALSE);
  gtk_accessible_update_property (GTK_ACCESSIBLE (takes), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
  return takes;
}

/* Made when it first opens: at the start nobody waits for it. */
static void
status_line_open_zoom (GtkMenuButton *button, gpointer nothing)
{
  g_autoptr (GMenu) menu = g_menu_new ();

  if (gtk_menu_button_get_popover (button) != NULL)
    return;
  g_menu_append (menu, _("_Fit Sheet"), "sheet.fit-sheet");
  g_menu_append (menu, _("Fit S_election"), "sheet.fit-selection");
  g_menu_append (menu, _("_True Size"), "sheet.true-size");
  gtk_menu_button_set_menu_model (button, G_MENU_MODEL (menu));
}

static GtkWidget *
status_line_zoom_button (GtkWidget *takes)
{
  GtkWidget *button = gtk_menu_button_new ();

  gtk_menu_button_set_create_popup_func (GTK_MENU_BUTTON (button), status_line_open_zoom, NULL, NULL);
  gtk_menu_button_set_direction (GTK_MENU_BUTTON (button), GTK_ARROW_UP);
  gtk_menu_button_set_child (GTK_MENU_BUTTON (button), takes);
  gtk_widget_set_tooltip_text (button, _("Zoom"));
  gtk_widget_add_css_class (button, "flat");
  gtk_widget_add_css_class (button, "zoom");
  gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Zoom"), -1);
  gtk_accessible_update_property (GTK_ACCESSIBLE (gtk_widget_get_first_child (button)), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Zoom"), -1);
  return button;
}

static void
status_line_add (TrammelStatusLine *self, GtkWidget *takes, const char *action)
{
  if (action != NULL)
    gtk_actionable_set_action_name (GTK_ACTIONABLE (takes), action);
  gtk_widget_set_parent (takes, GTK_WIDGET (self));
}

static void
status_line_fill (TrammelStatusLine *self)
{
  self->hint = gtk_label_new (NULL);
  gtk_label_set_xalign (GTK_LABEL (self->hint), 0);
  gtk_widget_add_css_class (self->hint, "figure");
  gtk_label_set_ellipsize (GTK_LABEL (self->hint), PANGO_ELLIPSIZE_END);
  gtk_widget_set_hexpand (self->hint, TRUE);
  self->place = trammel_steady_words_new (2, 1, true);
  self->zoom = trammel_steady_words_new (1, 0.5, false);
  status_line_add (self, self->hint, NULL);
  status_line_add (self, self->place, NULL);
  status_line_add (self, status_line_button (gtk_toggle_button_new (), "trammel-snapping-symbolic", _("Snapping"), _("Ctrl+G")),
                   "sheet.snapping");
  status_line_add (self, gtk_separator_new (GTK_ORIENTATION_VERTICAL), NULL);
  status_line_add (self, status_line_button (gtk_button_new (), "trammel-zoom-out-symbolic", _("Zoom Out"), _("Ctrl+−")), "sheet.zoom-out");
  status_line_add (self, status_line_zoom_button (self->zoom), NULL);
  status_line_add (self, status_line_button (gtk_button_new (), "trammel-zoom-in-symbolic", _("Zoom In"), _("Ctrl++")), "sheet.zoom-in");
}

GtkWidget *
trammel_status_line_new (TrammelSheetCanvas *sheet)
{
  TrammelStatusLine *self = g_object_new (TRAMMEL_TYPE_STATUS_LINE, NULL);
  TrammelSession *session = trammel_sheet_canvas_session (sheet);

  self->sheet = g_object_ref (sheet);
  status_line_fill (self);
  g_signal_connect_object (sheet, "pointer-changed", G_CALLBACK (status_line_show_place), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (sheet, "view-changed", G_CALLBACK (status_line_show_place), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (session, "changed", G_CALLBACK (status_line_show_place), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (trammel_session_settings (session), "changed", G_CALLBACK (status_line_show_place), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (sheet, "hint-changed", G_CALLBACK (status_line_show_hint), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (session, "offer-changed", G_CALLBACK (status_line_show_hint), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (trammel_plan_work_of (sheet), "changed", G_CALLBACK (status_line_show_hint), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (sheet, "view-changed", G_CALLBACK (status_line_follow_zoom), self, G_CONNECT_SWAPPED);
  status_line_show_hint (self);
  return GTK_WIDGET (self);
}
