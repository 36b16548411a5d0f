#include "plan/through-clicks.h"

#include <stdlib.h>

/* Slope at a place between two others, by the parameters' distances; at an end that of the stretch itself. */
static Point
slope_between (Point before, Point at, Point after, double step_before, double step_after)
{
  const Point arrives = point_scale (point_sub (at, before), 1 / step_before), leaves = point_scale (point_sub (after, at), 1 / step_after);

  return point_mix (arrives, leaves, step_before / (step_before + step_after));
}

static double
step_between (Point a, Point b)
{
  return sqrt (fmax (point_distance (a, b), 1e-9));
}

static Point
slope_at (const Point clicks[], size_t count, size_t i)
{
  if (count == 2 || i == 0)
    return point_scale (point_sub (clicks[1], clicks[0]), 1 / step_between (clicks[0], clicks[1]));
  if (i == count - 1)
    return point_scale (point_sub (clicks[i], clicks[i - 1]), 1 / step_between (clicks[i], clicks[i - 1]));
  return slope_between (clicks[i - 1], clicks[i], clicks[i + 1], step_between (clicks[i - 1], clicks[i]),
                        step_between (clicks[i], clicks[i + 1]));
}

/* Hermite's cubic between two clicks. */
static Point
place_between (const Point ends[2], const Point slopes[2], double step, double t)
{
  const double a = (1 + 2 * t) * (1 - t) * (1 - t), b = t * (1 - t) * (1 - t) * step;
  const double c = t * t * (3 - 2 * t), d = t * t * (t - 1) * step;

  return (Point) { a * ends[0].x + b * slopes[0].x + c * ends[1].x + d * slopes[1].x,
                   a * ends[0].y + b * slopes[0].y + c * ends[1].y + d * slopes[1].y };
}

CoreStatus
through_clicks (const Point clicks[], size_t count, Point **run, size_t *run_count)
{
  size_t room = count, used = 0;

  for (size_t i = 1; i < count; i++)
    room += (size_t) point_distance (clicks[i - 1], clicks[i]);
  Point *places = malloc (room * sizeof *places);
  if (!places)
    return CORE_NO_MEMORY;
  for (size_t i = 1; i < count; i++)
    {
      const size_t stretch = (size_t) point_distance (clicks[i - 1], clicks[i]) + 1;
      const Point slopes[2] = { slope_at (clicks, count, i - 1), slope_at (clicks, count, i) };
      for (size_t j = 0; j < stretch; j++)
        places[used++] = place_between (&clicks[i - 1], slopes, step_between (clicks[i - 1], clicks[i]), (double) j / (double) stretch);
    }
  places[used++] = clicks[count - 1];
  *run = places;
  *run_count = used;
  return CORE_OK;
}
