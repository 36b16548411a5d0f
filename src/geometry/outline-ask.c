#include "geometry/outline-private.h"

#include <assert.h>

static bool
segment_same (const Segment *a, const Segment *b)
{
  return a->kind == b->kind && point_same (a->to, b->to) && point_same (a->control1, b->control1)
         && point_same (a->control2, b->control2) && point_same (a->centre, b->centre) && a->rx == b->rx && a->ry == b->ry;
}

bool
outline_equal (const Outline *a, const Outline *b)
{
  if (a == b)
    return true;
  if (!a || !b || a->count != b->count || !point_same (a->stretches[0].from, b->stretches[0].from))
    return false;
  for (size_t i = 0; i <= a->count; i++)
    if (a->kinds[i] != b->kinds[i] || !segment_same (&a->stretches[i].segment, &b->stretches[i].segment))
      return false;
  return true;
}

static double
box_distance (Box box, Point point)
{
  const double x = fmax (fmax (box.min.x - point.x, point.x - box.max.x), 0);
  const double y = fmax (fmax (box.min.y - point.y, point.y - box.max.y), 0);

  return hypot (x, y);
}

double
outline_nearest (const Outline *self, Point point, size_t *segment, double *t)
{
  double best = INFINITY;
  size_t asked = self->count;     /* the segment asked last: it may have several pieces */

  *segment = 0;
  *t = 0;
  for (size_t i = 0; i < self->piece_count && self->pieces[i].stretch < self->count; i++)
    {
      const size_t at = self->pieces[i].stretch;
      double distance;

      if (at == asked || box_distance (self->pieces[i].box, point) >= best)
        continue;
      asked = at;
      const double met = segment_nearest (self->stretches[at].from, &self->stretches[at].segment, point, &distance);
      if (distance < best)
        {
          best = distance;
          *segment = at;
          *t = met;
        }
    }
  return best;
}

bool
outline_contains (const Outline *self, Point point)
{
  bool inside = false;

  for (size_t i = 0; i < self->piece_count; i++)
    {
      i = outline_piece_at_station (self, point.y, false, i);
      if (i < self->piece_count && outline_piece_x (self, &self->pieces[i], point.y) < point.x)
        inside = !inside;
    }
  return inside;
}

CoreStatus
outline_check (const Outline *self, OutlineFault *fault)
{
  if (fault)
    *fault = self->fault;
  return self->fault.status;
}
