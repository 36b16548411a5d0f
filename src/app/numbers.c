#include "trammel-config.h"
#include "app/numbers.h"
#include <glib/gi18n-lib.h>
#include "app/choice-list.h"
#include "app/entry-click.h"
#include "app/focus-scroller.h"
#include "app/group.h"
#include "app/length-limit.h"
#include "app/numbers-shape.h"
#include "app/numbers-words.h"

struct _TrammelNumbers {
  GtkBox parent;
  TrammelSession *session;
  Aeroplane *base;               /* what the new thing is added to; NULL when not at work */
  GtkWidget *thing, *shape, *shape_row, *complaint, *add;
  GtkWidget *entries[NUMBER_COUNT], *rows[NUMBER_COUNT], *units[NUMBER_COUNT];
  double values[NUMBER_COUNT];
  bool filling;                  /* the entries are being set, not typed into */
};

G_DEFINE_FINAL_TYPE (TrammelNumbers, trammel_numbers, GTK_TYPE_BOX)

static guint done_signal;

static NumbersThing
numbers_thing (const TrammelNumbers *self)
{
  return (NumbersThing) gtk_drop_down_get_selected (GTK_DROP_DOWN (self->thing));
}

static NumbersShape
numbers_shape (const TrammelNumbers *self)
{
  return (NumbersShape) gtk_drop_down_get_selected (GTK_DROP_DOWN (self->shape));
}

static void
numbers_complain (TrammelNumbers *self, const char *sentence)
{
  gtk_label_set_text (GTK_LABEL (self->complaint), sentence != NULL ? sentence : "");
  gtk_widget_set_visible (self->complaint, sentence != NULL);
  gtk_widget_set_sensitive (self->add, sentence == NULL);
}

static void
numbers_refuse (TrammelNumbers *self, Number number, const char *sentence)
{
  gtk_widget_add_css_class (self->entries[number], "error");
  numbers_complain (self, sentence);
}

/* An area is typed in the unit that areas are shown in. */
static double
numbers_area_unit (TrammelNumbers *self)
{
  return trammel_session_units (self->session).length == LENGTH_INCH ? 25.4 * 25.4 : 100 * 100;
}

static bool
numbers_parse (TrammelNumbers *self, Number number, const char *text, GError **error)
{
  if (number != NUMBER_AREA)
    return units_parse_length (trammel_session_units (self->session), text, &self->values[number], error);
  if (!units_parse_number (text, &self->values[number], error))
    return false;
  self->values[number] *= numbers_area_unit (self);
  return true;
}

/* Reads one entry; the first that is not understood is complained of. */
static bool
numbers_read (TrammelNumbers *self, Number number)
{
  const char *text = gtk_editable_get_text (GTK_EDITABLE (self->entries[number]));
  const double unit = number == NUMBER_AREA ? LENGTH_LIMIT_MM : 1;      /* an area's limit is the longest length's square */
  g_autoptr (GError) error = NULL;

  if (!numbers_parse (self, number, text, &error)) {
    numbers_refuse (self, number, error->message);
    return false;
  }
  if (fabs (self->values[number]) > LENGTH_LIMIT_MM * unit) {
    g_autofree char *most = length_limit_words (trammel_session_units (self->session));
    /* Translators: %s is a length with its unit. */
    g_autofree char *sentence = g_strdup_printf (_("That is longer than %s."), most);

    numbers_refuse (self, number, sentence);
    return false;
  }
  gtk_widget_remove_css_class (self->entries[number], "error");
  return true;
}

static void
numbers_complain_empty (TrammelNumbers *self)
{
  const Number number = numbers_too_small (numbers_thing (self), numbers_shape (self), self->values);
  g_autofree char *sentence = numbers_fault (numbers_thing (self), number, self->values);

  if (number == NUMBER_COUNT)
    numbers_complain (self, sentence);
  else
    numbers_refuse (self, number, sentence);
}

/* Draws what the numbers say, or shows the sheet without it. */
static void
numbers_draw (TrammelNumbers *self)
{
  Piece *piece = NULL;
  bool understood = true;

  if (self->filling || self->base == NULL)
    return;
  for (Number i = 0; i < NUMBER_COUNT; i++)
    if (numbers_asks (numbers_thing (self), numbers_shape (self), i) && !numbers_read (self, i))
      understood = false;
  if (understood)
    piece = numbers_piece (self->base, numbers_thing (self), numbers_shape (self), self->values);
  if (piece != NULL) {
    numbers_complain (self, NULL);
    trammel_session_propose (self->session, aeroplane_with_added (self->base, piece));
    return;
  }
  if (understood)
    numbers_complain_empty (self);
  trammel_session_propose (self->session, aeroplane_ref (self->base));
}

static void
numbers_show_rows (TrammelNumbers *self)
{
  gtk_widget_set_visible (self->shape_row, numbers_thing (self) != NUMBERS_BODY);
  for (Number i = 0; i < NUMBER_COUNT; i++) {
    gtk_widget_set_visible (self->rows[i], numbers_asks (numbers_thing (self), numbers_shape (self), i));
    gtk_label_set_text (GTK_LABEL (self->units[i]), i == NUMBER_AREA ? units_area_name (trammel_session_units (self->session))
                                                                     : units_length_name (trammel_session_units (self->session)));
  }
  gtk_label_set_text (GTK_LABEL (gtk_widget_get_first_child (gtk_widget_get_first_child (self->rows[NUMBER_SPAN]))),
                      numbers_label (numbers_thing (self), NUMBER_SPAN));
}

static void
numbers_fill (TrammelNumbers *self)
{
  self->filling = true;
  numbers_usual (self->base, numbers_thing (self), self->values);
  for (Number i = 0; i < NUMBER_COUNT; i++) {
    g_autofree char *text = i == NUMBER_AREA ? units_area_figure (trammel_session_units (self->session), self->values[i])
                                             : units_length_exact (trammel_session_units (self->session), self->values[i]);

    gtk_editable_set_text (GTK_EDITABLE (self->entries[i]), text);
  }
  self->filling = false;
}

static void
numbers_thing_changed (TrammelNumbers *self)
{
  if (self->filling || self->base == NULL)
    return;
  numbers_fill (self);
  numbers_show_rows (self);
  numbers_draw (self);
}

static void
numbers_shape_changed (TrammelNumbers *self)
{
  numbers_show_rows (self);
  numbers_draw (self);
}

static void
numbers_add (TrammelNumbers *self)
{
  static const char *const steps[NUMBERS_THING_COUNT] = {
    N_("Add Wing"), N_("Add Tailplane"), N_("Add Foreplane"), N_("Add Fin"), N_("Add Body"),
  };
  const Aeroplane *now = trammel_session_aeroplane (self->session);
  size_t count = aeroplane_piece_count (now);
  g_autofree char *id = NULL;

  if (self->base == NULL || !gtk_widget_get_sensitive (self->add))
    return;
  if (count == aeroplane_piece_count (self->base)) {      /* nothing proposed yet: as the numbers stand */
    numbers_draw (self);
    now = trammel_session_aeroplane (self->session);
    count = aeroplane_piece_count (now);
  }
  if (count <= aeroplane_piece_count (self->base))
    return;
  id = g_strdup (aeroplane_piece (now, count - 1)->id);
  g_clear_pointer (&self->base, aeroplane_unref);
  trammel_session_settle (self->session, _(steps[numbers_thing (self)]));
  trammel_session_select (self->session, selection_of (id));
  g_signal_emit (self, done_signal, 0);
}

void
trammel_numbers_leave (TrammelNumbers *self)
{
  if (self->base == NULL)
    return;
  g_clear_pointer (&self->base, aeroplane_unref);
  trammel_session_abandon (self->session);
}

static void
numbers_cancel (TrammelNumbers *self)
{
  trammel_numbers_leave (self);
  g_signal_emit (self, done_signal, 0);
}

static bool
numbers_has_role (const Aeroplane *aeroplane, SurfaceRole role)
{
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_SURFACE); i++)
    if (aeroplane_surface (aeroplane, i)->role == role)
      return true;
  return false;
}

/* What a person adds next: the wing, then its tail, fin and body. */
static NumbersThing
numbers_missing (const Aeroplane *aeroplane)
{
  if (!numbers_has_role (aeroplane, ROLE_WING))
    return NUMBERS_WING;
  if (!numbers_has_role (aeroplane, ROLE_TAILPLANE) && !numbers_has_role (aeroplane, ROLE_FOREPLANE))
    return NUMBERS_TAILPLANE;
  if (!numbers_has_role (aeroplane, ROLE_FIN))
    return NUMBERS_FIN;
  return NUMBERS_BODY;
}

static bool
numbers_all_there (const Aeroplane *aeroplane)
{
  return numbers_missing (aeroplane) == NUMBERS_BODY && aeroplane_count (aeroplane, PIECE_BODY) > 0;
}

void
trammel_numbers_begin (TrammelNumbers *self)
{
  trammel_numbers_leave (self);
  self->base = aeroplane_ref (trammel_session_aeroplane (self->session));
  self->filling = true;
  gtk_drop_down_set_selected (GTK_DROP_DOWN (self->thing), numbers_missing (self->base));
  self->filling = false;
  numbers_fill (self);
  numbers_show_rows (self);
  /* Beside a complete aeroplane nothing is proposed before a number is typed: it would lie on what is there. */
  if (!numbers_all_there (self->base))
    numbers_draw (self);
  gtk_widget_grab_focus (self->entries[numbers_thing (self) == NUMBERS_BODY ? NUMBER_LENGTH : NUMBER_SPAN]);
}

static gboolean
numbers_key (TrammelNumbers *self, guint key, guint code, GdkModifierType state)
{
  if (key != GDK_KEY_Escape)
    return FALSE;
  numbers_cancel (self);
  return TRUE;
}

static GtkWidget *
numbers_row (TrammelNumbers *self, Number number)
{
  GtkWidget *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);
  GtkWidget *label = gtk_label_new (numbers_label (NUMBERS_WING, number));
  GtkWidget *entry = gtk_entry_new ();

  gtk_widget_add_css_class (line, "field");
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_widget_set_hexpand (label, TRUE);
  gtk_widget_add_css_class (entry, "figure-entry");
  gtk_editable_set_width_chars (GTK_EDITABLE (entry), 6);
  gtk_editable_set_max_width_chars (GTK_EDITABLE (entry), 8);
  gtk_editable_set_alignment (GTK_EDITABLE (entry), 1.0f);
  entry_select_on_click (entry);
  gtk_widget_set_valign (entry, GTK_ALIGN_CENTER);
  gtk_accessible_update_property (GTK_ACCESSIBLE (entry), GTK_ACCESSIBLE_PROPERTY_LABEL, numbers_label (NUMBERS_WING, number), -1);
  g_signal_connect_swapped (entry, "changed", G_CALLBACK (numbers_draw), self);
  g_signal_connect_swapped (entry, "activate", G_CALLBACK (numbers_add), self);
  self->units[number] = gtk_label_new (NULL);
  gtk_widget_add_css_class (self->units[number], "dim-label");
  self->entries[number] = entry;
  gtk_box_append (GTK_BOX (line), label);
  gtk_box_append (GTK_BOX (line), entry);
  gtk_box_append (GTK_BOX (line), self->units[number]);
  return line;
}

static GtkWidget *
numbers_choice (TrammelNumbers *self, const char *const *words, size_t count, GCallback changed)
{
  GtkStringList *list = gtk_string_list_new (NULL);
  GtkWidget *choice;

  for (size_t i = 0; i < count; i++)
    gtk_string_list_append (list, _(words[i]));
  choice = choice_list_new (G_LIST_MODEL (list));
  g_signal_connect_swapped (choice, "notify::selected", changed, self);
  return choice;
}

static void
numbers_fill_choices (TrammelNumbers *self, TrammelGroup *group)
{
  static const char *const things[NUMBERS_THING_COUNT] = { N_("Wing"), N_("Tailplane"), N_("Foreplane"), N_("Fin"), N_("Body") };
  static const char *const shapes[SHAPE_COUNT] = { N_("Ellipse"), N_("Straight taper"), N_("Cranked taper"), N_("By area and arm, for now") };

  self->thing = numbers_choice (self, things, NUMBERS_THING_COUNT, G_CALLBACK (numbers_thing_changed));
  self->shape = numbers_choice (self, shapes, SHAPE_COUNT, G_CALLBACK (numbers_shape_changed));
  trammel_group_add_control (group, _("What it is"), self->thing);
  trammel_group_add_control (group, _("Shape"), self->shape);
  gtk_accessible_update_property (GTK_ACCESSIBLE (gtk_widget_get_first_child (self->thing)), GTK_ACCESSIBLE_PROPERTY_LABEL, _("What it is"), -1);
  gtk_accessible_update_property (GTK_ACCESSIBLE (gtk_widget_get_first_child (self->shape)), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Shape"), -1);
  self->shape_row = gtk_widget_get_ancestor (self->shape, GTK_TYPE_LIST_BOX_ROW);
}

/* They stand below what scrolls: on a low screen, too, one sees how to end it, and why it cannot be ended so. */
static GtkWidget *
numbers_foot (TrammelNumbers *self)
{
  GtkWidget *foot = gtk_box_new (GTK_ORIENTATION_VERTICAL, 6), *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 8);
  GtkWidget *cancel = gtk_button_new_with_mnemonic (_("_Cancel"));

  self->complaint = gtk_label_new (NULL);
  gtk_label_set_wrap (GTK_LABEL (self->complaint), TRUE);
  gtk_label_set_xalign (GTK_LABEL (self->complaint), 0);
  gtk_widget_add_css_class (self->complaint, "field-complaint");
  gtk_widget_set_visible (self->complaint, FALSE);
  self->add = gtk_button_new_with_mnemonic (_("_Add to the Sheet"));
  gtk_widget_add_css_class (self->add, "suggested-action");
  g_signal_connect_swapped (cancel, "clicked", G_CALLBACK (numbers_cancel), self);
  g_signal_connect_swapped (self->add, "clicked", G_CALLBACK (numbers_add), self);
  gtk_widget_set_hexpand (cancel, TRUE);
  gtk_widget_set_hexpand (self->add, TRUE);
  gtk_box_append (GTK_BOX (line), cancel);
  gtk_box_append (GTK_BOX (line), self->add);
  gtk_widget_add_css_class (foot, "panel-foot");
  gtk_box_append (GTK_BOX (foot), self->complaint);
  gtk_box_append (GTK_BOX (foot), line);
  return foot;
}

static void
trammel_numbers_dispose (GObject *object)
{
  TrammelNumbers *self = TRAMMEL_NUMBERS (object);

  g_clear_pointer (&self->base, aeroplane_unref);
  g_clear_object (&self->session);
  G_OBJECT_CLASS (trammel_numbers_parent_class)->dispose (object);
}

static void
trammel_numbers_class_init (TrammelNumbersClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = trammel_numbers_dispose;
  done_signal = g_signal_new ("done", TRAMMEL_TYPE_NUMBERS, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
}

static void
trammel_numbers_init (TrammelNumbers *self)
{
  gtk_orientable_set_orientation (GTK_ORIENTABLE (self), GTK_ORIENTATION_VERTICAL);
}

GtkWidget *
trammel_numbers_new (TrammelSession *session)
{
  TrammelNumbers *self = g_object_new (TRAMMEL_TYPE_NUMBERS, NULL);
  GtkWidget *group = trammel_group_new (_("Start from Numbers"));
  GtkEventController *keys = gtk_event_controller_key_new ();

  self->session = g_object_ref (session);
  numbers_fill_choices (self, TRAMMEL_GROUP (group));
  for (Number i = 0; i < NUMBER_COUNT; i++) {
    GtkWidget *line = numbers_row (self, i);

    trammel_group_add (TRAMMEL_GROUP (group), line);
    self->rows[i] = gtk_widget_get_ancestor (line, GTK_TYPE_LIST_BOX_ROW);
  }
  gtk_widget_add_css_class (group, "panel-page");
  g_signal_connect_swapped (keys, "key-pressed", G_CALLBACK (numbers_key), self);
  gtk_widget_add_controller (GTK_WIDGET (self), keys);
  gtk_box_append (GTK_BOX (self), focus_scroller_new (group, _("Start from Numbers")));
  gtk_box_append (GTK_BOX (self), numbers_foot (self));
  return GTK_WIDGET (self);
}
