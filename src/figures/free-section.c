#include "figures/free-section.h"

#include <math.h>
#include <stdbool.h>

double
section_area (Section self)
{
  return fmax (self.y_to - self.y_from, 0) * fmax (self.z_to - self.z_from, 0);
}

static bool
is_beside (const Section *one, double y_from, double y_to)
{
  return one->y_to <= y_from || one->y_from >= y_to;
}

/* Between two sides the highest that stands on this floor. */
static Section
above_floor (Section whole, const Section blocked[], size_t count, Section strip)
{
  for (size_t i = 0; i < count; i++)
    if (!is_beside (&blocked[i], strip.y_from, strip.y_to) && blocked[i].z_to > strip.z_from)
      strip.z_to = fmin (strip.z_to, blocked[i].z_from);
  strip.z_from = fmax (strip.z_from, whole.z_from);
  return strip;
}

/* Its floor is the whole's or the top of something blocked. */
static void
take_between (Section whole, const Section blocked[], size_t count, double y_from, double y_to, Section *best)
{
  for (size_t i = 0; i <= count; i++)
    {
      const double floor = i < count ? blocked[i].z_to : whole.z_from;
      const Section free = above_floor (whole, blocked, count, (Section) { y_from, y_to, floor, whole.z_to });

      if (section_area (free) > section_area (*best))
        *best = free;
    }
}

Section
section_largest_free (Section whole, const Section blocked[], size_t count)
{
  Section best = { 0, 0, 0, 0 };

  for (size_t i = 0; i <= count; i++)
    for (size_t k = 0; k <= count; k++)
      {
        const double y_from = i < count ? fmax (blocked[i].y_to, whole.y_from) : whole.y_from;
        const double y_to = k < count ? fmin (blocked[k].y_from, whole.y_to) : whole.y_to;

        if (y_from < y_to)
          take_between (whole, blocked, count, y_from, y_to, &best);
      }
  return best;
}

/* How far from y = 0 something stands on either side; 0 where it stands on it. */
static double
off_centre (const Section *one)
{
  return fmax (fmax (one->y_from, -one->y_to), 0);
}

Section
section_largest_centred (Section whole, const Section blocked[], size_t count)
{
  const double widest = fmin (-whole.y_from, whole.y_to);
  Section best = { 0, 0, 0, 0 };

  for (size_t i = 0; i <= count; i++)
    {
      const double half = i < count ? fmin (off_centre (&blocked[i]), widest) : widest;

      if (half > 0)
        take_between (whole, blocked, count, -half, half, &best);
    }
  return best;
}
