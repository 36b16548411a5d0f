#include "plan/wiggles.h"

#include <math.h>
#include <stdlib.h>
#include "geometry/stretch.h"

/* mm from direction to direction; how many each way; radians. */
static const double STEP = 1, MOST = 0.8;
enum { EACH_WAY = 4 };

static void
find_turns (const DrawnRun *run, size_t count, double *turns)
{
  Point before = { 0, 0 };

  for (size_t i = 0; i < count; i++)
    {
      const Point from = run->places[drawn_run_at (run, STEP * (double) i)], to = run->places[drawn_run_at (run, STEP * (double) (i + 1))];
      const Point way = point_sub (to, from);
      turns[i] = i && (before.x != 0 || before.y != 0) ? atan2 (point_cross (before, way), point_dot (before, way)) : 0;
      before = way;
    }
}

bool
distrust_wiggles (const DrawnRun *run, double *weights)
{
  const size_t count = (size_t) (run->along[run->count - 1] / STEP) + 1;
  double *turns = malloc (count * sizeof *turns);

  if (!turns)
    return false;
  find_turns (run, count, turns);
  for (size_t i = 0; i < count; i++)
    {
      double total = 0, net = 0;
      for (size_t j = i > EACH_WAY ? i - EACH_WAY : 0; j < count && j <= i + EACH_WAY; j++)
        {
          total += fabs (turns[j]);
          net += turns[j];
        }
      if (total - fabs (net) <= MOST)
        continue;
      const size_t last = drawn_run_at (run, STEP * ((double) i + 0.5));
      for (size_t at = drawn_run_at (run, STEP * ((double) i - 0.5)); at <= last; at++)
        weights[at] = fmin (weights[at], 0.01);
    }
  free (turns);
  return true;
}
