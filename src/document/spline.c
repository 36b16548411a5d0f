#include "document/spline.h"

#include <math.h>
#include <string.h>

enum { MOST_DEGREE = 15, MOST_POLES = 10000, PIECES_A_SPAN = 12 };

static bool
is_sound (const Spline *self)
{
  bool sound = self->degree >= 1 && self->degree <= MOST_DEGREE && self->pole_count > (size_t) self->degree
               && self->pole_count <= MOST_POLES && self->knot_count == self->pole_count + (size_t) self->degree + 1;

  for (size_t i = 1; sound && i < self->knot_count; i++)
    sound = self->knots[i] >= self->knots[i - 1] && isfinite (self->knots[i]);
  for (size_t i = 0; sound && i < self->pole_count; i++)
    sound = point_is_finite (self->poles[i]) && (!self->weights || (self->weights[i] > 0 && isfinite (self->weights[i])));
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
static Weighted
weighted_blossom (const Spline *self, size_t span, const double arguments[])
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
  return poles[degree];
}

static Point
point_of (Weighted pole)
{
  return (Point) { pole.x / pole.w, pole.y / pole.w };
}

static Point
blossom (const Spline *self, size_t span, const double arguments[])
{
  return point_of (weighted_blossom (self, span, arguments));
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

/* The way from `from` to a third of its curve's slope there, on the piece between two parameters: `near` many times and `far` once. */
static Point
third_of_slope (const Spline *self, size_t span, double near, double far)
{
  double arguments[MOST_DEGREE];

  for (int i = 0; i < self->degree; i++)
    arguments[i] = near;
  const Weighted here = weighted_blossom (self, span, arguments);
  arguments[self->degree - 1] = far;
  const Weighted beside = weighted_blossom (self, span, arguments);
  return point_scale (point_sub (point_of (beside), point_of (here)), self->degree / 3.0 * beside.w / here.w);
}

/* Cubic curves that share places and slopes with it. */
static void
draw_nearly (const Spline *self, size_t span, BroughtLines *lines)
{
  const double from = self->knots[span], way = self->knots[span + 1] - from;

  for (int i = 0; i < PIECES_A_SPAN; i++)
    {
      const double a = from + way * i / PIECES_A_SPAN, b = from + way * (i + 1) / PIECES_A_SPAN;
      const Point start = place_at (self, span, a), end = place_at (self, span, b);
      brought_lines_curve (lines, point_add (start, third_of_slope (self, span, a, b)),
                           point_add (end, third_of_slope (self, span, b, a)), end);
    }
}

static bool
has_equal_weights (const Spline *self)
{
  for (size_t i = 1; self->weights && i < self->pole_count; i++)
    if (self->weights[i] != self->weights[0])
      return false;
  return true;
}

bool
spline_draw (const Spline *self, const char *name, BroughtLines *lines)
{
  if (!is_sound (self))
    return false;
  const bool exact = self->degree <= 3 && has_equal_weights (self);
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
        draw_nearly (self, span, lines);
    }
  brought_lines_end (lines);
  return true;
}
