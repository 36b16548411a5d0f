#include "plan/line-steps.h"

#include <math.h>
#include "geometry/stretch.h"

/* mm: a step takes no longer than twice this; over so much its way before and behind is taken; from look to look; less is none. */
static const double REACH = 11, WAY = 7, LOOK = 0.5, LEAST = 1;
/* Radians: before and behind a step a line runs about the same way. */
static const double BENT = 0.12;
/* mm: so far off a way a place still is on it. */
static const double ON_WAY = 0.5;
/* So much of both ways shows a line at least: among letters a followed line is anywhere. */
static const double TRUSTED = 0.7;

typedef struct { Point place, direction; } Way;

static Way
way_of (const DrawnRun *run, double from, double to, bool begins)
{
  const Point a = run->places[drawn_run_at (run, from)], b = run->places[drawn_run_at (run, to)];
  const double length = point_distance (a, b);

  return (Way) { begins ? a : b, length > 0 ? point_scale (point_sub (b, a), 1 / length) : (Point) { 0, 0 } };
}

static double
off_way (const Way *way, Point place)
{
  return point_cross (way->direction, point_sub (place, way->place));
}

/* How far it goes aside about there, px; 0 where it does not. */
static double
aside_at (const DrawnRun *run, double along, double px_per_mm, Way *before, Way *behind)
{
  const double reach = REACH * px_per_mm, way = WAY * px_per_mm;

  if (drawn_run_trust (run, along - reach - way, along - reach) < TRUSTED
      || drawn_run_trust (run, along + reach, along + reach + way) < TRUSTED)
    return 0;
  *before = way_of (run, along - reach - way, along - reach, false);
  *behind = way_of (run, along + reach, along + reach + way, true);
  const double foretold = off_way (before, behind->place), hindsight = -off_way (behind, before->place);
  const double aside = foretold * hindsight <= 0 ? 0 : fabs (foretold) < fabs (hindsight) ? foretold : hindsight;
  return fabs (point_cross (before->direction, behind->direction)) > BENT || fabs (aside) < LEAST * px_per_mm ? 0 : aside;
}

static void
find_ends (const DrawnRun *run, double along, double px_per_mm, const Way *before, const Way *behind, LineStep *step)
{
  const size_t first = drawn_run_at (run, along - REACH * px_per_mm), last = drawn_run_at (run, along + REACH * px_per_mm);
  double seen = 0;

  step->before = first;
  step->behind = last;
  while (step->before < last && fabs (off_way (before, run->places[step->before + 1])) < ON_WAY * px_per_mm)
    step->before++;
  while (step->behind > first && fabs (off_way (behind, run->places[step->behind - 1])) < ON_WAY * px_per_mm)
    step->behind--;
  for (size_t i = step->before; i <= step->behind; i++)
    seen += run->weights[i];
  step->seen = step->behind >= step->before ? seen / (double) (step->behind - step->before + 1) : 0;
}

bool
line_step_next (const DrawnRun *run, double px_per_mm, double *along, LineStep *step)
{
  const double least = (REACH + WAY) * px_per_mm, end = run->along[run->count - 1] - least;
  double most = 0;

  for (; *along <= end || most != 0; *along += LOOK * px_per_mm)
    {
      Way before, behind;
      const double aside = *along < least || *along > end ? 0 : aside_at (run, *along, px_per_mm, &before, &behind);

      if (fabs (aside) > fabs (most))
        {
          most = aside;
          step->aside = aside / px_per_mm;
          find_ends (run, *along, px_per_mm, &before, &behind, step);
        }
      else if (aside == 0 && most != 0)
        return true;
    }
  return false;
}
