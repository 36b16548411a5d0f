#include "geometry/outline-private.h"

#include <assert.h>
#include <stdlib.h>

/* Tangents this near to one another, 0.5 degrees, make a node smooth. */
static const double SMOOTH_ANGLE = 0.5 * M_PI / 180;
/* The ends of an arc may lie this far off its ellipse, in parts of the larger semi-axis. */
static const double OFF_ITS_ARC = 1e-3;
/* Of the larger side of the box: how far inboard of its root an outline must reach to be told from rounding. */
static const double UNDER_THE_ROOT = 1e-6;

static Segment
segment_tidied (const Segment *segment)
{
  switch (segment->kind)
    {
    case SEGMENT_LINE:  return segment_line (segment->to);
    case SEGMENT_CURVE: return segment_curve (segment->control1, segment->control2, segment->to);
    case SEGMENT_ARC:   return segment_arc (segment->centre, segment->rx, segment->ry, segment->to);
    }
  assert (!"a segment of no kind");
  return segment_line (segment->to);
}

static CoreStatus
segment_verify (Point from, const Segment *segment)
{
  const Point axes = { segment->rx, segment->ry };

  if (!point_is_finite (from) || !point_is_finite (segment->to))
    return CORE_NOT_FINITE;
  if (segment->kind == SEGMENT_CURVE && !(point_is_finite (segment->control1) && point_is_finite (segment->control2)))
    return CORE_NOT_FINITE;
  if (segment->kind != SEGMENT_ARC)
    return CORE_OK;
  if (!point_is_finite (segment->centre) || !point_is_finite (axes))
    return CORE_NOT_FINITE;
  if (!(axes.x > 0 && axes.y > 0))
    return CORE_OFF_ITS_ARC;
  const double allowed = OFF_ITS_ARC * fmax (axes.x, axes.y);
  const bool on_it = stretch_off_ellipse (from, segment) <= allowed && stretch_off_ellipse (segment->to, segment) <= allowed;
  return on_it ? CORE_OK : CORE_OFF_ITS_ARC;
}

static CoreStatus
segments_verify (Point start, const Segment segments[], size_t count)
{
  CoreStatus status = count ? CORE_OK : CORE_TOO_FEW_NODES;

  for (size_t i = 0; i < count && status == CORE_OK; i++)
    status = segment_verify (i ? segments[i - 1].to : start, &segments[i]);
  return status;
}

NodeKind
outline_kind_from_shape (const Stretch *before, const Stretch *after)
{
  const Point arrives = stretch_arrives (before), leaves = stretch_leaves (after);
  const bool along = point_dot (arrives, leaves) > 0;

  return along && fabs (point_cross (arrives, leaves)) <= sin (SMOOTH_ANGLE) ? NODE_SMOOTH : NODE_CORNER;
}

static void
set_kinds (Outline *self, const NodeKind kinds[])
{
  for (size_t i = 0; i <= self->count; i++)
    self->kinds[i] = kinds ? kinds[i] : outline_node_shape (self, i);
}

static void
set_bounds_and_area (Outline *self)
{
  const Point origin = self->stretches[0].from;

  self->bounds = self->pieces[0].box;
  for (size_t i = 0; i < self->piece_count; i++)
    self->bounds = box_join (self->bounds, self->pieces[i].box);
  for (size_t i = 0; i <= self->count; i++)
    self->area += stretch_twice_area (&self->stretches[i], origin) / 2;
}

/* By the boxes of the pieces: what stands beside the root's chord, as a fillet does, does not count. */
static void
set_reaches_under_its_root (Outline *self)
{
  const Point first = self->stretches[0].from, last = self->stretches[self->count].from;
  const double slack = UNDER_THE_ROOT * box_larger_side (self->bounds), root = (first.y + last.y) / 2;

  for (size_t i = 0; i < self->piece_count && root > 0; i++)
    {
      const Box *box = &self->pieces[i].box;
      const bool beside = box->max.x < fmin (first.x, last.x) + slack || box->min.x > fmax (first.x, last.x) - slack;

      if (!beside && box->min.y < root - slack)
        self->reaches_under_its_root = true;
    }
}

static CoreStatus
outline_derive (Outline *self, Point start, const Segment segments[], const NodeKind kinds[])
{
  const Segment closing = segment_line (start);
  Point from = start;

  self->stretches = malloc ((self->count + 1) * sizeof *self->stretches);
  self->kinds = malloc ((self->count + 1) * sizeof *self->kinds);
  if (!self->stretches || !self->kinds)
    return CORE_NO_MEMORY;
  for (size_t i = 0; i <= self->count; i++)
    {
      const Segment segment = i < self->count ? segment_tidied (&segments[i]) : closing;
      self->stretches[i] = stretch_make (from, &segment);
      from = segment.to;
    }
  set_kinds (self, kinds);
  if (outline_cut_into_pieces (self))
    return CORE_NO_MEMORY;
  set_bounds_and_area (self);
  set_reaches_under_its_root (self);
  return outline_find_fault (self, &self->fault);
}

CoreStatus
outline_new (Point start, const Segment segments[], size_t count, const NodeKind kinds[], Outline **made)
{
  CoreStatus status = segments_verify (start, segments, count);
  Outline *self;

  if (status)
    return status;
  self = calloc (1, sizeof *self);
  if (!self)
    return CORE_NO_MEMORY;
  atomic_init (&self->references, 1);
  self->count = count;
  status = outline_derive (self, start, segments, kinds);
  if (status)
    {
      outline_unref (self);
      return status;
    }
  *made = self;
  return CORE_OK;
}

/* The count is the one part of an outline that changes; no reader sees it. */
Outline *
outline_ref (const Outline *self)
{
  Outline *counted = (Outline *) self;

  atomic_fetch_add_explicit (&counted->references, 1, memory_order_relaxed);
  return counted;
}

void
outline_unref (Outline *self)
{
  if (!self || atomic_fetch_sub_explicit (&self->references, 1, memory_order_acq_rel) > 1)
    return;
  free (self->stretches);
  free (self->kinds);
  free (self->pieces);
  free (self->tree.boxes);
  free (self);
}

size_t
outline_node_count (const Outline *self)
{
  return self->count + 1;
}

size_t
outline_segment_count (const Outline *self)
{
  return self->count;
}

Point
outline_node (const Outline *self, size_t node)
{
  assert (node <= self->count);
  return self->stretches[node].from;
}

NodeKind
outline_node_kind (const Outline *self, size_t node)
{
  assert (node <= self->count);
  return self->kinds[node];
}

NodeKind
outline_node_shape (const Outline *self, size_t node)
{
  assert (node <= self->count);
  if (node == 0 || node == self->count)
    return NODE_CORNER;
  return outline_kind_from_shape (&self->stretches[node - 1], &self->stretches[node]);
}

const Segment *
outline_segment (const Outline *self, size_t segment)
{
  assert (segment < self->count);
  return &self->stretches[segment].segment;
}

bool
outline_handle (const Outline *self, size_t node, HandleSide side, Point *place)
{
  assert (node <= self->count);
  if (side == HANDLE_BEFORE ? node == 0 : node == self->count)
    return false;
  const Segment *segment = outline_segment (self, side == HANDLE_BEFORE ? node - 1 : node);
  if (segment->kind != SEGMENT_CURVE)
    return false;
  *place = side == HANDLE_BEFORE ? segment->control2 : segment->control1;
  return true;
}

Box
outline_bounds (const Outline *self)
{
  return self->bounds;
}
