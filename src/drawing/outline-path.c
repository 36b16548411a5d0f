#include "drawing/outline-path.h"
#include <math.h>
#include "drawing/path-in-sight.h"
#include "geometry/stretch.h"

/* From millimetres, x aft and y to starboard, to the drawing. */
static cairo_matrix_t
view_matrix (const SheetView *view, OutlineHalf half)
{
  cairo_matrix_t matrix;

  cairo_matrix_init (&matrix, 0, view->scale, half == HALF_PORT ? -view->scale : view->scale, 0, view->origin_x, view->origin_y);
  return matrix;
}

/* A Segment's arc goes the shorter way round; half-way exactly, by the side of greater y. */
static void
add_arc (cairo_t *cr, Point from, const Segment *arc, const Box *sight)
{
  const double begin = atan2 ((from.y - arc->centre.y) / arc->ry, (from.x - arc->centre.x) / arc->rx);
  const double end = atan2 ((arc->to.y - arc->centre.y) / arc->ry, (arc->to.x - arc->centre.x) / arc->rx);
  const Point middle = segment_at (from, arc, 0.5);
  const double by = atan2 ((middle.y - arc->centre.y) / arc->ry, (middle.x - arc->centre.x) / arc->rx);
  const double turn = remainder (end - begin, 2 * M_PI);
  const bool rising = remainder (by - begin, 2 * M_PI) > 0;

  arc_in_sight (cr, &(PathArc) { arc->centre, arc->rx, arc->ry, begin, begin + copysign (turn, rising ? 1 : -1) }, sight);
}

static void
add_segment (cairo_t *cr, Point from, const Segment *segment, const Box *sight)
{
  switch (segment->kind)
    {
    case SEGMENT_LINE:
      cairo_line_to (cr, segment->to.x, segment->to.y);
      break;
    case SEGMENT_CURVE:
      curve_in_sight (cr, (Point[]) { from, segment->control1, segment->control2, segment->to }, sight);
      break;
    case SEGMENT_ARC:
      add_arc (cr, from, segment, sight);
      break;
    }
}

void
outline_path_stretch (cairo_t *cr, Point from, const Segment segments[], size_t count)
{
  const Box sight = sight_of (cr);

  cairo_move_to (cr, from.x, from.y);
  for (size_t i = 0; i < count; i++)
    {
      add_segment (cr, from, &segments[i], &sight);
      from = segments[i].to;
    }
}

static void
add_forward (cairo_t *cr, const Outline *outline)
{
  const Box sight = sight_of (cr);

  for (size_t i = 0; i < outline_segment_count (outline); i++)
    add_segment (cr, outline_node (outline, i), outline_segment (outline, i), &sight);
}

static void
add_backward (cairo_t *cr, const Outline *outline)
{
  const Box sight = sight_of (cr);

  for (size_t i = outline_segment_count (outline); i-- > 0;)
    {
      const Segment back = segment_reversed (outline_node (outline, i), outline_segment (outline, i));

      add_segment (cr, outline_node (outline, i + 1), &back, &sight);
    }
}

static void
move_to_node (cairo_t *cr, const Outline *outline, size_t node)
{
  const Point at = outline_node (outline, node);

  cairo_move_to (cr, at.x, at.y);
}

void
outline_path_half (cairo_t *cr, const SheetView *view, const Outline *outline, OutlineHalf half)
{
  const cairo_matrix_t matrix = view_matrix (view, half);

  cairo_save (cr);
  cairo_transform (cr, &matrix);
  move_to_node (cr, outline, 0);
  add_forward (cr, outline);
  cairo_restore (cr);
}

void
outline_path_segment (cairo_t *cr, const SheetView *view, const Outline *outline, size_t segment, OutlineHalf half)
{
  const cairo_matrix_t matrix = view_matrix (view, half);
  Box sight;

  cairo_save (cr);
  cairo_transform (cr, &matrix);
  sight = sight_of (cr);
  move_to_node (cr, outline, segment);
  add_segment (cr, outline_node (outline, segment), outline_segment (outline, segment), &sight);
  cairo_restore (cr);
}

void
outline_path_whole (cairo_t *cr, const SheetView *view, const Outline *outline)
{
  const cairo_matrix_t starboard = view_matrix (view, HALF_STARBOARD), port = view_matrix (view, HALF_PORT);
  const Point last = outline_node (outline, outline_node_count (outline) - 1);

  cairo_save (cr);
  cairo_transform (cr, &starboard);
  move_to_node (cr, outline, 0);
  add_forward (cr, outline);
  cairo_restore (cr);
  cairo_save (cr);
  cairo_transform (cr, &port);
  cairo_line_to (cr, last.x, last.y);
  add_backward (cr, outline);
  cairo_restore (cr);
  cairo_close_path (cr);
}

void
outline_path_closed (cairo_t *cr, const SheetView *view, const Outline *outline)
{
  outline_path_half (cr, view, outline, HALF_STARBOARD);
  cairo_close_path (cr);
}

void
outline_path_surface (cairo_t *cr, const SheetView *view, const Surface *surface, bool closes)
{
  if (closes && !surface->root_open)
    {
      outline_path_whole (cr, view, surface->outline);
      return;
    }
  for (int half = HALF_STARBOARD; half <= HALF_PORT; half++)
    {
      outline_path_half (cr, view, surface->outline, half);
      if (closes)
        cairo_close_path (cr);
    }
}

Point
outline_tip (const Outline *outline)
{
  Point tip = outline_node (outline, 0);

  for (size_t i = 0; i < outline_segment_count (outline); i++)
    {
      const Point from = outline_node (outline, i);
      const Segment *segment = outline_segment (outline, i);
      double turns[2];
      const size_t count = segment_y_turns (from, segment, turns);

      for (size_t j = 0; j < count; j++)
        {
          const Point there = segment_at (from, segment, turns[j]);

          tip = there.y > tip.y ? there : tip;
        }
      tip = segment->to.y > tip.y ? segment->to : tip;
    }
  return tip;
}

/* Where x is met between two parameters that straddle it; thirty halvings are finer than any drawing. */
static double
y_where_x (const Stretch *stretch, double x, double low, double high)
{
  const bool rising = stretch_at (stretch, high).x > stretch_at (stretch, low).x;

  for (int i = 0; i < 30; i++)
    {
      const double middle = (low + high) / 2;

      if ((stretch_at (stretch, middle).x < x) == rising)
        low = middle;
      else
        high = middle;
    }
  return stretch_at (stretch, (low + high) / 2).y;
}

/* A line or curve lies within its ends and controls; that is soon told, and true of few segments. */
static bool
may_meet_x (Point from, const Segment *segment, double x)
{
  double least = fmin (from.x, segment->to.x), greatest = fmax (from.x, segment->to.x);

  if (segment->kind == SEGMENT_ARC)
    return true;
  if (segment->kind == SEGMENT_CURVE)
    {
      least = fmin (least, fmin (segment->control1.x, segment->control2.x));
      greatest = fmax (greatest, fmax (segment->control1.x, segment->control2.x));
    }
  return least <= x && x <= greatest;
}

/* Where a segment meets x, its y joined to what was found. A body is smooth: between sixteen steps a segment runs fore or aft only. */
static void
join_span (Point from, const Segment *segment, double x, double *low, double *high)
{
  enum { STEPS = 16 };
  const Stretch stretch = stretch_make (from, segment);
  double before = from.x;

  for (int i = 1; i <= STEPS; i++)
    {
      const double here = stretch_at (&stretch, i / (double) STEPS).x;

      if ((before <= x && x <= here) || (here <= x && x <= before))
        {
          const double y = y_where_x (&stretch, x, (i - 1) / (double) STEPS, i / (double) STEPS);

          *low = fmin (*low, y);
          *high = fmax (*high, y);
        }
      before = here;
    }
}

bool
outline_span_at (const Outline *outline, double x, double *low, double *high)
{
  double least = INFINITY, greatest = -INFINITY;

  for (size_t i = 0; i < outline_segment_count (outline); i++)
    if (may_meet_x (outline_node (outline, i), outline_segment (outline, i), x))
      join_span (outline_node (outline, i), outline_segment (outline, i), x, &least, &greatest);
  if (least > greatest)
    return false;
  *low = least;
  *high = greatest;
  return true;
}

double
outline_reach_at (const Outline *outline, double x)
{
  double low, high;

  return outline_span_at (outline, x, &low, &high) ? high : NAN;
}
