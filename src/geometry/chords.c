#include "geometry/chords.h"

#include "geometry/stretch.h"

/* Of a chord: ends whose distances differ by less are as near as each other. */
static const double ROUNDING = 1e-12;

static double
square_from_chord (Point place, const Point chord[2], double *s)
{
  const Point along = point_sub (chord[1], chord[0]);
  const double square = point_dot (along, along);

  *s = square > 0 ? fmin (fmax (point_dot (point_sub (place, chord[0]), along) / square, 0), 1) : 0;
  const Point miss = point_sub (place, point_mix (chord[0], chord[1], *s));
  return point_dot (miss, miss);
}

static bool
chords_cross (const Point a[2], const Point b[2], double *s, double *u)
{
  const Point along_a = point_sub (a[1], a[0]), along_b = point_sub (b[1], b[0]), apart = point_sub (b[0], a[0]);
  const double cross = point_cross (along_a, along_b);

  if (cross == 0)
    return false;
  *s = point_cross (apart, along_b) / cross;
  *u = point_cross (apart, along_a) / cross;
  return *s >= 0 && *s <= 1 && *u >= 0 && *u <= 1;
}

double
chords_distance (const Point a[2], const Point b[2], double *s, double *u)
{
  /* Each end against the other chord. */
  double along_a[4] = { 0, 1 }, along_b[4] = { 0, 0, 0, 1 }, square[4];
  double best = INFINITY, ties = 0, sum_a = 0, sum_b = 0;

  if (chords_cross (a, b, s, u))
    return 0;
  for (int end = 0; end < 2; end++)
    {
      square[end] = square_from_chord (a[end], b, &along_b[end]);
      square[end + 2] = square_from_chord (b[end], a, &along_a[end + 2]);
      best = fmin (best, fmin (square[end], square[end + 2]));
    }
  const Point along = point_sub (a[1], a[0]);
  const double same = best + ROUNDING * ROUNDING * point_dot (along, along);
  for (int k = 0; k < 4; k++)
    if (square[k] <= same)
      {
        ties++;
        sum_a += along_a[k];
        sum_b += along_b[k];
      }
  *s = sum_a / ties;
  *u = sum_b / ties;
  return sqrt (best);
}
