#include "app/wrap-row.h"

struct _TrammelWrapRow {
  GtkWidget parent;
  GtkWidget *sentence, *controls;
};

G_DEFINE_FINAL_TYPE (TrammelWrapRow, trammel_wrap_row, GTK_TYPE_WIDGET)

enum { BESIDE = 12, BENEATH = 6, LINES = 2 };

static int
natural (GtkWidget *widget, GtkOrientation orientation, int for_size)
{
  int size;

  gtk_widget_measure (widget, orientation, for_size, NULL, &size, NULL, NULL);
  return size;
}

static int
minimum (GtkWidget *widget, GtkOrientation orientation)
{
  int size;

  gtk_widget_measure (widget, orientation, -1, &size, NULL, NULL, NULL);
  return size;
}

/* What the sentence has beside the controls at that width; at most what it needs in one line. */
static int
room_beside (TrammelWrapRow *self, int width)
{
  return width - natural (self->controls, GTK_ORIENTATION_HORIZONTAL, -1) - BESIDE;
}

static bool
stands_beside (TrammelWrapRow *self, int width)
{
  const int room = room_beside (self, width), one_line = natural (self->sentence, GTK_ORIENTATION_VERTICAL, 10000);

  return room >= minimum (self->sentence, GTK_ORIENTATION_HORIZONTAL)
         && natural (self->sentence, GTK_ORIENTATION_VERTICAL, room) <= LINES * one_line;
}

static void
trammel_wrap_row_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *least, int *wanted, int *least_baseline,
                          int *wanted_baseline)
{
  TrammelWrapRow *self = TRAMMEL_WRAP_ROW (widget);
  const bool alone = !gtk_widget_get_visible (self->controls);
  const int width = for_size < 0 ? 10000 : for_size;

  if (orientation == GTK_ORIENTATION_HORIZONTAL) {
    *least = minimum (self->sentence, orientation);
    *wanted = natural (self->sentence, orientation, -1);
    if (!alone) {
      *least = MAX (*least, minimum (self->controls, orientation));
      *wanted += BESIDE + natural (self->controls, orientation, -1);
    }
    return;
  }
  if (alone)
    *wanted = natural (self->sentence, orientation, width);
  else if (stands_beside (self, width))
    *wanted = MAX (natural (self->sentence, orientation, room_beside (self, width)), natural (self->controls, orientation, -1));
  else
    *wanted = natural (self->sentence, orientation, width) + BENEATH + natural (self->controls, orientation, width);
  *least = *wanted;
}

static void
allot (GtkWidget *child, GtkAllocation place)
{
  gtk_widget_size_allocate (child, &place, -1);
}

static void
trammel_wrap_row_size_allocate (GtkWidget *widget, int width, int height, int baseline)
{
  TrammelWrapRow *self = TRAMMEL_WRAP_ROW (widget);
  const bool rtl = gtk_widget_get_direction (widget) == GTK_TEXT_DIR_RTL;
  int room, above;

  if (!gtk_widget_get_visible (self->controls)) {
    allot (self->sentence, (GtkAllocation) { 0, 0, width, height });
    return;
  }
  if (stands_beside (self, width)) {
    room = room_beside (self, width);
    allot (self->sentence, (GtkAllocation) { rtl ? width - room : 0, 0, room, height });
    allot (self->controls, (GtkAllocation) { rtl ? 0 : room + BESIDE, 0, width - room - BESIDE, height });
    return;
  }
  above = natural (self->sentence, GTK_ORIENTATION_VERTICAL, width);
  room = MIN (width, natural (self->controls, GTK_ORIENTATION_HORIZONTAL, -1));
  allot (self->sentence, (GtkAllocation) { 0, 0, width, above });
  allot (self->controls, (GtkAllocation) { rtl ? width - room : 0, above + BENEATH, room, height - above - BENEATH });
}

static GtkSizeRequestMode
trammel_wrap_row_request_mode (GtkWidget *widget)
{
  return GTK_SIZE_REQUEST_HEIGHT_FOR_WIDTH;
}

static void
trammel_wrap_row_dispose (GObject *object)
{
  TrammelWrapRow *self = TRAMMEL_WRAP_ROW (object);

  g_clear_pointer (&self->sentence, gtk_widget_unparent);
  g_clear_pointer (&self->controls, gtk_widget_unparent);
  G_OBJECT_CLASS (trammel_wrap_row_parent_class)->dispose (object);
}

static void
trammel_wrap_row_class_init (TrammelWrapRowClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = trammel_wrap_row_dispose;
  widget_class->measure = trammel_wrap_row_measure;
  widget_class->size_allocate = trammel_wrap_row_size_allocate;
  widget_class->get_request_mode = trammel_wrap_row_request_mode;
}

static void
trammel_wrap_row_init (TrammelWrapRow *self)
{
  self->sentence = gtk_label_new (NULL);
  gtk_label_set_xalign (GTK_LABEL (self->sentence), 0);
  gtk_label_set_wrap (GTK_LABEL (self->sentence), TRUE);
  gtk_widget_set_parent (self->sentence, GTK_WIDGET (self));
}

GtkWidget *
trammel_wrap_row_new (GtkWidget *controls)
{
  TrammelWrapRow *self = g_object_new (TRAMMEL_TYPE_WRAP_ROW, NULL);

  self->controls = controls;
  gtk_widget_set_parent (controls, GTK_WIDGET (self));
  return GTK_WIDGET (self);
}

GtkLabel *
trammel_wrap_row_sentence (TrammelWrapRow *self)
{
  return GTK_LABEL (self->sentence);
}
