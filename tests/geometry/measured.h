#pragma once
#include <check.h>
#include <math.h>
#include <stdlib.h>
#include "geometry/drawn-run.h"
#include "geometry/segment.h"
#include "support/random.h"

/* A line as it would be measured along known segments: a place every eighth of a mm, off by a known scatter. */
enum { MEASURED_MOST = 6000 };
typedef struct {
  Point places[MEASURED_MOST];
  double weights[MEASURED_MOST], along[MEASURED_MOST];
  size_t count;
} Measured;

static inline Measured *
measured_along (Point start, const Segment segments[], size_t count, double scatter)
{
  Measured *self = calloc (1, sizeof *self);
  Random random = { 12345 };
  Point from = start;

  for (size_t i = 0; i < count; i++)
    {
      const int steps = (int) ceil (segment_length (from, &segments[i]) / 0.125);
      for (int step = i ? 1 : 0; step <= steps; step++)
        {
          const Point at = segment_at (from, &segments[i], (double) step / steps);
          const double x = random_between (&random, -scatter, scatter), y = random_between (&random, -scatter, scatter);
          ck_assert_uint_lt (self->count, MEASURED_MOST);
          self->weights[self->count] = 1;
          self->places[self->count++] = (Point) { at.x + x, at.y + y };
        }
      from = segments[i].to;
    }
  drawn_run_lengths (self->places, self->count, self->along);
  return self;
}

static inline DrawnRun
measured_run (const Measured *self)
{
  return (DrawnRun) { .places = self->places, .weights = self->weights, .along = self->along, .count = self->count };
}
