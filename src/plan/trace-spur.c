#include "plan/trace-spur.h"

#include <math.h>
#include <stdlib.h>

/* mm: from place to place; a lower spur is none, and so narrow a foot is a nick in the line. */
static const double STEP = 2, LEAST = 15, NARROW = 4;
/* Of its foot: how high a spur is at least, and how much its foot may slope. Of the outline's length: how wide the foot may be. */
static const double STEEP = 0.6, SLOPES = 0.35, WIDE = 0.3;

static size_t
every_step (const Trace *trace, Point *made)
{
  size_t count = 0;

  for (size_t i = 0; i < trace->count; i++)
    if (count == 0 || point_distance (trace->polyline[i], made[count - 1]) >= STEP)
      made[count++] = trace->polyline[i];
  return count;
}

/* Outwards is up where it runs aft, over the top, and down where it runs forward. */
static void
look_from (const Point places[], size_t from, size_t count, double widest, Trace *trace)
{
  const Point a = places[from];
  double top = a.y, bottom = a.y;

  for (size_t i = from + 1; i < count && fabs (places[i].x - a.x) <= widest; i++)
    {
      const Point b = places[i], foot = point_sub (b, a);
      const double wide = fabs (foot.x), rises = foot.x > 0 ? top - fmax (a.y, b.y) : fmin (a.y, b.y) - bottom;

      if (wide >= NARROW && fabs (foot.y) <= SLOPES * wide && rises >= STEEP * wide && rises > fmax (LEAST, trace->spur))
        {
          trace->spur = rises;
          trace->spur_at = point_mix (a, b, 0.5);
        }
      top = fmax (top, b.y);
      bottom = fmin (bottom, b.y);
    }
}

CoreStatus
trace_look_for_spur (Trace *trace)
{
  Point *places = malloc (trace->count * sizeof *places);
  double fore = INFINITY, aft = -INFINITY;

  trace->spur = 0;
  if (!places)
    return CORE_NO_MEMORY;
  const size_t count = every_step (trace, places);
  for (size_t i = 0; i < count; i++)
    {
      fore = fmin (fore, places[i].x);
      aft = fmax (aft, places[i].x);
    }
  for (size_t i = 0; i < count; i++)
    look_from (places, i, count, WIDE * (aft - fore), trace);
  free (places);
  return CORE_OK;
}
