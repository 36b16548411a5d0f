#include "balance/arrange-fill.h"

#include <math.h>

void
fill_add (Fill *self, const Space *space, size_t part, const Span *span)
{
  for (size_t axis = 0; axis < AXES; axis++)
    {
      const double half = (space->parts[part].size[axis] + space->clearance) / 2;
      const double low = span->low[axis] - half, high = span->high[axis] + half;

      self->around.low[axis] = self->count ? fmin (self->around.low[axis], low) : low;
      self->around.high[axis] = self->count ? fmax (self->around.high[axis], high) : high;
    }
  self->parts[self->count++] = part;
}

/* Which share of the box's extent along an axis the part takes for itself. */
static double
share_of (const Fill *self, const Space *space, size_t index, size_t axis)
{
  const double extent = self->around.high[axis] - self->around.low[axis], rounding = 1e-4;
  const double own = space->parts[self->parts[index]].size[axis] + space->clearance;
  double least = INFINITY;

  for (size_t i = 0; i < self->count; i++)
    if (i != index)
      least = fmin (least, space->parts[self->parts[i]].size[axis] + space->clearance);
  if (own > 0 && own + least > extent + rounding)
    return 1;
  return extent > 0 ? own / extent : 0;
}

double
fill_lengths (const Fill *self, const Space *space, double filled[])
{
  double sum = 0;

  for (size_t i = 0; i < self->count; i++)
    {
      filled[i] = space->parts[self->parts[i]].size[0] + space->clearance;
      for (size_t axis = 1; axis < AXES; axis++)
        filled[i] *= share_of (self, space, i, axis);
      sum += filled[i];
    }
  return sum;
}
