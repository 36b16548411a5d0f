#include "plan/straight-run.h"

#include <math.h>
#include "plan/follow.h"

/* px: how far off the line a hand's click is. */
static const double CLICK_SIGMA = 2;
/* The ends belong to corners as often as to the line; the share left out at each. */
static const double END_SHARE = 0.04;
/* Of the line's length: at least so much is to be seen, and no lens bends it more. Printed lines are broken by folds and centre lines by
 * their dashes. */
static const double LEAST_SEEN = 0.5, MOST_BEND = 0.04;
/* Ink pixels: root mean square distance from the parabola that is one line still. */
static const double MOST_STRAY = 1.6;

/* px a mm: a corridor as wide as for a fine scan is wide enough, however wrong the scale is yet; wider ones take their time. */
static const double FINEST = 15;

enum { LEAST_PLACES = 20 };

/* A parabola q = c0 + c1 t + c2 t² by weighed least squares: sums of w t^k and w q t^k. */
typedef struct { double t[5], q[3], qq; } Sums;

static void
add_place (Sums *sums, double t, double q, double weight)
{
  double power = weight;

  for (int k = 0; k < 5; k++, power *= t)
    {
      sums->t[k] += power;
      if (k < 3)
        sums->q[k] += power * q;
    }
  sums->qq += weight * q * q;
}

static double
determinant (const double m[9])
{
  return m[0] * (m[4] * m[8] - m[5] * m[7]) - m[1] * (m[3] * m[8] - m[5] * m[6]) + m[2] * (m[3] * m[7] - m[4] * m[6]);
}

/* By Cramer's rule; t runs from 0 to 1, so that nothing is lost. */
static bool
fit (const Sums *s, double c[3])
{
  const double matrix[9] = { s->t[0], s->t[1], s->t[2], s->t[1], s->t[2], s->t[3], s->t[2], s->t[3], s->t[4] };
  const double whole = determinant (matrix);

  if (!(fabs (whole) > 1e-12 * s->t[0] * s->t[0] * s->t[0]))
    return false;
  for (int column = 0; column < 3; column++)
    {
      double replaced[9];

      for (int i = 0; i < 9; i++)
        replaced[i] = i % 3 == column ? s->q[i / 3] : matrix[i];
      c[column] = determinant (replaced) / whole;
    }
  return true;
}

/* The followed places against the chord a to b: t along it from 0 to 1, q across it, px. */
static Point
against_chord (Point a, Point b, Point place)
{
  const Point chord = point_sub (b, a), off = point_sub (place, a);
  const double length = hypot (chord.x, chord.y);

  return (Point) { (off.x * chord.x + off.y * chord.y) / (length * length), (off.y * chord.x - off.x * chord.y) / length };
}

static Point
on_chord (Point a, Point b, double t, double q)
{
  const double length = point_distance (a, b);
  const Point across = { -(b.y - a.y) / length, (b.x - a.x) / length };

  return point_add (point_mix (a, b, t), point_scale (across, q));
}

static bool
is_one_line (const Sums *sums, const double c[3], double seen, double length, double reduced)
{
  const double stray = (sums->qq - c[0] * sums->q[0] - c[1] * sums->q[1] - c[2] * sums->q[2]) / sums->t[0];

  return seen >= LEAST_SEEN && sqrt (fmax (stray, 0)) <= MOST_STRAY * reduced && fabs (c[2]) / 4 <= MOST_BEND * length;
}

static bool
measure (const FollowedLine *line, Point a, Point b, double reduced, StraightRun *run)
{
  Sums sums = { 0 };
  double c[3], seen = 0;
  size_t counted = 0;

  for (size_t i = 0; i < line->count; i++)
    {
      const Point at = against_chord (a, b, line->places[i]);

      if (at.x < END_SHARE || at.x > 1 - END_SHARE)
        continue;
      add_place (&sums, at.x, at.y, line->weights[i]);
      seen += line->weights[i] > 0.3;
      counted++;
    }
  if (counted < LEAST_PLACES || !fit (&sums, c)
      || !is_one_line (&sums, c, seen / (double) counted, point_distance (a, b), reduced))
    return false;
  /* The straight line that lies best against a parabola over 0 to 1. */
  run->from = on_chord (a, b, 0, c[0] - c[2] / 6);
  run->to = on_chord (a, b, 1, c[0] + c[1] + 5 * c[2] / 6);
  run->bend = fabs (c[2]) / 4;
  for (int i = 0; i < STRAIGHT_RUN_PLACES; i++)
    {
      const double t = END_SHARE + (1 - 2 * END_SHARE) * i / (STRAIGHT_RUN_PLACES - 1);

      run->places[i] = on_chord (a, b, t, c[0] + t * (c[1] + t * c[2]));
    }
  return true;
}

bool
straight_run (const Ink *ink, Point a, Point b, double px_per_mm, StraightRun *run)
{
  const double reduced = ink_reduced (ink);
  const FollowOptions options = { .px_per_mm = fmin (px_per_mm / reduced, FINEST), .click_sigma = CLICK_SIGMA / reduced };
  const Point clicks[2] = { point_scale (a, 1 / reduced), point_scale (b, 1 / reduced) };
  FollowedLine line;
  bool found;

  if (!point_is_finite (a) || !point_is_finite (b) || follow_line (ink, clicks, 2, &options, &line))
    return false;
  for (size_t i = 0; i < line.count; i++)
    line.places[i] = point_scale (line.places[i], reduced);
  found = measure (&line, a, b, ink_reduced (ink), run);
  followed_line_clear (&line);
  return found;
}
