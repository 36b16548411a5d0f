#include "trammel-config.h"
#include "app/tracing-private.h"
#include <glib/gi18n-lib.h>
#include <math.h>

/* On which side the trace runs: a station is typed without a sign. */
static double
side_of (Tracing *self)
{
  const Point own = self->clicks->len > 0 ? trace_ground_own (self->ground, tracing_last (self)->px) : self->aim.own;

  return trace_ground_is_half (self->ground) && own.y < 0 ? -1 : 1;
}

bool
tracing_type (Tracing *self, PlaceEntry **entry, Tool *tool, guint keyval, GdkModifierType state, PlaceDone done)
{
  const bool half = trace_ground_is_half (self->ground);
  Point place = self->clicks->len > 0 ? placing_sheet (&self->ground->placing, tracing_last (self)->px) : (Point) { self->ground->placing.x, 0 };
  double px[2];

  if (self->ordered != NULL)
    return false;
  trammel_sheet_canvas_pointer (self->sheet, &place);
  trammel_sheet_canvas_px (GTK_WIDGET (self->sheet), place, px);
  const PlaceStand stand = { half ? _("Station") : _("Height"), GTK_WIDGET (self->sheet), { px[0], px[1] } };

  return place_entry_key_at (entry, tool, keyval, state, (Point) { place.x, half ? fabs (place.y) : place.y }, done, &stand);
}

void
tracing_typed (Tracing *self, Point place)
{
  const Point at = { place.x, side_of (self) * place.y };
  ToolEvent event = { .place = at };
  double px[2];

  trammel_sheet_canvas_px (GTK_WIDGET (self->sheet), at, px);
  event.x = px[0];
  event.y = px[1];
  tracing_click (self, &event);
}
