#include "geometry/outline-private.h"

#include <stdlib.h>

/* Of the larger side of the outline's box. */
static const double ENDS_APART = 1e-6;
static const double LEAST_SPAN = 1e-9;
static const double LEAST_STRETCH = 1e-6;   /* of stations met more than twice */
static const double LEAST_AREA = 1e-9;      /* of the side squared */
/* A side whose fourth power is no number would make none of what is integrated one. */
static const double LARGEST_SIDE = 1e75, SMALLEST_SIDE = 1e-75;

static size_t
meetings_at (const Outline *self, double y, double *foremost)
{
  size_t count = 0;

  *foremost = INFINITY;
  for (size_t i = outline_piece_at_station (self, y, false, 0); i < self->piece_count;
       i = outline_piece_at_station (self, y, false, i + 1))
    {
      *foremost = fmin (*foremost, outline_piece_x (self, &self->pieces[i], y));
      count++;
    }
  return count;
}

/* The first run of stations met more than twice that is long enough to be more than rounding. */
static CoreStatus
find_multi_valued (const Outline *self, OutlineFault *fault)
{
  const double least = LEAST_STRETCH * box_larger_side (self->bounds);
  double *levels = malloc (2 * self->piece_count * sizeof *levels);
  size_t count, begin = 0;

  if (!levels)
    return CORE_NO_MEMORY;
  count = outline_levels (self, levels);
  for (size_t i = 0; i < count; i++)
    {
      double foremost;
      const bool many = i + 1 < count && meetings_at (self, (levels[i] + levels[i + 1]) / 2, &foremost) > 2;

      if (many)
        continue;
      if (levels[i] - levels[begin] > least)
        {
          const double y = (levels[begin] + levels[begin + 1]) / 2;
          meetings_at (self, y, &foremost);
          *fault = (OutlineFault) { .status = CORE_MULTI_VALUED, .place = { foremost, y },
                                    .station_from = levels[begin], .station_to = levels[i] };
          break;
        }
      begin = i + 1;
    }
  free (levels);
  return CORE_OK;
}

CoreStatus
outline_find_fault (const Outline *self, OutlineFault *fault)
{
  const double side = box_larger_side (self->bounds);
  const double span = self->bounds.max.y - self->bounds.min.y;
  const Point first = self->stretches[0].from, last = self->stretches[self->count].from;
  const bool open = fabs (first.y - last.y) > ENDS_APART * side;

  *fault = (OutlineFault) { .status = CORE_OK };
  if (!(side < LARGEST_SIDE))
    *fault = (OutlineFault) { .status = CORE_NOT_FINITE, .place = first };
  else if (!(side > SMALLEST_SIDE))
    *fault = (OutlineFault) { .status = CORE_NO_SPAN, .place = first };
  else if (outline_find_crossing (self, open, fault))      /* nobody drew the closing line of an open outline */
    fault->status = CORE_CROSSES_ITSELF;
  else if (open)
    *fault = (OutlineFault) { .status = CORE_OPEN, .place = last };
  else if (!(span > LEAST_SPAN * side))
    *fault = (OutlineFault) { .status = CORE_NO_SPAN, .place = first };
  else if (!(fabs (self->area) > LEAST_AREA * side * side))
    *fault = (OutlineFault) { .status = CORE_NO_AREA, .place = first };
  else
    return find_multi_valued (self, fault);
  return CORE_OK;
}
