#include "plan/straight-search.h"

#include <math.h>
#include <stdlib.h>
#include "plan/line-strength.h"

/* Of the length between the clicks: how far beyond them the line is looked at as well. */
static const double BEYOND = 0.5;
/* mm and px: a centre line's half width; it is thin, and a wider filter would take it and the line beside it for one. */
static const double HALF_WIDTH_MM = 0.12, LEAST_HALF_WIDTH = 0.8;
/* Clicks' standard deviations: no line further off is looked at. px: what a line's strength is reckoned from beside it. */
static const double FURTHEST = 3, BESIDE = 6;
/* What a standard deviation off costs, in shares of the way along which a line as usual is printed. */
static const double PULL = 0.04;
/* Of a line as usual: a line darker than that counts no more. Of the way: so much is printed, and so much of each of its parts: a line that
 * only crosses is seen in one of them. */
static const double MOST_STRENGTH = 1.2, LEAST_PRINTED = 0.5, LEAST_OF_A_PART = 0.3;
enum { PARTS = 4 };
static const double FIRST_STEP = 0.5, LAST_STEP = 0.03;

typedef struct {
  Corridor corridor;
  float *strength;
  size_t first, last;           /* the columns beside the clicks */
  double sigma;
} Search;

/* Rows off the spine at the two clicks, px. */
typedef struct { double fore, aft; } Offs;

static double
strength_at (const Search *self, size_t column, double row)
{
  const size_t rows = (size_t) corridor_rows (&self->corridor), below = (size_t) row;
  const float *strength = self->strength + column * rows;
  const double share = row - (double) below;

  return fmin ((1 - share) * strength[below] + share * strength[below + 1], MOST_STRENGTH);
}

/* The mean strength along the line through both offs, between two columns. */
static double
mean_strength (const Search *self, Offs offs, size_t from, size_t to)
{
  double sum = 0;

  for (size_t column = from; column <= to; column++)
    {
      const double along = ((double) column - (double) self->first) / (double) (self->last - self->first);
      const double off = offs.fore + along * (offs.aft - offs.fore), row = self->corridor.half + off / self->corridor.pitch;

      if (row >= 0 && row < 2 * self->corridor.half)
        sum += strength_at (self, column, row);
    }
  return sum / (double) (to - from + 1);
}

static double
worth (const Search *self, Offs offs)
{
  const double off = (offs.fore * offs.fore + offs.aft * offs.aft) / (self->sigma * self->sigma);

  return mean_strength (self, offs, 0, self->corridor.columns - 1) - PULL * off;
}

static Offs
best_about (const Search *self, Offs middle, double reach, double step)
{
  Offs best = middle;
  double most = -INFINITY;

  for (double fore = -reach; fore <= reach; fore += step)
    for (double aft = -reach; aft <= reach; aft += step)
      {
        const Offs offs = { middle.fore + fore, middle.aft + aft };
        const double here = worth (self, offs);

        if (here > most)
          most = here, best = offs;
      }
  return best;
}

static bool
search_begin (Search *self, const Ink *ink, const Point ends[2], double px_per_mm, double click_sigma)
{
  const Point beyond = point_scale (point_sub (ends[1], ends[0]), BEYOND);
  const Point run[2] = { point_sub (ends[0], beyond), point_add (ends[1], beyond) };
  const double far = FURTHEST * click_sigma * (1 + 2 * BEYOND) + BESIDE;

  *self = (Search) { .sigma = click_sigma };
  if (corridor_along (ink, run, 2, far, FIRST_STEP, 1, &self->corridor))
    return false;
  const double share = BEYOND / (1 + 2 * BEYOND), last = (double) (self->corridor.columns - 1);
  self->first = (size_t) round (share * last);
  self->last = (size_t) round ((1 - share) * last);
  self->strength = malloc (self->corridor.columns * (size_t) corridor_rows (&self->corridor) * sizeof *self->strength);
  return self->strength && self->last > self->first
         && !line_strength (&self->corridor, fmax (HALF_WIDTH_MM * px_per_mm, LEAST_HALF_WIDTH), self->strength)
         && !line_strength_even (&self->corridor, FURTHEST * click_sigma, self->corridor.columns, self->strength);
}

static bool
is_printed (const Search *self, Offs offs)
{
  const size_t length = self->last - self->first;

  for (size_t part = 0; part < PARTS; part++)
    if (mean_strength (self, offs, self->first + part * length / PARTS, self->first + (part + 1) * length / PARTS) < LEAST_OF_A_PART)
      return false;
  return mean_strength (self, offs, self->first, self->last) >= LEAST_PRINTED;
}

bool
straight_search (const Ink *ink, Point ends[2], double px_per_mm, double click_sigma)
{
  Search search;
  bool found = search_begin (&search, ink, ends, px_per_mm, click_sigma);

  if (found)
    {
      Offs best = best_about (&search, (Offs) { 0, 0 }, FURTHEST * click_sigma, FIRST_STEP);
      for (double step = FIRST_STEP / 2; step >= LAST_STEP; step /= 2)
        best = best_about (&search, best, step, step);
      found = is_printed (&search, best);
      const Point across = search.corridor.across[0];
      ends[0] = found ? point_add (ends[0], point_scale (across, best.fore)) : ends[0];
      ends[1] = found ? point_add (ends[1], point_scale (across, best.aft)) : ends[1];
    }
  free (search.strength);
  corridor_clear (&search.corridor);
  return found;
}
