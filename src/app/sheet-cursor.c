#include "app/sheet-canvas-private.h"
#include <math.h>
#include <string.h>

ToolEvent
sheet_cursor_event (TrammelSheetCanvas *self)
{
  const Point px = view_to_screen (&self->view, self->overlay.cursor);

  return (ToolEvent) { .x = px.x, .y = px.y, .place = self->overlay.cursor, .loose = true,
                       .keyed = !self->pointer.loose };
}

void
sheet_cursor_hover (TrammelSheetCanvas *self)
{
  const ToolEvent event = sheet_cursor_event (self);

  if (self->tool->kind->hover != NULL)
    self->tool->kind->hover (self->tool, &event);
}

/* What is printed is met only by steps that the eye can follow, and the nearer it is looked at the finer they are: a px of the screen. */
static double
cursor_step (TrammelSheetCanvas *self)
{
  return sheet_canvas_shows_print (self) ? 1 / self->view.scale : trammel_sheet_canvas_key_step (self);
}

/* Where the pointer was; on a whole step, where steps are round. */
static void
cursor_begin (TrammelSheetCanvas *self)
{
  const Point at = self->pointer_inside ? self->pointer.place : view_from_screen (&self->view, self->view.width / 2, self->view.height / 2);
  const double step = cursor_step (self);

  self->overlay.cursor = sheet_canvas_shows_print (self) ? at : (Point) { round (at.x / step) * step, round (at.y / step) * step };
  self->overlay.has_cursor = true;
}

void
sheet_cursor_move (TrammelSheetCanvas *self, Point steps)
{
  Point px;

  if (!self->overlay.has_cursor)
    cursor_begin (self);
  self->fits = self->fits && !sheet_canvas_draws_over_plan (self);
  self->overlay.cursor = point_add (self->overlay.cursor, point_scale (steps, cursor_step (self)));
  px = view_to_screen (&self->view, self->overlay.cursor);
  if (px.x < 0 || px.y < 0 || px.x > self->view.width || px.y > self->view.height)
    trammel_sheet_canvas_pan (self, self->view.width / 2 - px.x, self->view.height / 2 - px.y);
  sheet_cursor_hover (self);
  sheet_canvas_emit_pointer (self);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

/* An axis was set, or another view was taken: the plan is turned and moved, and the cursor stays on what is printed there. */
void
sheet_cursor_follow_print (TrammelSheetCanvas *self)
{
  const InkLevels *ink = trammel_plan_store_ink (self->plans);
  Placing now;
  Point place;

  if (ink == NULL || !trammel_plan_store_placing (self->plans, &now)) {
    self->seen_ink = NULL;
    return;
  }
  place = placing_sheet (&now, placing_px (&self->seen_placing, self->overlay.cursor));
  if (self->overlay.has_cursor && self->seen_ink == ink && memcmp (&now, &self->seen_placing, sizeof now) != 0
      && sheet_canvas_shows_print (self) && point_is_finite (place)) {
    self->overlay.cursor = place;
    sheet_canvas_emit_pointer (self);
  }
  self->seen_ink = ink;
  self->seen_placing = now;
}
