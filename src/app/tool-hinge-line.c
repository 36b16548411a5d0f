#include "app/tool-hinge.h"
#include <math.h>
#include "app/traced.h"

/* px of the screen: how near an end is caught by a surface and by what is printed; how far beyond an edge it is brought onto it. */
static const double REACH_PX = 12, FINGER_PX = 22, PRINT_PX = 10, EDGE_PX = 8;

static TrammelSession *
session_of (HingeTool *self)
{
  return trammel_sheet_canvas_session (self->tool.sheet);
}

static double
mm_of_px (HingeTool *self, double px)
{
  return px / trammel_sheet_canvas_view (self->tool.sheet)->scale;
}

const Surface *
hinge_tool_surface (HingeTool *self)
{
  return hinge_seat_surface (&self->seat, trammel_session_aeroplane (session_of (self)));
}

/* A first end stood in the view that was in hand then. */
static void
take_ground (HingeTool *self)
{
  TraceGround *ground = trace_ground_new (trammel_sheet_canvas_plan_store (self->tool.sheet));
  const char *before = self->ground != NULL ? self->ground->view : NULL, *now = ground != NULL ? ground->view : NULL;

  self->begun = self->begun && g_strcmp0 (before, now) == 0;
  trace_ground_unref (self->ground);
  self->ground = ground;
}

static void
take_seat (HingeTool *self, const ToolEvent *event)
{
  const Aeroplane *aeroplane = trammel_session_aeroplane (session_of (self));
  const double reach = mm_of_px (self, event->finger ? FINGER_PX : REACH_PX);
  const Surface *surface;

  if (self->begun)
    return;
  hinge_seat_clear (&self->seat);
  self->seat = event->strip != NULL
               ? hinge_seat_upright (aeroplane, event->place, reach)
               : hinge_seat_at (aeroplane, trammel_session_selection (session_of (self)), self->ground, event->place, reach);
  surface = hinge_tool_surface (self);
  if (self->ground != NULL && surface != NULL && g_strcmp0 (surface->traced, self->ground->view) == 0)
    self->seat.shortening = trammel_traced_shortening (trammel_traced_of (session_of (self)), surface);
}

static bool
snaps (HingeTool *self, const ToolEvent *event)
{
  return !event->loose && trammel_settings_flag (trammel_session_settings (session_of (self)), SNAPPING);
}

/* Whole steps, and on the sheet what draws near along each axis. A fin that lies on its side has nothing beside it on the sheet. */
static Point
snapped (HingeTool *self, const ToolEvent *event)
{
  const SheetScene scene = trammel_sheet_canvas_scene (self->tool.sheet);
  const double step = sheet_snap_step (&scene);

  if (!self->seat.laid_down && !self->seat.upright)
    return trammel_sheet_canvas_snapped (self->tool.sheet, event->place, NULL, SNAP_WHOLE, event->loose);
  trammel_sheet_canvas_clear_guides (self->tool.sheet);
  return snaps (self, event) ? (Point) { round (event->place.x / step) * step, round (event->place.y / step) * step } : event->place;
}

static bool
clings (HingeTool *self, const ToolEvent *event)
{
  const Plan *plan = trammel_plan_store_plan (trammel_sheet_canvas_plan_store (self->tool.sheet));

  return self->ground != NULL && plan != NULL && plan->cling && snaps (self, event) && !event->shift && event->strip == NULL;
}

static HingeEnd
end_at (HingeTool *self, const ToolEvent *event)
{
  const Point meant = hinge_seat_own (&self->seat, snapped (self, event));
  const Point px = clings (self, event) ? placing_px (&self->ground->placing, event->place) : (Point) { NAN, NAN };
  HingeEnd end = { .own = meant, .meant = meant, .spots = HINGE_NO_SPOTS };
  double reach;
  Point near;

  if (!point_is_finite (px))
    return end;
  reach = mm_of_px (self, PRINT_PX) * trace_ground_scale (self->ground, px);
  end.spots = hinge_print_spots (self->ground, event->place, reach);
  near = hinge_print_spot (&end.spots);
  if (point_is_finite (near))
    end.own = hinge_seat_printed (&self->seat, placing_sheet (&self->ground->placing, near));
  return end;
}

/* An end at a printed corner keeps its station, one that is only on a line the station that the hand means. */
static void
put_on_line (HingeEnd *end, double corner, const PrintedHinge *line)
{
  const double station = isnan (corner) ? end->meant.y : corner;

  end->own = (Point) { line->at_root + line->slope * station, station };
}

/* A place a little beyond an edge means the edge. */
static Point
onto (HingeTool *self, const Surface *surface, Point own)
{
  const Point on = hinge_onto (surface, own);

  return point_distance (on, own) <= mm_of_px (self, EDGE_PX) ? on : own;
}

/* As deep at this end as at the first. */
static void
make_parallel (HingeTool *self, const Surface *surface)
{
  double leading, first, second;

  if (hinge_edges (surface, self->first.own.y, &leading, &first) && hinge_edges (surface, self->second.own.y, &leading, &second))
    self->second.own.x = second - (first - self->first.own.x);
}

/* The line between both ends as it would be put: the inner end is whichever lies further in. */
static void
make_line (HingeTool *self, const Surface *surface)
{
  const Point a = onto (self, surface, self->first.own), b = onto (self, surface, self->second.own);
  const bool turned = self->begun && b.y < a.y;
  const Point inner = !self->begun || turned ? b : a, outer = turned ? a : b;

  self->line = (Control) { .kind = hinge_usual_kind (surface->role), .inner = inner.y, .outer = outer.y, .hinge_inner_x = inner.x,
                           .hinge_outer_x = outer.x, .up = NAN, .down = NAN };
  self->fault = self->begun ? hinge_check (surface, &self->line, &self->fault_at) : HINGE_SOUND;
}

/* Where both ends stand beside one printed line, the hinge is laid on it. */
static void
lay_on_print (HingeTool *self, bool exactly)
{
  PrintedHinge line;

  self->printed = self->begun && self->ground != NULL
                  && hinge_print_line (self->ground, &self->seat, &self->first.spots, &self->second.spots, exactly, &line);
  if (!self->printed)
    return;
  put_on_line (&self->first, line.first, &line);
  put_on_line (&self->second, line.second, &line);
}

static bool
is_over_fin (HingeTool *self, const ToolEvent *event)
{
  const Hit hit = tool_hit (&self->tool, event);
  const Surface *surface = hit.kind == HIT_SURFACE ? aeroplane_surface_by_id (trammel_session_aeroplane (session_of (self)), hit.id) : NULL;

  return surface != NULL && !surface_is_horizontal (surface);
}

void
hinge_tool_aim (HingeTool *self, const ToolEvent *event, bool exactly)
{
  const Surface *surface;
  HingeEnd first;

  take_ground (self);
  take_seat (self, event);
  self->over = event->strip != NULL ? event->strip : GTK_WIDGET (self->tool.sheet);
  self->at = (Point) { event->x, event->y };
  surface = hinge_tool_surface (self);
  self->edge_on = surface == NULL && event->strip == NULL && is_over_fin (self, event);
  self->printed = false;
  if (surface == NULL) {
    trammel_sheet_canvas_clear_guides (self->tool.sheet);
    return;
  }
  first = self->first;
  self->second = end_at (self, event);
  lay_on_print (self, exactly);
  if (self->begun && event->shift)
    make_parallel (self, surface);
  make_line (self, surface);
  self->first = first;      /* the next place of the hand may mean another line */
}

void
hinge_tool_aim_at (HingeTool *self, Point place)
{
  const Surface *surface = hinge_tool_surface (self);
  const Point px = view_to_screen (trammel_sheet_canvas_view (self->tool.sheet), place);
  const ToolEvent event = { .x = px.x, .y = px.y, .place = place, .loose = true };

  if (surface == NULL) {
    hinge_tool_aim (self, &event, true);
    return;
  }
  self->printed = false;
  self->second = (HingeEnd) { .own = place, .meant = place, .spots = HINGE_NO_SPOTS };
  make_line (self, surface);
}
