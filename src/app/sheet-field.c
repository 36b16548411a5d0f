#include "app/sheet-field.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "app/field-text.h"

struct _TrammelSheetField {
  GtkWidget parent;
  GtkWidget *entry, *error;      /* NULL until it first opens */
  Units units;
  double mm;                     /* that it was opened with */
  char *shown;                   /* as text, which may have fewer digits */
  GtkWidget *over;
  GdkRectangle place;
  bool open;
  gulong served;
  char *refusal;      /* why what was typed does not fit; NULL: not said */
};

G_DEFINE_FINAL_TYPE (TrammelSheetField, trammel_sheet_field, GTK_TYPE_WIDGET)

static guint entered_signal;

static void
trammel_sheet_field_dispose (GObject *object)
{
  TrammelSheetField *self = TRAMMEL_SHEET_FIELD (object);
  GtkWidget *child;

  g_clear_weak_pointer (&self->over);
  g_clear_pointer (&self->refusal, g_free);
  g_clear_pointer (&self->shown, g_free);
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self))) != NULL)
    gtk_widget_unparent (child);
  G_OBJECT_CLASS (trammel_sheet_field_parent_class)->dispose (object);
}

static void
trammel_sheet_field_class_init (TrammelSheetFieldClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = trammel_sheet_field_dispose;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (klass), GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_css_name (GTK_WIDGET_CLASS (klass), "sheetfield");
  entered_signal = g_signal_new ("entered", TRAMMEL_TYPE_SHEET_FIELD, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                 G_TYPE_BOOLEAN, 1, G_TYPE_DOUBLE);
}

static void
field_say (TrammelSheetField *self, const char *sentence)
{
  gtk_label_set_label (GTK_LABEL (self->error), sentence != NULL ? sentence : "");
  gtk_widget_set_visible (self->error, sentence != NULL);
  if (sentence != NULL)
    gtk_widget_add_css_class (self->entry, "error");
  else
    gtk_widget_remove_css_class (self->entry, "error");
  gtk_accessible_update_state (GTK_ACCESSIBLE (self->entry), GTK_ACCESSIBLE_STATE_INVALID,
                               sentence != NULL ? GTK_ACCESSIBLE_INVALID_TRUE : GTK_ACCESSIBLE_INVALID_FALSE, -1);
}

static bool
field_take (TrammelSheetField *self)
{
  const char *text = gtk_editable_get_text (GTK_EDITABLE (self->entry));
  g_autoptr (GError) error = NULL;
  gboolean fits = FALSE;
  double mm = self->mm;

  if (g_strcmp0 (text, self->shown) != 0 && !units_parse_length (self->units, text, &mm, &error)) {
    field_say (self, error->message);
    return false;
  }
  g_clear_pointer (&self->refusal, g_free);
  g_signal_emit (self, entered_signal, 0, mm, &fits);
  field_say (self, fits ? NULL : self->refusal != NULL ? self->refusal : _("It does not fit there."));
  return fits;
}

static void
field_return_focus (TrammelSheetField *self)
{
  if (self->over != NULL)
    gtk_widget_grab_focus (self->over);
}

static void
field_entered (TrammelSheetField *self)
{
  if (!field_take (self))
    return;
  trammel_sheet_field_close (self);
  field_return_focus (self);
}

static gboolean
field_key (TrammelSheetField *self, guint keyval)
{
  if (keyval != GDK_KEY_Escape)
    return FALSE;
  trammel_sheet_field_close (self);
  field_return_focus (self);
  return TRUE;
}

/* Leaving it for another place of the window counts as Return where it is understood. Another window does not. */
static void
field_left (TrammelSheetField *self)
{
  GtkRoot *root = gtk_widget_get_root (GTK_WIDGET (self));

  if (!self->open || (GTK_IS_WINDOW (root) && !gtk_window_is_active (GTK_WINDOW (root))))
    return;
  field_take (self);
  trammel_sheet_field_close (self);
}

static void
field_need_entry (TrammelSheetField *self)
{
  GtkWidget *box;
  GtkEventController *keys, *focus;

  if (self->entry != NULL)
    return;
  box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 4);
  keys = gtk_event_controller_key_new ();
  focus = gtk_event_controller_focus_new ();
  self->entry = gtk_entry_new ();
  gtk_editable_set_width_chars (GTK_EDITABLE (self->entry), 8);
  gtk_editable_set_max_width_chars (GTK_EDITABLE (self->entry), 8);
  gtk_entry_set_alignment (GTK_ENTRY (self->entry), 0.5);
  gtk_widget_set_halign (self->entry, GTK_ALIGN_CENTER);
  g_signal_connect_swapped (self->entry, "activate", G_CALLBACK (field_entered), self);
  gtk_event_controller_set_propagation_phase (keys, GTK_PHASE_CAPTURE);
  g_signal_connect_swapped (keys, "key-pressed", G_CALLBACK (field_key), self);
  gtk_widget_add_controller (self->entry, keys);
  g_signal_connect_swapped (focus, "leave", G_CALLBACK (field_left), self);
  gtk_widget_add_controller (self->entry, focus);
  self->error = gtk_label_new (NULL);
  gtk_widget_add_css_class (self->error, "error");
  gtk_label_set_wrap (GTK_LABEL (self->error), TRUE);
  gtk_label_set_max_width_chars (GTK_LABEL (self->error), 26);
  gtk_widget_set_visible (self->error, FALSE);
  gtk_box_append (GTK_BOX (box), self->entry);
  gtk_box_append (GTK_BOX (box), self->error);
  gtk_widget_set_parent (box, GTK_WIDGET (self));
}

static void
trammel_sheet_field_init (TrammelSheetField *self)
{
  gtk_widget_set_halign (GTK_WIDGET (self), GTK_ALIGN_START);
  gtk_widget_set_valign (GTK_WIDGET (self), GTK_ALIGN_START);
  gtk_widget_set_visible (GTK_WIDGET (self), FALSE);
}

GtkWidget *
trammel_sheet_field_new (void)
{
  return g_object_new (TRAMMEL_TYPE_SHEET_FIELD, NULL);
}

void
trammel_sheet_field_open (TrammelSheetField *self, GtkWidget *over, const GdkRectangle *place, const char *name)
{
  field_need_entry (self);
  g_set_weak_pointer (&self->over, over);
  self->place = *place;
  self->open = true;
  field_say (self, NULL);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->entry), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
  gtk_widget_set_visible (GTK_WIDGET (self), TRUE);
  gtk_widget_queue_allocate (gtk_widget_get_parent (GTK_WIDGET (self)));
  gtk_entry_grab_focus_without_selecting (GTK_ENTRY (self->entry));
}

void
trammel_sheet_field_set (TrammelSheetField *self, Units units, double mm)
{
  self->units = units;
  self->mm = mm;
  g_free (self->shown);
  self->shown = isfinite (mm) ? field_text_edited (FIELD_LENGTH, units, mm) : NULL;
  gtk_editable_set_text (GTK_EDITABLE (self->entry), self->shown != NULL ? self->shown : "");
  gtk_editable_select_region (GTK_EDITABLE (self->entry), 0, -1);
}

void
trammel_sheet_field_serve (TrammelSheetField *self, GCallback entered, gpointer takes, GClosureNotify destroy)
{
  g_clear_signal_handler (&self->served, self);
  self->served = g_signal_connect_data (self, "entered", entered, takes, destroy, 0);
}

void
trammel_sheet_field_refuse (TrammelSheetField *self, const char *sentence)
{
  g_free (self->refusal);
  self->refusal = g_strdup (sentence);
}

void
trammel_sheet_field_close (TrammelSheetField *self)
{
  self->open = false;
  /* Gives the primary selection back now: when the field opens again, the X server's word of it would come too late (see the plate). */
  gtk_editable_select_region (GTK_EDITABLE (self->entry), 0, 0);
  gtk_widget_set_visible (GTK_WIDGET (self), FALSE);
}

bool
trammel_sheet_field_is_open (TrammelSheetField *self)
{
  return self->open;
}

void
trammel_sheet_field_position (TrammelSheetField *self, GtkWidget *parent, GdkRectangle *place)
{
  GtkRequisition size, entry;
  double x = 0, y = 0;

  gtk_widget_get_preferred_size (GTK_WIDGET (self), NULL, &size);
  if (self->over != NULL)
    gtk_widget_translate_coordinates (self->over, parent, self->place.x + self->place.width / 2.0,
                                      self->place.y + self->place.height / 2.0, &x, &y);
  gtk_widget_get_preferred_size (self->entry, NULL, &entry);
  place->width = size.width;
  place->height = size.height;
  /* The entry's middle over the figure's; a sentence hangs below it. */
  place->x = CLAMP ((int) x - size.width / 2, 0, MAX (0, gtk_widget_get_width (parent) - size.width));
  place->y = CLAMP ((int) y - entry.height / 2 - 4, 0, MAX (0, gtk_widget_get_height (parent) - size.height));
}
