#include "geometry/outline-draft.h"
#include "geometry/outline-private.h"

#include <assert.h>

/* An arc over more than a quarter becomes as many curves as it needs to keep its shape. */
static void
make_curves (Draft *draft, size_t segment)
{
  Segment curves[4];
  const size_t count = segment_as_curves (draft_node (draft, segment), &draft->segments[segment], curves);

  if (draft->segments[segment].kind != SEGMENT_ARC || count == 1)
    {
      draft_make_curve (draft, segment);
      return;
    }
  for (size_t i = 1; i < count; i++)
    {
      draft_open (draft, segment);
      draft->kinds[segment + 1] = NODE_SMOOTH;
    }
  for (size_t i = 0; i < count; i++)
    draft->segments[segment + i] = curves[i];
}

/* Which side of the line a-b the middle of the other nodes lies on: signed, 0 without others. */
static double
side_of_others (const Draft *draft, size_t segment)
{
  const Point a = draft_node (draft, segment), b = draft_node (draft, segment + 1);
  Point sum = { 0, 0 };
  double others = 0;

  for (size_t node = 0; node <= draft->count; node++)
    if (node != segment && node != segment + 1)
      {
        sum = point_add (sum, point_sub (draft_node (draft, node), a));
        others++;
      }
  return others > 0 ? point_cross (point_sub (b, a), point_scale (sum, 1 / others)) : 0;
}

/* Of the two quarter ellipses between a and b one leaves a along x, its centre straight beside b's station; the other along y. */
static CoreStatus
make_arc (Draft *draft, size_t segment)
{
  const Point a = draft_node (draft, segment), b = draft_node (draft, segment + 1), along = point_sub (b, a);
  const double rx = fabs (along.x), ry = fabs (along.y), side = side_of_others (draft, segment);
  const Segment leaving_along_y = segment_arc ((Point) { b.x, a.y }, rx, ry, b);
  const Segment leaving_along_x = segment_arc ((Point) { a.x, b.y }, rx, ry, b);
  const Point belly = point_sub (segment_at (a, &leaving_along_y, 0.5), a);
  const bool no_side = fabs (side) <= 1e-9 * point_dot (along, along);

  if (!(rx > 0 && ry > 0))
    return CORE_OFF_ITS_ARC;
  const bool outer = no_side ? belly.y > along.y / 2 : point_cross (along, belly) * side < 0;
  draft->segments[segment] = outer ? leaving_along_y : leaving_along_x;
  return CORE_OK;
}

CoreStatus
outline_with_segment_kind (const Outline *self, size_t segment, SegmentKind kind, Outline **made)
{
  CoreStatus status = CORE_OK;
  Draft draft;

  assert (segment < self->count);
  if (self->stretches[segment].segment.kind == kind)
    {
      *made = outline_ref (self);
      return CORE_OK;
    }
  if (outline_draft_begin (&draft, self, 3))
    return CORE_NO_MEMORY;
  if (kind == SEGMENT_LINE)
    draft.segments[segment] = segment_line (draft.segments[segment].to);
  else if (kind == SEGMENT_CURVE)
    make_curves (&draft, segment);
  else
    status = make_arc (&draft, segment);
  if (status)
    {
      draft_abandon (&draft);
      return status;
    }
  if (kind != SEGMENT_CURVE)                  /* curves have kept the tangents */
    {
      draft_settle (&draft, segment);
      draft_settle (&draft, segment + 1);
    }
  return outline_draft_finish (&draft, made);
}
