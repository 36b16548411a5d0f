#include "trammel-config.h"
#include "app/tracing-private.h"
#include <math.h>
#include "app/trace-landing.h"

/* The file's px: clicks that near are one. */
static const double SAME = 1.5;
/* Of how far an unfinished outline goes: a click so near its beginning begins anew, and does not go on from its end. */
static const double ANEW = 0.1;
/* mm: so near its axis a body's tail ends. */
static const double TAIL = 2;

static TrammelTraced *
traced_of (Tracing *self)
{
  return trammel_traced_of (trammel_sheet_canvas_session (self->sheet));
}

/* Ending */

void
tracing_end (Tracing *self, bool open)
{
  const guint count = self->clicks->len;
  g_autofree Point *places = g_new (Point, count + 1);
  g_autofree bool *drawn = g_new (bool, count + 1);

  for (guint i = 0; i < count; i++) {
    places[i] = tracing_click_at (self, i)->px;
    if (i > 0)
      drawn[i - 1] = tracing_click_at (self, i)->drawn;
  }
  if (self->ground->shows == VIEW_BODY_SIDE && !open && point_distance (places[0], places[count - 1]) > SAME) {
    tracing_add (self, places[0], false, false);
    tracing_end (self, open);
    return;
  }
  tracing_drop_proposal (self);
  self->ordered = trace_order_new (self->ground, places, drawn, count, tracing_click_sigma (self, places[count - 1]), open);
  tracing_show (self);
  trammel_traced_trace (traced_of (self), self->ordered, GTK_WIDGET (self->sheet));
}

bool
tracing_return (Tracing *self)
{
  const SheetOverlay *overlay = trammel_sheet_canvas_overlay (self->sheet);

  /* A second time at one place it means no other click. */
  if (overlay->has_cursor && (self->clicks->len == 0 || overlay->cursor.x != self->keyed.x || overlay->cursor.y != self->keyed.y))
    return false;
  if (self->clicks->len > 1 && self->ordered == NULL)
    tracing_end (self, false);
  /* Also where it has ended by itself a moment ago: Return would leave the sheet for the panel. */
  return true;
}

/* A body clicked as far aft as its axis, or nearly, is whole, whoever says so. */
static bool
is_whole_body (Tracing *self)
{
  const TraceClick *last = tracing_last (self);
  const Point end = last != NULL ? trace_ground_own (self->ground, last->px) : (Point) { NAN, NAN };
  double width = 0;

  if (last == NULL || self->ground->shows != VIEW_BODY_TOP)
    return false;
  for (guint i = 0; i + 1 < self->clicks->len; i++) {
    const Point own = trace_ground_own (self->ground, tracing_click_at (self, i)->px);

    width = fmax (width, fabs (own.y));
    if (own.x >= end.x)
      return false;
  }
  return width > 2 * fabs (end.y)
         && fabs (end.y) <= fmax (TAIL, 2 * tracing_click_sigma (self, last->px) / trace_ground_scale (self->ground, last->px));
}

/* What has been accepted stays, as an open outline, to be gone on with: but only where it takes the place of nothing. */
bool
tracing_cancel (Tracing *self)
{
  const bool busy = self->clicks->len > 0;
  const Aeroplane *aeroplane = trammel_session_settled (trammel_sheet_canvas_session (self->sheet));

  if (self->ordered != NULL)
    return true;
  if (self->clicks->len > 1 && (self->resumed || !trace_landing_is_taken (aeroplane, self->ground)))
    tracing_end (self, !is_whole_body (self));
  else {
    tracing_forget (self);
    tracing_show (self);
  }
  return busy;
}

/* Going on */

bool
tracing_is_unfinished (Tracing *self)
{
  TraceOrder *order = trammel_traced_unfinished (traced_of (self), self->ground->view);
  const bool unfinished = order != NULL;

  trace_order_unref (order);
  return unfinished;
}

/* A hand that goes back to where the outline began means another one; unless it closes one that goes round. */
static bool
begins_anew (Tracing *self, const TraceOrder *order, Point px)
{
  const Point first = trace_ground_own (self->ground, order->clicks[0]);
  double reach = 0;

  if (self->ground->shows == VIEW_BODY_SIDE && order->count > 2)
    return false;
  for (size_t i = 1; i < order->count; i++)
    reach = fmax (reach, point_distance (first, trace_ground_own (self->ground, order->clicks[i])));
  return point_distance (first, trace_ground_own (self->ground, px)) <= fmax (tracing_near (self), ANEW * reach);
}

void
tracing_resume (Tracing *self, Point px)
{
  TraceOrder *order;

  if (self->clicks->len > 0)
    return;
  order = trammel_traced_unfinished (traced_of (self), self->ground->view);
  self->resumed = order != NULL && !begins_anew (self, order, px);
  for (size_t i = 0; self->resumed && i < order->count; i++)
    tracing_add (self, order->clicks[i], i > 0 && order->drawn[i - 1], false);
  for (guint i = 1; i < self->clicks->len; i++)
    if (!tracing_click_at (self, i)->drawn)
      tracing_find (self, i);
  trace_order_unref (order);
}
