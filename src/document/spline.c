#include "document/spline.h"

#include <math.h>
#include <string.h>

enum { MOST_DEGREE = 15, MOST_POLES = 10000, PLACES_A_SPAN = 48 };

static bool
is_sound (const Spline *self)
{
  bool sound = self->degree >= 1 && self->degree <= MOST_DEGREE && self->pole_count > (size_t) self->degree
               && self->pole_count <= MOST_POLES && self->knot_count == self->pole_count + (size_t) self->degree + 1;

  for (size_t i = 1; sound && i < self->knot_count; i++)
    sound = self->knots[i] >= self->knots[i - 1] && isfinite (self->knots[i]);
  for (size_t i = 0; sound && i < self->pole_count; i++)
    sound = point_is_finite (self->poles[i]) && (!self->weights || self->weights[i] > 0);
  return sound && self->knots[self->pole_count] > self->knots[self->degree];
}

/* A pole with its weight carried along: x w, y w, w. */
typedef struct { double x, y, w; } Weighted;

static Weighted
pole_at (const Spline *self, size_t i)
{
  const double w = self->weights ? self->weights[i] : 1;

  return (Weighted) { self->poles[i].x * w, self->poles[i].y * w, w };
}

static Weighted
mix (Weighted a, Weighted b, double t)
{
  return (Weighted) { a.x + (b.x - a.x) * t, a.y + (b.y - a.y) * t, a.w + (b.w - a.w) * t };
}

/* The blossom of the span at `arguments`, one for each degree: with all of them the same it is the place there, and with ends of the span
 * the poles of its own curve. */
static Point
blossom (const Spline *self, size_t span, const double arguments[])
{
  const size_t degree = (size_t) self->degree;
  Weighted poles[MOST_DEGREE + 1];

  for (size_t i = 0; i <= degree; i++)
    poles[i] = pole_at (self, span - degree + i);
  for (size_t level = 1; level <= degree; level++)
    for (size_t i = degree; i >= level; i--)
      {
        const double low = self->knots[span - degree + i], high = self->knots[span + 1 + i - level];
        poles[i] = mix (poles[i - 1], poles[i], (arguments[level - 1] - low) / (high - low));
      }
  return (Point) { poles[degree].x / poles[degree].w, poles[degree].y / poles[degree].w };
}

static Point
place_at (const Spline *self, size_t span, double t)
{
  double arguments[MOST_DEGREE];

  for (int i = 0; i < self->degree; i++)
    arguments[i] = t;
  return blossom (self, span, arguments);
}

/* A span of a cubic is the curve whose poles are the blossom at its ends; lower degrees are raised. */
static void
draw_exactly (const Spline *self, size_t span, BroughtLines *lines)
{
  const double a = self->knots[span], b = self->knots[span + 1];
  const Point from = place_at (self, span, a), to = place_at (self, span, b);

  if (self->degree == 3)
    brought_lines_curve (lines, blossom (self, span, (double[]) { a, a, b }), blossom (self, span, (double[]) { a, b, b }), to);
  else if (self->degree == 2)
    {
      const Point middle = blossom (self, span, (double[]) { a, b });
      brought_lines_curve (lines, point_mix (from, middle, 2.0 / 3), point_mix (to, middle, 2.0 / 3), to);
    }
  else
    brought_lines_line (lines, to);
}

static void
draw_through_places (const Spline *self, size_t span, BroughtLines *lines)
{
  const double a = self->knots[span], b = self->knots[span + 1];

  for (int i = 1; i <= PLACES_A_SPAN; i++)
    brought_lines_line (lines, place_at (self, span, a + (b - a) * i / PLACES_A_SPAN));
}

bool
spline_draw (const Spline *self, const char *name, BroughtLines *lines)
{
  const bool exact = self->degree <= 3 && !self->weights;

  if (!is_sound (self))
    return false;
  brought_lines_begin (lines, (Point) { 0, 0 }, name);
  for (size_t span = (size_t) self->degree; span < self->pole_count; span++)
    {
      if (!(self->knots[span + 1] > self->knots[span]))
        continue;
      if (lines->segments->len == 0)
        brought_lines_begin (lines, place_at (self, span, self->knots[span]), name);
      if (exact)
        draw_exactly (self, span, lines);
      else
        draw_through_places (self, span, lines);
    }
  brought_lines_end (lines);
  return true;
}
