#include "geometry/outline-draft.h"

#include <assert.h>
#include <stdlib.h>
#include <string.h>
#include "geometry/outline-private.h"

/* Radians; tangents nearer than this need no turning. */
static const double SAME_DIRECTION = 1e-9;
/* Of the longer: handles whose lengths differ less are equal. */
static const double SAME_LENGTH = 1e-6;
/* Of a semi-axis: an arc whose ends are nearer along that axis has no extent to stretch. */
static const double LEAST_EXTENT = 1e-3;
/* An arc is not squeezed to less than this of its extent: it would be no ellipse any more. */
static const double LEAST_SCALE = 1e-6;

CoreStatus
outline_draft_begin (Draft *self, const Outline *outline, size_t more)
{
  const size_t count = outline->count, room = count + more;

  *self = (Draft) { .start = outline->stretches[0].from, .count = count, .room = room };
  self->segments = malloc (room * sizeof *self->segments);
  self->kinds = malloc ((room + 1) * sizeof *self->kinds);
  if (!self->segments || !self->kinds)
    {
      draft_abandon (self);
      return CORE_NO_MEMORY;
    }
  for (size_t i = 0; i < count; i++)
    self->segments[i] = outline->stretches[i].segment;
  memcpy (self->kinds, outline->kinds, (count + 1) * sizeof *self->kinds);
  return CORE_OK;
}

CoreStatus
outline_draft_finish (Draft *self, Outline **made)
{
  const CoreStatus status = outline_new (self->start, self->segments, self->count, self->kinds, made);

  draft_abandon (self);
  return status;
}

void
draft_abandon (Draft *self)
{
  free (self->segments);
  free (self->kinds);
}

Point
draft_node (const Draft *self, size_t node)
{
  return node ? self->segments[node - 1].to : self->start;
}

Stretch
draft_stretch (const Draft *self, size_t segment)
{
  return stretch_make (draft_node (self, segment), &self->segments[segment]);
}

void
draft_open (Draft *self, size_t segment)
{
  assert (self->count < self->room);
  memmove (self->segments + segment + 1, self->segments + segment, (self->count - segment) * sizeof *self->segments);
  memmove (self->kinds + segment + 2, self->kinds + segment + 1, (self->count - segment) * sizeof *self->kinds);
  self->kinds[segment + 1] = NODE_CORNER;
  self->count++;
}

void
draft_remove (Draft *self, size_t segment)
{
  self->count--;
  memmove (self->segments + segment, self->segments + segment + 1, (self->count - segment) * sizeof *self->segments);
  memmove (self->kinds + segment + 1, self->kinds + segment + 2, (self->count - segment) * sizeof *self->kinds);
}

void
draft_make_curve (Draft *self, size_t segment)
{
  const Stretch stretch = draft_stretch (self, segment);

  self->segments[segment] = stretch_as_curve (&stretch, 0, 1);
}

/* How much an arc must stretch along one axis for its moving end to follow; 0 when it cannot. */
static double
scale_to_follow (double extent, double wanted, double semi_axis)
{
  if (fabs (extent) <= LEAST_EXTENT * semi_axis)
    return wanted == extent ? 1 : 0;
  const double scale = wanted / extent;
  return fabs (scale) >= LEAST_SCALE && isfinite (scale) ? scale : 0;
}

/* Stretches arc `segment` about one end so that the other (its last, or its first) comes to `place`. False when no ellipse
 * parallel to the axes does that; also when half an ellipse would have to be taken on the side that half a turn does not mean. */
static bool
stretch_arc (Draft *self, size_t segment, bool last, Point place)
{
  const Stretch old = draft_stretch (self, segment);
  const Segment *arc = &old.segment;
  const Point fixed = last ? old.from : arc->to, moving = last ? arc->to : old.from;
  const Point scale = { scale_to_follow (moving.x - fixed.x, place.x - fixed.x, arc->rx),
                        scale_to_follow (moving.y - fixed.y, place.y - fixed.y, arc->ry) };
  const Point centre = { fixed.x + (arc->centre.x - fixed.x) * scale.x, fixed.y + (arc->centre.y - fixed.y) * scale.y };
  const Segment stretched = segment_arc (centre, arc->rx * fabs (scale.x), arc->ry * fabs (scale.y), last ? place : fixed);
  const Point middle = stretch_at (&old, 0.5);
  const Point wanted = { fixed.x + (middle.x - fixed.x) * scale.x, fixed.y + (middle.y - fixed.y) * scale.y };

  if (scale.x == 0 || scale.y == 0)
    return false;
  const Point reached = segment_at (last ? fixed : place, &stretched, 0.5);
  if (!(point_distance (reached, wanted) <= 1e-6 * fmax (stretched.rx, stretched.ry)))
    return false;
  self->segments[segment] = stretched;
  return true;
}

static void
move_end_of_segment (Draft *self, size_t segment, Point place)
{
  Segment *moved = &self->segments[segment];
  const Point by = point_sub (place, moved->to);

  if (moved->kind == SEGMENT_ARC && !stretch_arc (self, segment, true, place))
    draft_make_curve (self, segment);
  if (moved->kind == SEGMENT_CURVE)
    moved->control2 = point_add (moved->control2, by);
}

static void
move_start_of_segment (Draft *self, size_t segment, Point place)
{
  Segment *moved = &self->segments[segment];
  const Point by = point_sub (place, draft_node (self, segment));

  if (moved->kind == SEGMENT_ARC && !stretch_arc (self, segment, false, place))
    draft_make_curve (self, segment);
  if (moved->kind == SEGMENT_CURVE)
    moved->control1 = point_add (moved->control1, by);
}

void
draft_move_node (Draft *self, size_t node, Point place)
{
  /* The segment behind first: it learns from the one before where it began. */
  if (node < self->count)
    move_start_of_segment (self, node, place);
  if (node > 0)
    move_end_of_segment (self, node - 1, place);
  if (node > 0)
    self->segments[node - 1].to = place;
  else
    self->start = place;
}

static Point
handle_along (Point node, Point handle, Point far_end, Point direction)
{
  const double chord = point_distance (node, far_end), length = point_distance (node, handle);

  return point_add (node, point_scale (direction, length > SAME_LENGTH * chord ? length : chord / 3));
}

void
draft_turn_handles (Draft *self, size_t node, Point direction)
{
  const Point place = draft_node (self, node);

  if (node > 0 && self->segments[node - 1].kind == SEGMENT_CURVE)
    {
      Segment *before = &self->segments[node - 1];
      before->control2 = handle_along (place, before->control2, draft_node (self, node - 1), point_scale (direction, -1));
    }
  if (node < self->count && self->segments[node].kind == SEGMENT_CURVE)
    {
      Segment *after = &self->segments[node];
      after->control1 = handle_along (place, after->control1, after->to, direction);
    }
}

static bool
handles_are_equal (const Draft *self, size_t node)
{
  const Segment *before = &self->segments[node - 1], *after = &self->segments[node];
  const double length = point_distance (before->to, before->control2), other = point_distance (before->to, after->control1);

  return before->kind == SEGMENT_CURVE && after->kind == SEGMENT_CURVE
         && fabs (length - other) <= SAME_LENGTH * fmax (length, other);
}

void
draft_settle (Draft *self, size_t node)
{
  if (node == 0 || node >= self->count || self->kinds[node] == NODE_CORNER)
    return;
  const Stretch before = draft_stretch (self, node - 1), after = draft_stretch (self, node);
  const Point arrives = stretch_arrives (&before), leaves = stretch_leaves (&after);
  const bool curve_before = before.segment.kind == SEGMENT_CURVE, curve_after = after.segment.kind == SEGMENT_CURVE;
  const bool agree = point_dot (arrives, leaves) > 0 && fabs (point_cross (arrives, leaves)) <= SAME_DIRECTION;

  if (!agree && curve_before != curve_after)
    draft_turn_handles (self, node, curve_before ? leaves : arrives);
  else if (!agree && outline_kind_from_shape (&before, &after) == NODE_CORNER)
    self->kinds[node] = NODE_CORNER;
  if (self->kinds[node] == NODE_SYMMETRIC && !handles_are_equal (self, node))
    self->kinds[node] = NODE_SMOOTH;
}
