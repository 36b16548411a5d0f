#include "geometry/corners.h"

#include <math.h>
#include <stdbool.h>
#include <stdlib.h>
#include <string.h>
#include "geometry/least-squares.h"
#include "geometry/stretch.h"

/* A second look goes so far of the first; the turn that it must still find. */
static const double CLOSER = 0.45, STAYS = 0.7;
/* The line's middle is drawn round within a corner, over about a line's width: of the reach. */
static const double ROUNDED = 0.08;
/* Standard errors; and how much better than one smooth curve, in mean squares. */
static const double BEYOND_SCATTER = 6, BETTER = 2;
/* Of the reach: from candidate to candidate. */
static const double STEP = 0.05;
/* Places beside each other are measured over nearly the same ink: only so many are independent of a hundred. */
static const double INDEPENDENT = 0.1;

/* A look at one place: two parabolas that meet there. */
typedef struct { double turn, error, rest, smooth_rest; Point place; } Look;

typedef struct { Point origin, way, across; double reach; } Frame;

static Frame
frame_about (const DrawnRun *run, double along, double reach)
{
  const Point before = run->places[drawn_run_at (run, along - reach)], after = run->places[drawn_run_at (run, along + reach)];
  const double length = fmax (point_distance (before, after), 1e-12);
  const Point way = point_scale (point_sub (after, before), 1 / length);

  return (Frame) { .origin = run->places[drawn_run_at (run, along)], .way = way, .across = { -way.y, way.x }, .reach = reach };
}

static void
add_places (const DrawnRun *run, double along, const Frame *frame, LeastSquares *broken, LeastSquares *smooth, double sides[2])
{
  const size_t last = drawn_run_at (run, along + frame->reach);

  for (size_t i = drawn_run_at (run, along - frame->reach); i <= last; i++)
    {
      const Point off = point_sub (run->places[i], frame->origin);
      const double u = point_dot (off, frame->way) / frame->reach, v = point_dot (off, frame->across);
      const double back = u < 0 ? u : 0, ahead = u < 0 ? 0 : u;
      if (fabs (u) < ROUNDED)
        continue;
      least_squares_add (broken, (double[]) { 1, back, back * back, ahead, ahead * ahead }, v, run->weights[i]);
      least_squares_add (smooth, (double[]) { 1, u, u * u, u * u * u }, v, run->weights[i]);
      sides[u < 0 ? 0 : 1] += run->weights[i];
    }
}

/* The variance of the two slopes' difference for scatter 1: a column of the inverse, by solving for it. */
static double
slope_variance (const LeastSquares *broken)
{
  LeastSquares unit = *broken;
  double x[LEAST_SQUARES_MOST];

  memset (unit.right, 0, sizeof unit.right);
  unit.right[1] = -1;
  unit.right[3] = 1;
  return least_squares_solve (&unit, x, NULL) ? x[3] - x[1] : INFINITY;
}

static bool
look_at (const DrawnRun *run, double along, double reach, Look *look)
{
  const Frame frame = frame_about (run, along, reach);
  const double end = run->along[run->count - 1], least = 0.3 * reach / fmax (end, 1e-12) * (double) run->count * 0.5;
  LeastSquares broken, smooth;
  double x[LEAST_SQUARES_MOST], y[LEAST_SQUARES_MOST], sides[2] = { 0, 0 };

  if (along < reach / 3 || along > end - reach / 3)
    return false;
  least_squares_begin (&broken, 5);
  least_squares_begin (&smooth, 4);
  add_places (run, along, &frame, &broken, &smooth, sides);
  if (sides[0] < least || sides[1] < least || !least_squares_solve (&broken, x, &look->rest)
      || !least_squares_solve (&smooth, y, &look->smooth_rest))
    return false;
  look->turn = atan (x[3] / reach) - atan (x[1] / reach);
  look->error = sqrt (look->rest * slope_variance (&broken) / INDEPENDENT) / reach;
  look->place = point_add (frame.origin, point_scale (frame.across, x[0]));
  return true;
}

static bool
is_corner (const DrawnRun *run, double along, double reach, double least, Look *look)
{
  Look closer;

  return look_at (run, along, reach, look) && fabs (look->turn) >= least && fabs (look->turn) > BEYOND_SCATTER * look->error
         && look->smooth_rest > BETTER * look->rest && look_at (run, along, CLOSER * reach, &closer)
         && closer.turn / look->turn > STAYS;
}

/* Nearer than half a reach two candidates are one corner; the one that fits better stays. */
static size_t
keep_corner (Corner corners[], double rests[], size_t count, size_t room, const Corner *found, double rest, double reach)
{
  if (count > 0 && found->along - corners[count - 1].along < reach / 2)
    {
      if (rest < rests[count - 1])
        {
          corners[count - 1] = *found;
          rests[count - 1] = rest;
        }
      return count;
    }
  if (count == room)
    return count;
  corners[count] = *found;
  rests[count] = rest;
  return count + 1;
}

size_t
corners_find (const DrawnRun *run, double reach, double least, Corner corners[], size_t room)
{
  double *rests = malloc ((room ? room : 1) * sizeof *rests);
  size_t count = 0;

  for (double along = 0; rests && run->count > 2 && along < run->along[run->count - 1]; along += STEP * reach)
    {
      Look look;
      if (!is_corner (run, along, reach, least, &look))
        continue;
      const Corner found = { .along = along, .place = look.place, .turn = look.turn };
      count = keep_corner (corners, rests, count, room, &found, look.rest, reach);
    }
  free (rests);
  return count;
}
