#include "geometry/half-ellipse.h"

#include <math.h>
#include "geometry/least-squares.h"

/* Rounds at first in which all places count alike. */
enum { ROUNDS = 40, PLAIN_ROUNDS = 8 };
static const double SETTLED = 1e-9, LEAST_TRUST = 0.3;

/* The place's distance from the ellipse to first order, positive outside, and how it goes with each of the five numbers: centre x,
 * semi-axes ahead, behind, outboard, centre y. */
static double
distance (const HalfEllipse *self, Point place, double change[5])
{
  const bool is_ahead = place.x < self->centre.x;
  const double rx = is_ahead ? self->ahead : self->behind;
  const double u = (place.x - self->centre.x) / rx, v = (place.y - self->centre.y) / self->outboard;
  const double slope = fmax (hypot (u / rx, v / self->outboard), 1e-12);

  change[0] = -u / rx / slope;
  change[1] = is_ahead ? -u * u / rx / slope : 0;
  change[2] = is_ahead ? 0 : -u * u / rx / slope;
  change[3] = -v * v / self->outboard / slope;
  change[4] = -v / self->outboard / slope;
  return (u * u + v * v - 1) / (2 * slope);
}

static size_t
tip_of (const DrawnRun *run)
{
  size_t tip = 0;

  for (size_t i = 1; i < run->count; i++)
    if (run->places[i].y > run->places[tip].y)
      tip = i;
  return tip;
}

/* Where the run first and last passes the station. */
static HalfEllipse
first_guess (const DrawnRun *run, double from)
{
  const size_t tip = tip_of (run);
  size_t first = 0, last = run->count - 1;

  while (first < tip && run->places[first].y < from)
    first++;
  while (last > tip && run->places[last].y < from)
    last--;
  return (HalfEllipse) { .centre = { run->places[tip].x, from }, .ahead = run->places[tip].x - run->places[first].x,
                         .behind = run->places[last].x - run->places[tip].x, .outboard = run->places[tip].y - from };
}

static bool
is_sound (const HalfEllipse *self)
{
  return self->ahead > 0 && self->behind > 0 && self->outboard > 0 && isfinite (self->centre.x + self->ahead + self->behind)
         && isfinite (self->outboard + self->centre.y);
}

/* One of Gauss–Newton's steps, places further off than `usual` counting by how near they are; how far it went, negative where there is
 * none. */
static double
step (const DrawnRun *run, bool held, double usual, HalfEllipse *self)
{
  LeastSquares sums;
  double change[5], x[LEAST_SQUARES_MOST] = { 0 };

  least_squares_begin (&sums, held ? 4 : 5);
  for (size_t i = 0; i < run->count; i++)
    if (run->places[i].y > self->centre.y)
      {
        const double off = distance (self, run->places[i], change);
        least_squares_add (&sums, change, -off, run->weights[i] * fmin (usual / fmax (fabs (off), 1e-12), 1));
      }
  if (!least_squares_solve (&sums, x, NULL))
    return -1;
  self->centre.x += x[0];
  self->ahead += x[1];
  self->behind += x[2];
  self->outboard += x[3];
  if (!held)
    self->centre.y = fmax (self->centre.y + x[4], 0);
  return fabs (x[0]) + fabs (x[1]) + fabs (x[2]) + fabs (x[3]) + fabs (x[4]);
}

CoreStatus
half_ellipse_fit (const DrawnRun *run, double from, bool held, double usual, HalfEllipse *ellipse)
{
  HalfEllipse self = first_guess (run, from);
  double went = INFINITY;

  for (int i = 0; i < ROUNDS && is_sound (&self) && (i <= PLAIN_ROUNDS || went > SETTLED * self.outboard); i++)
    went = step (run, held, i < PLAIN_ROUNDS ? INFINITY : usual, &self);
  if (!is_sound (&self) || went < 0 || went > 1e-4 * self.outboard)
    return CORE_OUT_OF_RANGE;
  *ellipse = self;
  return CORE_OK;
}

double
half_ellipse_miss (const DrawnRun *run, const HalfEllipse *ellipse, double window, double most, double *beyond)
{
  double sum = 0, weight = 0, begun = 0, squares = 0, change[5];
  size_t count = 0, windows = 0, far = 0;

  for (size_t i = 0; i < run->count; i++)
    {
      if (run->places[i].y > ellipse->centre.y)
        {
          sum += run->weights[i] * distance (ellipse, run->places[i], change);
          weight += run->weights[i];
          count++;
        }
      if (run->along[i] - begun < window && i + 1 < run->count)
        continue;
      if (weight > LEAST_TRUST * (double) count && count > 0)
        {
          const double miss = fmin (fabs (sum / weight), most);
          far += miss == most;
          squares += miss * miss;
          windows++;
        }
      begun = run->along[i];
      sum = weight = 0;
      count = 0;
    }
  *beyond = windows > 0 ? (double) far / (double) windows : 1;
  return windows > 0 ? sqrt (squares / (double) windows) : INFINITY;
}
