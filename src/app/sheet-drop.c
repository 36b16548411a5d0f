#include "app/sheet-canvas-private.h"
#include <math.h>
#include "app/part-adder.h"
#include "app/part-list.h"
#include "app/tool.h"

/* Nearer than this to the centre line it is meant to stand on it. */
static const double centre_line_px = 6;

static Point
drop_place (TrammelSheetCanvas *self, double x, double y)
{
  const Point place = trammel_sheet_canvas_snapped (self, view_from_screen (&self->view, x, y), NULL, SNAP_WHOLE, false);

  return fabs (place.y) * self->view.scale <= centre_line_px ? (Point) { place.x, 0 } : place;
}

static void
drop_show (TrammelSheetCanvas *self, Part *takes)
{
  self->overlay.part_ghost = takes;
  if (self->dropped != NULL)
    piece_unref (&self->dropped->piece);
  self->dropped = takes;
  trammel_sheet_canvas_refresh (self);
}

/* Where it would stand, as with the Part tool. */
static GdkDragAction
drop_moved (GtkDropTarget *target, double x, double y, TrammelSheetCanvas *self)
{
  const GValue *value = gtk_drop_target_get_value (target);
  const Point place = drop_place (self, x, y);
  Part *ghost;

  if (value == NULL)
    return GDK_ACTION_COPY;
  ghost = (Part *) piece_dup (&((Part *) g_value_get_boxed (value))->piece);
  ghost->x = place.x;
  ghost->y = place.y;
  drop_show (self, ghost);
  return GDK_ACTION_COPY;
}

static void
drop_left (GtkDropTarget *target, TrammelSheetCanvas *self)
{
  trammel_sheet_canvas_clear_guides (self);
  drop_show (self, NULL);
}

static gboolean
drop_done (GtkDropTarget *target, const GValue *value, double x, double y, TrammelSheetCanvas *self)
{
  const Part *pattern = g_value_get_boxed (value);
  const Point place = drop_place (self, x, y);
  g_autofree char *sentence = part_adder_put (self->session, pattern, &place);

  drop_left (target, self);
  if (sentence != NULL)
    trammel_sheet_canvas_set_hint (self, sentence);
  return TRUE;
}

void
sheet_canvas_add_drop (TrammelSheetCanvas *self)
{
  GtkDropTarget *target = gtk_drop_target_new (TRAMMEL_TYPE_PART_PATTERN, GDK_ACTION_COPY);

  gtk_drop_target_set_preload (target, TRUE);
  g_signal_connect (target, "motion", G_CALLBACK (drop_moved), self);
  g_signal_connect (target, "leave", G_CALLBACK (drop_left), self);
  g_signal_connect (target, "drop", G_CALLBACK (drop_done), self);
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (target));
}
