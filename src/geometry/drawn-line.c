#include "geometry/drawn-line.h"

#include <stdlib.h>
#include <string.h>

/* Shares of a box's larger side: ends nearer than this were meant to meet. */
static const double MEANT_TO_MEET = 1e-3;
static const double NEAR_AN_END = 1e-4;
enum { MOST_MEETINGS = 3 };

static Point
laid (const DrawnLine *line, Point place)
{
  /* A remainder below zero turns the other way. */
  for (int turn = ((line->quarter_turns % 4) + 4) % 4; turn > 0; turn--)
    place = (Point) { place.y, -place.x };
  return line->mirrored ? (Point) { -place.x, place.y } : place;
}

static Segment
segment_moved (const Segment *segment, Point (*move) (const void *, Point), const void *data)
{
  return segment->kind == SEGMENT_LINE ? segment_line (move (data, segment->to))
                                       : segment_curve (move (data, segment->control1), move (data, segment->control2), move (data,
                                                            segment->to));
}

static Point
lay (const void *line, Point place)
{
  return laid (line, place);
}

static Point
to_starboard (const void *nothing, Point place)
{
  (void) nothing;
  return (Point) { place.x, -place.y };
}

static Point
shift (const void *by, Point place)
{
  return point_add (place, *(const Point *) by);
}

Point
run_node (const Run *self, size_t i)
{
  return i ? self->segments[i - 1].to : self->start;
}

static void
find_box (Run *self)
{
  self->box = (Box) { self->start, self->start };
  for (size_t i = 0; i < self->count; i++)
    {
      const Box box = segment_bounds (run_node (self, i), &self->segments[i]);
      self->box.min = (Point) { fmin (self->box.min.x, box.min.x), fmin (self->box.min.y, box.min.y) };
      self->box.max = (Point) { fmax (self->box.max.x, box.max.x), fmax (self->box.max.y, box.max.y) };
    }
}

static double
larger_side (Box box)
{
  return fmax (box.max.x - box.min.x, box.max.y - box.min.y);
}

static bool
segment_is_finite (const Segment *segment)
{
  return point_is_finite (segment->to) && point_is_finite (segment->control1) && point_is_finite (segment->control2);
}

CoreStatus
run_begin (Run *self, const DrawnLine *line)
{
  *self = (Run) { .start = laid (line, line->start), .count = line->count };
  if (line->count == 0)
    return CORE_TOO_FEW_NODES;
  for (size_t i = 0; i < line->count; i++)
    if (line->segments[i].kind == SEGMENT_ARC)
      return CORE_OUT_OF_RANGE;
    else if (!segment_is_finite (&line->segments[i]))
      return CORE_NOT_FINITE;
  if (!point_is_finite (line->start))
    return CORE_NOT_FINITE;
  self->segments = malloc (line->count * sizeof *self->segments);
  if (!self->segments)
    return CORE_NO_MEMORY;
  for (size_t i = 0; i < line->count; i++)
    self->segments[i] = segment_moved (&line->segments[i], lay, line);
  find_box (self);
  self->closed = self->count > 1 && point_distance (run_node (self, self->count), self->start) <= MEANT_TO_MEET * larger_side (self->box);
  if (self->closed)
    self->segments[self->count - 1].to = self->start;
  return CORE_OK;
}

void
run_clear (Run *self)
{
  free (self->segments);
  self->segments = NULL;
}

static void
move_all (Run *self, Point (*move) (const void *, Point), const void *data)
{
  self->start = move (data, self->start);
  for (size_t i = 0; i < self->count; i++)
    self->segments[i] = segment_moved (&self->segments[i], move, data);
  find_box (self);
}

void
run_shift (Run *self, Point by)
{
  move_all (self, shift, &by);
}

void
run_mirror (Run *self)
{
  move_all (self, to_starboard, NULL);
}

void
run_reverse (Run *self)
{
  const Point end = run_node (self, self->count);

  /* From both sides inwards: each segment's beginning is still known when it is turned. */
  for (size_t i = self->count; i-- > 0;)
    self->segments[i] = segment_reversed (run_node (self, i), &self->segments[i]);
  for (size_t i = 0; i < self->count / 2; i++)
    {
      const Segment kept = self->segments[i];
      self->segments[i] = self->segments[self->count - 1 - i];
      self->segments[self->count - 1 - i] = kept;
    }
  self->start = end;
}

/* Cuts one segment at rising parameters; the last of what it becomes ends exactly where it ended. How many. */
static size_t
cut (Point from, Segment rest, const double t[], size_t cuts, Segment made[])
{
  double done = 0;

  for (size_t i = 0; i < cuts; i++)
    {
      Segment first, second;
      segment_split (from, &rest, (t[i] - done) / (1 - done), &first, &second);
      made[i] = first;
      from = first.to;
      rest = second;
      done = t[i];
    }
  made[cuts] = rest;
  return cuts + 1;
}

CoreStatus
run_cut_at_station (Run *self, double y)
{
  Segment *made = malloc (self->count * (MOST_MEETINGS + 1) * sizeof *made);
  size_t count = 0;

  if (!made)
    return CORE_NO_MEMORY;
  for (size_t i = 0; i < self->count; i++)
    {
      double t[MOST_MEETINGS], inside[MOST_MEETINGS];
      const size_t meetings = segment_at_station (run_node (self, i), &self->segments[i], y, t);
      size_t cuts = 0;
      for (size_t k = 0; k < meetings; k++)
        if (t[k] > NEAR_AN_END && t[k] < 1 - NEAR_AN_END && (cuts == 0 || t[k] > inside[cuts - 1]))
          inside[cuts++] = t[k];
      const size_t first = count;
      count += cut (run_node (self, i), self->segments[i], inside, cuts, made + count);
      for (size_t k = first; k + 1 < count; k++)
        made[k].to.y = y;
    }
  free (self->segments);
  self->segments = made;
  self->count = count;
  return CORE_OK;
}

CoreStatus
run_cut (Run *self, size_t i, double t)
{
  Segment *grown = realloc (self->segments, (self->count + 1) * sizeof *grown), first, second;

  if (!grown)
    return CORE_NO_MEMORY;
  self->segments = grown;
  segment_split (run_node (self, i), &grown[i], t, &first, &second);
  memmove (grown + i + 2, grown + i + 1, (self->count - i - 1) * sizeof *grown);
  grown[i] = first;
  grown[i + 1] = second;
  self->count++;
  return CORE_OK;
}

void
run_end_at_station (Run *self, double y)
{
  self->start.y = y;
  self->segments[self->count - 1].to.y = y;
}

CoreStatus
run_begin_at (Run *self, size_t node)
{
  Segment *made = malloc (self->count * sizeof *made);
  const Point start = run_node (self, node);

  if (!made)
    return CORE_NO_MEMORY;
  memcpy (made, self->segments + node, (self->count - node) * sizeof *made);
  memcpy (made + (self->count - node), self->segments, node * sizeof *made);
  free (self->segments);
  self->segments = made;
  self->start = start;
  return CORE_OK;
}
