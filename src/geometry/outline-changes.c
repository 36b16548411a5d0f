#include "geometry/outline-draft.h"
#include "geometry/outline-private.h"

#include <assert.h>

static void
settle_around (Draft *draft, size_t first, size_t last)
{
  for (size_t node = first; node <= last; node++)
    draft_settle (draft, node);
}

CoreStatus
outline_with_node_at (const Outline *self, size_t node, Point place, Outline **made)
{
  Draft draft;

  assert (node <= self->count);
  if (!point_is_finite (place))
    return CORE_NOT_FINITE;
  if (outline_draft_begin (&draft, self, 0))
    return CORE_NO_MEMORY;
  draft_move_node (&draft, node, place);
  settle_around (&draft, node ? node - 1 : 0, node + 1);
  return outline_draft_finish (&draft, made);
}

/* The direction that a line or an arc beside a smooth node gives its other neighbour's handle; zero where there is none. */
static Point
direction_given (const Draft *draft, size_t node, HandleSide side)
{
  const size_t other = side == HANDLE_BEFORE ? node : node - 1;
  const bool inside = node > 0 && node < draft->count;

  if (!inside || draft->kinds[node] == NODE_CORNER || draft->segments[other].kind == SEGMENT_CURVE)
    return (Point) { 0, 0 };
  const Stretch stretch = draft_stretch (draft, other);
  return side == HANDLE_BEFORE ? point_scale (stretch_leaves (&stretch), -1) : stretch_arrives (&stretch);
}

/* The handle on the other side of a smooth node follows one that has been placed. */
static void
turn_other_handle (Draft *draft, size_t node, HandleSide side, Point place)
{
  const Point centre = draft_node (draft, node);
  const size_t other = side == HANDLE_BEFORE ? node : node - 1;
  const double length = point_distance (place, centre);

  if (node == 0 || node >= draft->count || draft->kinds[node] == NODE_CORNER || !(length > 0))
    return;
  if (draft->segments[other].kind != SEGMENT_CURVE)
    return;
  Point *handle = side == HANDLE_BEFORE ? &draft->segments[other].control1 : &draft->segments[other].control2;
  const double reach = draft->kinds[node] == NODE_SYMMETRIC ? length : point_distance (*handle, centre);
  *handle = point_add (centre, point_scale (point_sub (centre, place), reach / length));
}

CoreStatus
outline_with_handle_at (const Outline *self, size_t node, HandleSide side, Point place, Outline **made)
{
  Draft draft;
  Point old;

  if (!point_is_finite (place))
    return CORE_NOT_FINITE;
  if (!outline_handle (self, node, side, &old))
    return CORE_OUT_OF_RANGE;
  if (outline_draft_begin (&draft, self, 0))
    return CORE_NO_MEMORY;
  const Point centre = draft_node (&draft, node), given = direction_given (&draft, node, side);
  if (point_length (given) > 0)
    place = point_add (centre, point_scale (given, fmax (point_dot (point_sub (place, centre), given), 0)));
  if (side == HANDLE_BEFORE)
    draft.segments[node - 1].control2 = place;
  else
    draft.segments[node].control1 = place;
  turn_other_handle (&draft, node, side, place);
  return outline_draft_finish (&draft, made);
}

/* Between the two directions; where they are opposite, from the node before to the node behind. */
static Point
common_direction (const Draft *draft, size_t node)
{
  const Stretch before = draft_stretch (draft, node - 1), after = draft_stretch (draft, node);
  Point sum = point_add (stretch_arrives (&before), stretch_leaves (&after));

  if (point_length (sum) < 1e-6)
    sum = point_sub (after.segment.to, before.from);
  const double length = point_length (sum);
  return length > 0 ? point_scale (sum, 1 / length) : sum;
}

/* Gives one curve, where neither side is one, to a node that must be turned: an arc stays before a line does. */
static void
make_node_turnable (Draft *draft, size_t node)
{
  const SegmentKind before = draft->segments[node - 1].kind, after = draft->segments[node].kind;

  if (before == SEGMENT_CURVE || after == SEGMENT_CURVE)
    return;
  if (before == SEGMENT_LINE)
    draft_make_curve (draft, node - 1);
  if (after == SEGMENT_LINE || before == SEGMENT_ARC)
    draft_make_curve (draft, node);
}

static void
make_smooth (Draft *draft, size_t node)
{
  const Stretch before = draft_stretch (draft, node - 1), after = draft_stretch (draft, node);

  draft->kinds[node] = NODE_SMOOTH;
  if (outline_kind_from_shape (&before, &after) == NODE_CORNER)
    make_node_turnable (draft, node);
  if (draft->segments[node - 1].kind == SEGMENT_CURVE && draft->segments[node].kind == SEGMENT_CURVE)
    draft_turn_handles (draft, node, common_direction (draft, node));
  else
    draft_settle (draft, node);
}

static void
make_symmetric (Draft *draft, size_t node)
{
  make_smooth (draft, node);
  draft_make_curve (draft, node - 1);
  draft_make_curve (draft, node);
  draft_turn_handles (draft, node, common_direction (draft, node));

  const Point centre = draft_node (draft, node);
  Point *before = &draft->segments[node - 1].control2, *after = &draft->segments[node].control1;
  const Point half = point_scale (point_sub (*after, *before), 0.5);
  *before = point_sub (centre, half);
  *after = point_add (centre, half);
  draft->kinds[node] = NODE_SYMMETRIC;
}

CoreStatus
outline_with_node_kind (const Outline *self, size_t node, NodeKind kind, Outline **made)
{
  Draft draft;

  assert (node <= self->count);
  if (outline_draft_begin (&draft, self, 0))
    return CORE_NO_MEMORY;
  const bool inside = node > 0 && node < draft.count;
  if (inside && kind == NODE_SMOOTH)
    make_smooth (&draft, node);
  else if (inside && kind == NODE_SYMMETRIC)
    make_symmetric (&draft, node);
  else
    draft.kinds[node] = kind;
  return outline_draft_finish (&draft, made);
}

CoreStatus
outline_with_segment_added (const Outline *self, const Segment *segment, Outline **made)
{
  const size_t node = self->count;
  Draft draft;

  if (outline_draft_begin (&draft, self, 1))
    return CORE_NO_MEMORY;
  draft_open (&draft, self->count);
  draft.segments[self->count] = *segment;
  const Stretch added = draft_stretch (&draft, self->count);
  draft.kinds[node] = outline_kind_from_shape (&self->stretches[node - 1], &added);
  return outline_draft_finish (&draft, made);
}

CoreStatus
outline_mapped (const Outline *self, Point scale, Point shift, Outline **made)
{
  Draft draft;

  if (!point_is_finite (scale) || !point_is_finite (shift))
    return CORE_NOT_FINITE;
  if (!(scale.x > 0 && scale.y > 0))
    return CORE_OUT_OF_RANGE;
  if (outline_draft_begin (&draft, self, 0))
    return CORE_NO_MEMORY;
  draft.start = (Point) { draft.start.x * scale.x + shift.x, draft.start.y * scale.y + shift.y };
  for (size_t i = 0; i < draft.count; i++)
    {
      Segment *segment = &draft.segments[i];
      Point *moved[] = { &segment->to, &segment->control1, &segment->control2, &segment->centre };

      for (size_t k = 0; k < 4; k++)
        *moved[k] = (Point) { moved[k]->x * scale.x + shift.x, moved[k]->y * scale.y + shift.y };
      segment->rx *= scale.x;
      segment->ry *= scale.y;
    }
  return outline_draft_finish (&draft, made);
}

CoreStatus
outline_reversed (const Outline *self, Outline **made)
{
  const size_t count = self->count;
  Draft draft;

  if (outline_draft_begin (&draft, self, 0))
    return CORE_NO_MEMORY;
  draft.start = self->stretches[count].from;
  for (size_t i = 0; i < count; i++)
    {
      const Stretch *old = &self->stretches[count - 1 - i];
      draft.segments[i] = segment_reversed (old->from, &old->segment);
    }
  for (size_t i = 0; i <= count; i++)
    draft.kinds[i] = self->kinds[count - i];
  return outline_draft_finish (&draft, made);
}
