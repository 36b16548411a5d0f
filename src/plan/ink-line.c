#include "plan/ink-line.h"

#include <math.h>
#include "plan/ink-ridge.h"

/* Ink pixels: how far from the nearest sign of a line its middle is looked for, and how far along it is averaged. */
static const double ACROSS = 5, ALONG = 6, STEP = 0.5;
/* The ink's unit: a fainter line is none. Of the strongest about: a thin line beside a bold one counts, the grain of the paper does not. */
static const double FAINTEST = 60, SHARE = 0.33;
enum { MOST_REACH = 90, PASSES = 3 };
/* Ink pixels: from look to look along a way. */
static const double APART = 4;

/* Calls for each pixel within reach, with its ridge. */
typedef struct { Point near; double reach, strongest, nearest; Point at, across; } Search;

static void
look_for_strongest (Search *self, Point at, Point ridge)
{
  self->strongest = fmax (self->strongest, hypot (ridge.x, ridge.y));
}

static void
look_for_nearest (Search *self, Point at, Point ridge)
{
  const double far = point_distance (at, self->near);

  if (far >= self->nearest || hypot (ridge.x, ridge.y) < fmax (FAINTEST, SHARE * self->strongest))
    return;
  self->nearest = far;
  self->at = at;
  self->across = ridge;
}

static void
search (const Ink *ink, Search *self, void (*look) (Search *, Point, Point))
{
  const int left = (int) floor (self->near.x - self->reach), right = (int) ceil (self->near.x + self->reach);
  const int top = (int) floor (self->near.y - self->reach), bottom = (int) ceil (self->near.y + self->reach);

  for (int y = top < 0 ? 0 : top; y <= bottom && y < ink_height (ink); y++)
    for (int x = left < 0 ? 0 : left; x <= right && x < ink_width (ink); x++)
      {
        const Point at = { x + 0.5, y + 0.5 };

        if (point_distance (at, self->near) <= self->reach)
          look (self, at, ink_ridge (ink, x, y));
      }
}

/* The ink at so many px across, averaged along the line. */
static double
ink_beside (const Ink *ink, Point at, Point across, double off)
{
  double sum = 0;

  for (double along = -ALONG; along <= ALONG; along++)
    sum += ink_at (ink, (Point) { at.x + off * across.x - along * across.y, at.y + off * across.y + along * across.x });
  return sum;
}

/* The middle of the ink across the line, nearer ink counting more: what stands beside it must not draw it away. */
static Point
middle_of (const Ink *ink, Point at, Point across)
{
  double sum = 0, moment = 0;

  for (double off = -ACROSS; off <= ACROSS; off += STEP)
    {
      const double ink_there = ink_beside (ink, at, across, off) * (1 - off * off / ((ACROSS + 1) * (ACROSS + 1)));

      sum += ink_there;
      moment += ink_there * off;
    }
  return sum > 0 ? point_add (at, point_scale (across, moment / sum)) : at;
}

bool
ink_line (const Ink *ink, Point near, double reach, Point *found)
{
  const double reduced = ink_reduced (ink);
  Search self = { .near = point_scale (near, 1 / reduced), .reach = fmin (reach / reduced, MOST_REACH), .nearest = INFINITY };

  if (!point_is_finite (near) || !(reach > 0))
    return false;
  search (ink, &self, look_for_strongest);
  search (ink, &self, look_for_nearest);
  if (!isfinite (self.nearest))
    return false;
  self.across = point_scale (self.across, 1 / hypot (self.across.x, self.across.y));
  for (int pass = 0; pass < PASSES; pass++)
    self.at = middle_of (ink, self.at, self.across);
  *found = point_scale (self.at, reduced);
  return true;
}

static bool
is_inked_across (const Ink *ink, Point at, Point across, double beside)
{
  for (double off = -beside; off <= beside; off++)
    if (ink_at (ink, point_add (at, point_scale (across, off))) >= FAINTEST)
      return true;
  return false;
}

double
ink_share_between (const Ink *ink, Point a, Point b, double beside)
{
  const double reduced = ink_reduced (ink), length = point_distance (a, b) / reduced;
  const Point across = { -(b.y - a.y) / (length * reduced), (b.x - a.x) / (length * reduced) };
  int inked = 0, looked = 0;

  if (!point_is_finite (a) || !point_is_finite (b) || !(length > 0))
    return 0;
  for (double along = 0; along <= length; along += APART, looked++)
    inked += is_inked_across (ink, point_scale (point_mix (a, b, along / length), 1 / reduced), across, beside / reduced);
  return (double) inked / looked;
}
