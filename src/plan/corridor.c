#include "plan/corridor.h"

#include <math.h>
#include <stdlib.h>

/* A place for each px along the run, in *spine (the caller's). */
static size_t
spaced_evenly (const Point run[], size_t count, Point **spine)
{
  double length = 0;

  for (size_t i = 1; i < count; i++)
    length += point_distance (run[i], run[i - 1]);
  const size_t columns = (size_t) length + 1;
  Point *places = malloc (columns * sizeof *places);
  *spine = places;
  if (!places || columns < 2)
    return columns;
  const double step = length / (double) (columns - 1);
  double before = 0;
  size_t next = 1;
  for (size_t column = 0; column < columns; column++)
    {
      const double along = step * (double) column;
      while (next + 1 < count && before + point_distance (run[next], run[next - 1]) < along)
        {
          before += point_distance (run[next], run[next - 1]);
          next++;
        }
      const double stretch = point_distance (run[next], run[next - 1]);
      places[column] = point_mix (run[next - 1], run[next], stretch > 0 ? fmin ((along - before) / stretch, 1) : 0);
    }
  return columns;
}

static void
find_directions (Corridor *self, int reach)
{
  const size_t last = self->columns - 1, each_way = reach > 0 ? (size_t) reach : 1;

  for (size_t column = 0; column <= last; column++)
    {
      const Point from = self->spine[column > each_way ? column - each_way : 0];
      const Point to = self->spine[column + each_way < last ? column + each_way : last];
      const double length = point_distance (from, to);
      self->across[column] = length > 0 ? (Point) { -(to.y - from.y) / length, (to.x - from.x) / length } : (Point) { 0, 1 };
    }
}

CoreStatus
corridor_along (const Ink *ink, const Point run[], size_t count, double half_width, double pitch, int reach, Corridor *made)
{
  Corridor self = { .half = (int) ceil (half_width / pitch), .pitch = pitch };

  self.columns = spaced_evenly (run, count, &self.spine);
  const size_t rows = (size_t) corridor_rows (&self);
  self.across = malloc (self.columns * sizeof *self.across);
  self.ink = malloc (self.columns * rows * sizeof *self.ink);
  if (!self.spine || !self.across || !self.ink || self.columns < 2)
    {
      const CoreStatus status = self.spine && self.across && self.ink ? CORE_TOO_FEW_NODES : CORE_NO_MEMORY;
      corridor_clear (&self);
      return status;
    }
  find_directions (&self, reach);
  for (size_t column = 0; column < self.columns; column++)
    for (size_t row = 0; row < rows; row++)
      self.ink[column * rows + row] = (float) ink_at (ink, corridor_place (&self, column, (double) row));
  *made = self;
  return CORE_OK;
}

size_t
corridor_nearest (const Corridor *self, Point place)
{
  size_t best = 0;

  for (size_t column = 1; column < self->columns; column++)
    if (point_distance (self->spine[column], place) < point_distance (self->spine[best], place))
      best = column;
  return best;
}

void
corridor_clear (Corridor *self)
{
  free (self->spine);
  free (self->across);
  free (self->ink);
  *self = (Corridor) { 0 };
}
