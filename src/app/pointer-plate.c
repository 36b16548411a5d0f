#include "app/pointer-plate.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "app/field-complaint.h"
#include "app/field-text.h"
#include "app/length-limit.h"
#include "app/status-line.h"

struct _TrammelPointerPlate {
  GtkWidget parent;
  GtkWidget *grid, *error;  /* NULL until it is first shown */
  GtkWidget *names[GRIP_ROWS], *values[GRIP_ROWS], *entries[GRIP_ROWS];
  GripRow rows[GRIP_ROWS];
  size_t count;
  Units units;
  int typing;               /* the row with the field; -1: none */
  GtkWidget *over;
  double pointer[2];
  GdkRectangle clear;
};

G_DEFINE_FINAL_TYPE (TrammelPointerPlate, trammel_pointer_plate, GTK_TYPE_WIDGET)

enum { TYPED, ENTERED, LEFT, SIGNAL_COUNT };
static guint signals[SIGNAL_COUNT];

static void
trammel_pointer_plate_dispose (GObject *object)
{
  TrammelPointerPlate *self = TRAMMEL_POINTER_PLATE (object);
  GtkWidget *child;

  g_clear_weak_pointer (&self->over);
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self))) != NULL)
    gtk_widget_unparent (child);
  G_OBJECT_CLASS (trammel_pointer_plate_parent_class)->dispose (object);
}

static void
trammel_pointer_plate_class_init (TrammelPointerPlateClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = trammel_pointer_plate_dispose;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (klass), GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_css_name (GTK_WIDGET_CLASS (klass), "plate");
  signals[TYPED] = g_signal_new ("typed", TRAMMEL_TYPE_POINTER_PLATE, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                 G_TYPE_BOOLEAN, 2, G_TYPE_UINT, G_TYPE_DOUBLE);
  signals[ENTERED] = g_signal_new ("entered", TRAMMEL_TYPE_POINTER_PLATE, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
  signals[LEFT] = g_signal_new ("left", TRAMMEL_TYPE_POINTER_PLATE, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
}

static void
plate_close_field (TrammelPointerPlate *self)
{
  const int row = self->typing;

  if (row < 0)
    return;
  self->typing = -1;
  gtk_editable_select_region (GTK_EDITABLE (self->entries[row]), 0, 0);
  gtk_widget_set_visible (self->values[row], TRUE);
  gtk_widget_set_visible (self->entries[row], FALSE);
  gtk_widget_set_visible (self->error, FALSE);
}

static void
plate_say (TrammelPointerPlate *self, const char *sentence)
{
  field_complaint_say (self->error, self->entries[self->typing], sentence);
}

static char *
plate_edited (TrammelPointerPlate *self, int row)
{
  const double value = self->rows[row].value;

  return isfinite (value) ? field_text_edited (FIELD_LENGTH, self->units, value) : g_strdup ("");
}

/* What is typed; where nothing is, all digits of what stood there. */
static bool
plate_read (TrammelPointerPlate *self, double *mm, GError **error)
{
  const char *text = gtk_editable_get_text (GTK_EDITABLE (self->entries[self->typing]));
  g_autofree char *edited = plate_edited (self, self->typing);

  *mm = self->rows[self->typing].value;
  return (*text != '\0' && g_str_equal (text, edited)) || units_parse_length (self->units, text, mm, error);
}

/* Puts what is typed into its row; the text stays where it is not understood. */
static bool
plate_take (TrammelPointerPlate *self)
{
  g_autoptr (GError) error = NULL;
  g_autofree char *refusal = NULL;
  gboolean fits = FALSE;
  double mm;

  if (!plate_read (self, &mm, &error)) {
    plate_say (self, error->message);
    return false;
  }
  refusal = length_limit_place (self->units, mm, self->rows[self->typing].least);
  if (refusal != NULL) {
    plate_say (self, refusal);
    return false;
  }
  g_signal_emit (self, signals[TYPED], 0, (guint) self->typing, mm, &fits);
  plate_say (self, fits ? NULL : _("It does not fit there."));
  return fits;
}

/* The new field has the keyboard before the old one goes: a window whose focus vanishes looks for another by itself. */
static void
plate_open_field (TrammelPointerPlate *self, int row, const char *text)
{
  GtkEditable *entry = GTK_EDITABLE (self->entries[row]);
  g_autofree char *edited = plate_edited (self, row);

  gtk_widget_set_visible (self->entries[row], TRUE);
  gtk_widget_set_visible (self->values[row], FALSE);
  gtk_accessible_update_property (GTK_ACCESSIBLE (entry), GTK_ACCESSIBLE_PROPERTY_LABEL, self->rows[row].name, -1);
  gtk_editable_set_text (entry, text != NULL ? text : edited);
  /* Selecting twice in a row, as a field does by itself that gets the keyboard, would be undone by the X server's late word of the first. */
  gtk_entry_grab_focus_without_selecting (GTK_ENTRY (entry));
  if (row != self->typing)
    plate_close_field (self);
  self->typing = row;
  plate_say (self, NULL);
  if (text != NULL)
    gtk_editable_set_position (entry, -1);
  else
    gtk_editable_select_region (entry, 0, -1);
}

static void
plate_next_field (TrammelPointerPlate *self, int step)
{
  int row = self->typing;

  if (!plate_take (self))
    return;
  do
    row = (row + step + (int) self->count) % (int) self->count;
  while (!self->rows[row].typed);
  plate_open_field (self, row, NULL);
}

static gboolean
plate_key (TrammelPointerPlate *self, guint keyval)
{
  switch (keyval) {
    case GDK_KEY_Tab:
    case GDK_KEY_Down:
      plate_next_field (self, 1);
      return TRUE;
    case GDK_KEY_ISO_Left_Tab:
    case GDK_KEY_Up:
      plate_next_field (self, -1);
      return TRUE;
    case GDK_KEY_Escape:
      plate_close_field (self);
      g_signal_emit (self, signals[LEFT], 0);
      return TRUE;
    case GDK_KEY_Return:
    case GDK_KEY_KP_Enter:
      if (plate_take (self)) {
        plate_close_field (self);
        g_signal_emit (self, signals[ENTERED], 0);
      }
      return TRUE;
    default:
      return FALSE;
  }
}

static GtkWidget *
plate_label (float align, const char *css_class)
{
  GtkWidget *label = gtk_label_new (NULL);

  gtk_label_set_xalign (GTK_LABEL (label), align);
  if (css_class != NULL)
    gtk_widget_add_css_class (label, css_class);
  return label;
}

static GtkWidget *
plate_entry (TrammelPointerPlate *self)
{
  GtkWidget *entry = gtk_entry_new ();
  GtkEventController *keys = gtk_event_controller_key_new ();

  gtk_editable_set_width_chars (GTK_EDITABLE (entry), 8);
  gtk_editable_set_max_width_chars (GTK_EDITABLE (entry), 8);
  gtk_entry_set_alignment (GTK_ENTRY (entry), 1);
  gtk_widget_set_visible (entry, FALSE);
  gtk_event_controller_set_propagation_phase (keys, GTK_PHASE_CAPTURE);
  g_signal_connect_swapped (keys, "key-pressed", G_CALLBACK (plate_key), self);
  gtk_widget_add_controller (entry, keys);
  return entry;
}

static void
plate_need_rows (TrammelPointerPlate *self)
{
  GtkWidget *box;

  if (self->grid != NULL)
    return;
  box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 4);
  self->grid = gtk_grid_new ();
  gtk_grid_set_column_spacing (GTK_GRID (self->grid), 9);
  gtk_grid_set_row_spacing (GTK_GRID (self->grid), 1);
  for (int i = 0; i < GRIP_ROWS; i++) {
    self->names[i] = plate_label (0, NULL);
    self->values[i] = plate_label (1, "figure");
    gtk_label_set_width_chars (GTK_LABEL (self->values[i]), 5);
    gtk_widget_set_hexpand (self->values[i], TRUE);
    gtk_grid_attach (GTK_GRID (self->grid), self->names[i], 0, i, 1, 1);
    self->entries[i] = plate_entry (self);
    gtk_grid_attach (GTK_GRID (self->grid), self->values[i], 1, i, 1, 1);
    gtk_grid_attach (GTK_GRID (self->grid), self->entries[i], 2, i, 1, 1);
  }
  self->error = plate_label (0, "error");
  gtk_label_set_wrap (GTK_LABEL (self->error), TRUE);
  gtk_label_set_max_width_chars (GTK_LABEL (self->error), 26);
  gtk_widget_set_visible (self->error, FALSE);
  gtk_box_append (GTK_BOX (box), self->grid);
  gtk_box_append (GTK_BOX (box), self->error);
  gtk_widget_set_parent (box, GTK_WIDGET (self));
}

static void
trammel_pointer_plate_init (TrammelPointerPlate *self)
{
  self->typing = -1;
  gtk_widget_set_halign (GTK_WIDGET (self), GTK_ALIGN_START);
  gtk_widget_set_valign (GTK_WIDGET (self), GTK_ALIGN_START);
  gtk_widget_set_visible (GTK_WIDGET (self), FALSE);
}

GtkWidget *
trammel_pointer_plate_new (void)
{
  return g_object_new (TRAMMEL_TYPE_POINTER_PLATE, NULL);
}

static char *
plate_figure (Units units, const GripRow *row)
{
  if (row->said != NULL)
    return g_strdup (row->said);
  if (row->across)
    return status_place_side (units, row->value);
  return row->percent ? units_percent (row->value) : units_length_figure (units, row->value);
}

void
trammel_pointer_plate_show (TrammelPointerPlate *self, Units units, const GripRow rows[], size_t count)
{
  bool typed = false;

  plate_need_rows (self);
  self->units = units;
  self->count = count;
  for (size_t i = 0; i < GRIP_ROWS; i++) {
    const bool used = i < count;

    gtk_widget_set_visible (self->names[i], used);
    gtk_widget_set_visible (self->values[i], used && self->typing != (int) i);
    if (used) {
      g_autofree char *figure = plate_figure (units, &rows[i]);

      self->rows[i] = rows[i];
      typed = typed || rows[i].typed;
      gtk_label_set_label (GTK_LABEL (self->names[i]), rows[i].name);
      gtk_label_set_label (GTK_LABEL (self->values[i]), figure);
    }
  }
  /* What can only be read is nothing to point at: a quick hand passes through it to the sheet. */
  gtk_widget_set_can_target (GTK_WIDGET (self), typed);
  gtk_widget_set_visible (GTK_WIDGET (self), TRUE);
}

void
trammel_pointer_plate_hide (TrammelPointerPlate *self)
{
  plate_close_field (self);
  gtk_widget_set_visible (GTK_WIDGET (self), FALSE);
}

void
trammel_pointer_plate_stand (TrammelPointerPlate *self, GtkWidget *over, const double px[2], const GdkRectangle *clear)
{
  g_set_weak_pointer (&self->over, over);
  self->pointer[0] = px[0];
  self->pointer[1] = px[1];
  self->clear = *clear;
  if (gtk_widget_get_parent (GTK_WIDGET (self)) != NULL)
    gtk_widget_queue_allocate (gtk_widget_get_parent (GTK_WIDGET (self)));
}

/* To which side of the pointer, tried in this order. */
static const struct { int across, along; } sides[] = { { 1, 1 }, { -1, 1 }, { 1, -1 }, { -1, -1 } };
enum { PLATE_GAP = 22, PLATE_CLEAR = 10 };

static GdkRectangle
plate_at_side (const GdkRectangle *clear, const double px[2], const GtkRequisition *size, size_t side)
{
  GdkRectangle place = { .width = size->width, .height = size->height };
  GdkRectangle wide = { clear->x - PLATE_CLEAR, clear->y - PLATE_CLEAR, clear->width + 2 * PLATE_CLEAR, clear->height + 2 * PLATE_CLEAR };

  place.x = (int) px[0] + (sides[side].across > 0 ? PLATE_GAP : -PLATE_GAP - size->width);
  place.y = (int) px[1] + (sides[side].along > 0 ? PLATE_GAP : -PLATE_GAP - size->height);
  if (gdk_rectangle_intersect (&place, &wide, NULL))
    place.x = sides[side].across > 0 ? wide.x + wide.width : wide.x - size->width;
  return place;
}

static bool
plate_fits (const GdkRectangle *place, int width, int height)
{
  return place->x >= 0 && place->y >= 0 && place->x + place->width <= width && place->y + place->height <= height;
}

void
trammel_pointer_plate_position (TrammelPointerPlate *self, GtkWidget *parent, GdkRectangle *place)
{
  const int width = gtk_widget_get_width (parent), height = gtk_widget_get_height (parent);
  GdkRectangle clear = self->clear;
  GtkRequisition size;
  double x = 0, y = 0, px[2];

  gtk_widget_get_preferred_size (GTK_WIDGET (self), NULL, &size);
  if (self->over != NULL)
    gtk_widget_translate_coordinates (self->over, parent, 0, 0, &x, &y);
  px[0] = self->pointer[0] + x;
  px[1] = self->pointer[1] + y;
  clear.x += (int) x;
  clear.y += (int) y;
  for (size_t i = 0; i < G_N_ELEMENTS (sides); i++) {
    *place = plate_at_side (&clear, px, &size, i);
    if (plate_fits (place, width, height))
      return;
  }
  place->x = CLAMP (place->x, 0, MAX (0, width - size.width));
  place->y = CLAMP (place->y, 0, MAX (0, height - size.height));
}

void
trammel_pointer_plate_type (TrammelPointerPlate *self, const char *text)
{
  for (size_t i = 0; i < self->count; i++)
    if (self->rows[i].typed) {
      plate_open_field (self, (int) i, text);
      return;
    }
}

bool
trammel_pointer_plate_is_typing (TrammelPointerPlate *self)
{
  return self->typing >= 0;
}

void
trammel_pointer_plate_accept (TrammelPointerPlate *self)
{
  if (self->typing >= 0)
    plate_take (self);
  plate_close_field (self);
}
