#include "geometry/drawn-run.h"

#include <math.h>
#include "geometry/least-squares.h"
#include "geometry/stretch.h"

/* The share of a reach's places that must be trusted, and how often it grows by half to find them. */
static const double ENOUGH = 0.4;
enum { GROWTHS = 4, FEWEST = 5, DOUBLINGS = 4 };
/* A longer look leaves no more of the mean square than this many times what the shorter one left. */
static const double SAME_PARABOLA = 1.6;

void
drawn_run_lengths (const Point places[], size_t count, double along[])
{
  for (size_t i = 0; i < count; i++)
    along[i] = i ? along[i - 1] + point_distance (places[i], places[i - 1]) : 0;
}

size_t
drawn_run_at (const DrawnRun *self, double along)
{
  size_t low = 0, high = self->count - 1;

  while (low < high)
    {
      const size_t middle = (low + high) / 2;
      if (self->along[middle] < along)
        low = middle + 1;
      else
        high = middle;
    }
  return low;
}

double
drawn_run_trust (const DrawnRun *self, double from, double to)
{
  const size_t first = drawn_run_at (self, from), last = drawn_run_at (self, to);
  double sum = 0;

  for (size_t i = first; i <= last; i++)
    sum += self->weights[i];
  return sum / (double) (last - first + 1);
}

/* The parabola over the straight line from the first place looked at to the last. */
static bool
fit_parabola (const DrawnRun *self, double along, double from, double to, RunPassage *passage)
{
  const size_t first = drawn_run_at (self, from), last = drawn_run_at (self, to);
  const double length = point_distance (self->places[first], self->places[last]);
  if (last < first + FEWEST || !(length > 0))
    return false;
  const Point way = point_scale (point_sub (self->places[last], self->places[first]), 1 / length);
  const Point origin = self->places[drawn_run_at (self, along)], across = { -way.y, way.x };
  LeastSquares sums;
  double x[3], rest;

  least_squares_begin (&sums, 3);
  for (size_t i = first; i <= last; i++)
    {
      const Point off = point_sub (self->places[i], origin);
      const double u = point_dot (off, way) / length;
      least_squares_add (&sums, (double[]) { 1, u, u * u }, point_dot (off, across), self->weights[i]);
    }
  if (!least_squares_solve (&sums, x, &rest))
    return false;
  const double slope = x[1] / length, steep = sqrt (1 + slope * slope);
  passage->place = point_add (origin, point_scale (across, x[0]));
  passage->direction = point_scale (point_add (way, point_scale (across, slope)), 1 / steep);
  passage->rest = rest;
  passage->curvature = 2 * x[2] / (length * length) / (steep * steep * steep);
  return true;
}

CoreStatus
drawn_run_passage (const DrawnRun *self, double along, double reach, PassageSides sides, RunPassage *passage)
{
  for (int i = 0; i <= GROWTHS; i++, reach *= 1.5)
    {
      const double from = sides == PASSAGE_AHEAD ? along : along - reach, to = sides == PASSAGE_BEHIND ? along : along + reach;
      if ((drawn_run_trust (self, from, to) >= ENOUGH || i == GROWTHS) && fit_parabola (self, along, from, to, passage))
        return CORE_OK;
    }
  return CORE_OUT_OF_RANGE;
}

CoreStatus
drawn_run_long_passage (const DrawnRun *self, double along, double reach, double room, PassageSides sides, double scatter,
                        RunPassage *passage)
{
  CoreStatus status = drawn_run_passage (self, along, fmin (reach, room), sides, passage);

  for (int i = 1; !status && i <= DOUBLINGS && reach * pow (2, i) <= room; i++)
    {
      RunPassage longer;

      if (drawn_run_passage (self, along, reach * pow (2, i), sides, &longer)
          || longer.rest > SAME_PARABOLA * fmax (passage->rest, scatter * scatter))
        break;
      *passage = longer;
    }
  return status;
}
