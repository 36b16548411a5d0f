#include "app/ruler-widget.h"
#include "app/theme.h"
#include "drawing/rulers.h"

struct _TrammelRulerWidget {
  GtkWidget parent;
  TrammelSheetCanvas *sheet;
  GtkOrientation orientation;
};

G_DEFINE_FINAL_TYPE (TrammelRulerWidget, trammel_ruler_widget, GTK_TYPE_WIDGET)

enum { RULER_PX = 21 };

static void
trammel_ruler_widget_dispose (GObject *object)
{
  g_clear_object (&TRAMMEL_RULER_WIDGET (object)->sheet);
  G_OBJECT_CLASS (trammel_ruler_widget_parent_class)->dispose (object);
}

static void
ruler_widget_extent (TrammelRulerWidget *self, Ruler *ruler)
{
  TrammelSession *session = trammel_sheet_canvas_session (self->sheet);
  const Box box = sheet_selection_extent (trammel_session_figures (session), trammel_session_selection (session));
  const bool across = self->orientation == GTK_ORIENTATION_HORIZONTAL;

  ruler->extent_from = ruler->extent_to = NAN;
  if (box.min.x > box.max.x || box.min.y > box.max.y)
    return;
  ruler->extent_from = across ? box.min.y : box.min.x;
  ruler->extent_to = across ? box.max.y : box.max.x;
}

static void
trammel_ruler_widget_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  TrammelRulerWidget *self = TRAMMEL_RULER_WIDGET (widget);
  const int width = gtk_widget_get_width (widget), height = gtk_widget_get_height (widget);
  const bool across = self->orientation == GTK_ORIENTATION_HORIZONTAL;
  const Look look = theme_look (widget);
  Ruler ruler = { .look = &look, .units = trammel_session_units (trammel_sheet_canvas_session (self->sheet)),
                  .view = trammel_sheet_canvas_view (self->sheet), .pointer = NAN };
  cairo_t *cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, 0, (float) width, (float) height));
  Point pointer;

  if (trammel_sheet_canvas_pointer (self->sheet, &pointer))
    ruler.pointer = across ? pointer.y : pointer.x;
  ruler_widget_extent (self, &ruler);
  if (across)
    draw_ruler_across (cr, &ruler, width, height);
  else
    draw_ruler_along (cr, &ruler, width, height);
  cairo_destroy (cr);
}

static void
trammel_ruler_widget_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *minimum, int *natural,
                              int *minimum_baseline, int *natural_baseline)
{
  const Look look = theme_look (widget);
  const int thick = (int) (RULER_PX * look.ruler_size / 10.5 + 0.5);      /* made for figures of 10.5 px */

  *minimum = *natural = orientation == TRAMMEL_RULER_WIDGET (widget)->orientation ? 40 : MAX (RULER_PX, thick);
  *minimum_baseline = *natural_baseline = -1;
}

static void
trammel_ruler_widget_class_init (TrammelRulerWidgetClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = trammel_ruler_widget_dispose;
  GTK_WIDGET_CLASS (klass)->snapshot = trammel_ruler_widget_snapshot;
  GTK_WIDGET_CLASS (klass)->measure = trammel_ruler_widget_measure;
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (klass), GTK_ACCESSIBLE_ROLE_PRESENTATION);
}

static void
trammel_ruler_widget_init (TrammelRulerWidget *self)
{
  gtk_widget_set_overflow (GTK_WIDGET (self), GTK_OVERFLOW_HIDDEN);
}

static void
ruler_widget_follow (TrammelRulerWidget *self, gpointer source, const char *signal)
{
  g_signal_connect_object (source, signal, G_CALLBACK (gtk_widget_queue_draw), self, G_CONNECT_SWAPPED);
}

GtkWidget *
trammel_ruler_widget_new (TrammelSheetCanvas *sheet, GtkOrientation orientation)
{
  TrammelRulerWidget *self = g_object_new (TRAMMEL_TYPE_RULER_WIDGET, NULL);
  TrammelSession *session = trammel_sheet_canvas_session (sheet);

  self->sheet = g_object_ref (sheet);
  self->orientation = orientation;
  ruler_widget_follow (self, sheet, "view-changed");
  ruler_widget_follow (self, sheet, "pointer-changed");
  ruler_widget_follow (self, session, "changed");
  ruler_widget_follow (self, session, "selection-changed");
  ruler_widget_follow (self, trammel_session_settings (session), "changed");
  theme_follow (GTK_WIDGET (self));
  return GTK_WIDGET (self);
}
