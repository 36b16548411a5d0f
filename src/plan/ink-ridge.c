#include "plan/ink-ridge.h"

#include <math.h>

/* Ink pixels: how far apart a line's middle and the paper beside it are. */
enum { BESIDE = 3 };

Point
ink_ridge (const Ink *ink, int x, int y)
{
  if (x < BESIDE || y < BESIDE || x + BESIDE >= ink_width (ink) || y + BESIDE >= ink_height (ink))
    return (Point) { 0, 0 };
  const unsigned char *up = ink_row (ink, y - BESIDE), *row = ink_row (ink, y), *down = ink_row (ink, y + BESIDE);
  const double xx = row[x + BESIDE] - 2.0 * row[x] + row[x - BESIDE], yy = down[x] - 2.0 * row[x] + up[x];
  const double xy = (down[x + BESIDE] - down[x - BESIDE] - up[x + BESIDE] + up[x - BESIDE]) / 4.0;
  const double half = (xx + yy) / 2, root = hypot ((xx - yy) / 2, xy), bend = half - root, turn = atan2 (-2 * xy, yy - xx) / 2;

  return bend < 0 ? (Point) { -bend * cos (turn), -bend * sin (turn) } : (Point) { 0, 0 };
}
