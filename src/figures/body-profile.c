#include "figures/body-profile.h"

#include <math.h>
#include "figures/body-walls.h"

static const double STEP = 0.5;
enum { MOST_STEPS = 4096, CUTS = 64 };      /* CUTS: straight pieces that a segment is taken for */

/* The greatest and least y of an outline at evenly spaced places. */
typedef struct {
  double from, to, step;
  size_t count;           /* 0: no outline */
  double *least, *most;
} Extent;

struct BodyProfile { Extent above, beside; double skin; };

static void
extent_take (Extent *self, double x, double y)
{
  const size_t i = (size_t) fmin (fmax (round (x), 0), (double) (self->count - 1));

  self->least[i] = fmin (self->least[i], y);
  self->most[i] = fmax (self->most[i], y);
}

/* A straight piece, at every place that it passes; one that runs across at the nearest. */
static void
extent_take_line (Extent *self, Point a, Point b)
{
  const double x0 = (fmin (a.x, b.x) - self->from) / self->step, x1 = (fmax (a.x, b.x) - self->from) / self->step;

  if (ceil (x0) > x1)
    return;
  for (double x = ceil (x0); x <= x1; x++)
    {
      const double share = b.x == a.x ? 0 : ((self->from + x * self->step) - a.x) / (b.x - a.x);
      extent_take (self, x, a.y + share * (b.y - a.y));
    }
  if (a.x == b.x)
    extent_take (self, x0, b.y);
}

static void
extent_take_outline (Extent *self, const Outline *outline)
{
  Point last = outline_node (outline, 0);

  for (size_t i = 0; i < outline_segment_count (outline); i++)
    for (int cut = 1; cut <= CUTS; cut++)
      {
        const Point next = segment_at (outline_node (outline, i), outline_segment (outline, i), (double) cut / CUTS);
        extent_take_line (self, last, next);
        last = next;
      }
  extent_take_line (self, last, outline_node (outline, 0));
}

static Extent
extent_of (const Outline *outline)
{
  Extent self = { .count = 0 };

  if (!outline)
    return self;
  const Box box = outline_bounds (outline);
  const double length = box.max.x - box.min.x;
  if (!(length > 0) || !isfinite (length))
    return self;
  self = (Extent) { .from = box.min.x, .to = box.max.x, .step = fmax (STEP, length / MOST_STEPS) };
  self.count = (size_t) ceil (length / self.step) + 1;
  self.least = g_new (double, self.count);
  self.most = g_new (double, self.count);
  for (size_t i = 0; i < self.count; i++)
    {
      self.least[i] = INFINITY;
      self.most[i] = -INFINITY;
    }
  extent_take_outline (&self, outline);
  /* The last place lies a little behind the end. */
  extent_take (&self, (double) self.count - 1, self.least[self.count - 2]);
  extent_take (&self, (double) self.count - 1, self.most[self.count - 2]);
  return self;
}

static void
extent_clear (Extent *self)
{
  g_free (self->least);
  g_free (self->most);
}

/* The narrowest over a stretch; nothing beyond the ends. The innermost loop of all searches for room: it compares and calls nothing. */
static bool
extent_narrowest (const Extent *self, double from, double to, double *least, double *most)
{
  double greatest = -INFINITY, smallest = INFINITY;

  *least = greatest;
  *most = smallest;
  if (from < self->from || to > self->to)
    return false;
  const size_t first = (size_t) floor ((from - self->from) / self->step), last = (size_t) ceil ((to - self->from) / self->step);
  for (size_t i = first; i <= last && i < self->count; i++)
    {
      greatest = self->least[i] > greatest ? self->least[i] : greatest;
      smallest = self->most[i] < smallest ? self->most[i] : smallest;
    }
  *least = greatest;
  *most = smallest;
  return true;
}

BodyProfile *
body_profile_new (const Body *body)
{
  BodyProfile *self = g_new (BodyProfile, 1);

  *self = (BodyProfile) { extent_of (body->outline), extent_of (body->side_outline), body_skin (body) };
  return self;
}

void
body_profile_free (BodyProfile *self)
{
  if (!self)
    return;
  extent_clear (&self->above);
  extent_clear (&self->beside);
  g_free (self);
}

double
body_profile_clear_half_width (const BodyProfile *self, double from, double to)
{
  double least, most;

  if (!self->above.count)
    return NAN;
  return extent_narrowest (&self->above, from, to, &least, &most) ? fmax (most - self->skin, 0) : 0;
}

void
body_profile_clear_half_widths (const BodyProfile *self, double from, double to, size_t count, double half_widths[])
{
  const Extent *above = &self->above;

  for (size_t i = 0; i < count; i++)
    {
      const double x = from + (to - from) * (double) i / (double) (count - 1), place = (x - above->from) / above->step;

      if (!above->count)
        half_widths[i] = NAN;
      else if (x < above->from || x > above->to)
        half_widths[i] = 0;
      else
        {
          /* The outline's two places about it; x is at or behind the first. */
          const size_t first = (size_t) place, last = MIN (first + ((double) first < place), above->count - 1);
          const double narrower = above->most[last] < above->most[first] ? above->most[last] : above->most[first];

          half_widths[i] = narrower > self->skin ? narrower - self->skin : 0;
        }
    }
}

BodyClear
body_profile_clear (const BodyProfile *self, double from, double to)
{
  BodyClear clear = { body_profile_clear_half_width (self, from, to), NAN, NAN };
  double least, most;

  if (self->beside.count && extent_narrowest (&self->beside, from, to, &least, &most))
    {
      clear.bottom = least + self->skin;
      clear.top = most - self->skin;
    }
  else if (self->beside.count)
    {
      clear.bottom = INFINITY;
      clear.top = -INFINITY;
    }
  return clear;
}

/* An outline's own least and most at a place; false without. */
static bool
extent_at (const Extent *self, double x, double *least, double *most)
{
  const double place = (x - self->from) / self->step;

  if (self->count == 0 || x < self->from || x > self->to)
    return false;
  *least = self->least[(size_t) round (place)];
  *most = self->most[(size_t) round (place)];
  return *most >= *least;
}

void
body_profile_at (const BodyProfile *self, double x, double *half_width, double *bottom, double *top)
{
  double least, most;

  *half_width = extent_at (&self->above, x, &least, &most) ? fmax (most, 0) : NAN;
  *bottom = *top = NAN;
  if (extent_at (&self->beside, x, &least, &most))
    {
      *bottom = least;
      *top = most;
    }
}

bool
body_profile_ends (const BodyProfile *self, double *from, double *to)
{
  const Extent *of = self->above.count ? &self->above : &self->beside;

  *from = of->from;
  *to = of->to;
  return of->count > 0;
}
