#include "plan/ink-corner.h"

#include <math.h>

/* Ink pixels: half of a window. A line of a drawing is 2 to 5 wide as scanned. */
enum { HALF_WINDOW = 7, STEP = 3, MOST_REACH = 90, PASSES = 6 };
/* Of the two eigenvalues of a window's gradients the smaller over the larger: 1 where edges run every way alike, 0 on a straight line. The
 * end of a line has a short edge against two long ones. */
static const double LEAST_ROUND = 0.06;
/* Mean squared gradient, in shades a pixel, of what counts as printed. */
static const double LEAST_CONTRAST = 60;

/* Gradients of a window, summed: the matrix, and the matrix times the place of each. */
typedef struct { double xx, xy, yy, x, y, weight; } Window;

/* Half pixels off: between the four pixels that it is taken from, so that a line of one pixel has edges. */
static Point
gradient_at (const Ink *ink, int x, int y)
{
  const unsigned char *up = ink_row (ink, y), *down = ink_row (ink, y + 1);

  return (Point) { (up[x + 1] - up[x] + down[x + 1] - down[x]) / 2.0, (down[x] - up[x] + down[x + 1] - up[x + 1]) / 2.0 };
}

/* About a place, ink pixels; nearer gradients weigh more. */
static Window
window_at (const Ink *ink, Point middle)
{
  const int left = (int) floor (middle.x) - HALF_WINDOW, top = (int) floor (middle.y) - HALF_WINDOW;
  Window sum = { 0 };

  for (int y = top < 0 ? 0 : top; y <= top + 2 * HALF_WINDOW && y + 1 < ink_height (ink); y++)
    for (int x = left < 0 ? 0 : left; x <= left + 2 * HALF_WINDOW && x + 1 < ink_width (ink); x++)
      {
        const Point at = { x + 1 - middle.x, y + 1 - middle.y }, g = gradient_at (ink, x, y);
        const double off = (at.x * at.x + at.y * at.y) / (HALF_WINDOW * HALF_WINDOW), weight = off < 1 ? (1 - off) * (1 - off) : 0;
        const double along = g.x * at.x + g.y * at.y;

        sum.xx += weight * g.x * g.x;
        sum.xy += weight * g.x * g.y;
        sum.yy += weight * g.y * g.y;
        sum.x += weight * g.x * along;
        sum.y += weight * g.y * along;
        sum.weight += weight;
      }
  return sum;
}

/* How much of a corner the window holds; 0 where it holds none. */
static double
cornerness (const Window *sum)
{
  const double half = (sum->xx + sum->yy) / 2, root = hypot ((sum->xx - sum->yy) / 2, sum->xy);
  const double small = half - root, large = half + root;

  return sum->weight > 0 && large > LEAST_CONTRAST * sum->weight && small > LEAST_ROUND * large ? small / sum->weight : 0;
}

/* The place nearest all edges of the window about `middle`, as a way from there. */
static Point
nearest_edges (const Window *sum)
{
  const double determinant = sum->xx * sum->yy - sum->xy * sum->xy;

  return (Point) { (sum->yy * sum->x - sum->xy * sum->y) / determinant, (sum->xx * sum->y - sum->xy * sum->x) / determinant };
}

/* From a window onto the corner within it; false when it runs away. */
static bool
settle (const Ink *ink, Point *at)
{
  const Point from = *at;

  for (int pass = 0; pass < PASSES; pass++)
    {
      const Window sum = window_at (ink, *at);
      const Point step = cornerness (&sum) > 0 ? nearest_edges (&sum) : (Point) { NAN, NAN };

      if (!point_is_finite (step) || hypot (step.x, step.y) > HALF_WINDOW)
        return false;
      *at = point_add (*at, step);
      if (point_distance (*at, from) > HALF_WINDOW)
        return false;
    }
  return true;
}

/* The best window about `near`; further ones count less. */
static double
best_window (const Ink *ink, Point near, double reach, Point *best)
{
  double most = 0;

  for (double y = -reach; y <= reach; y += STEP)
    for (double x = -reach; x <= reach; x += STEP)
      {
        const Point at = { near.x + x, near.y + y };
        const double off = hypot (x, y) / reach;
        const Window sum = off <= 1 ? window_at (ink, at) : (Window) { 0 };
        const double worth = cornerness (&sum) * (1 - 0.7 * off);

        if (worth > most)
          {
            most = worth;
            *best = at;
          }
      }
  return most;
}

bool
ink_corner (const Ink *ink, Point near, double reach, Point *found)
{
  const double reduced = ink_reduced (ink), within = fmin (reach / reduced, MOST_REACH);
  const Point middle = point_scale (near, 1 / reduced);
  Point at = middle;

  if (!point_is_finite (near) || !(reach > 0) || best_window (ink, middle, within, &at) <= 0 || !settle (ink, &at))
    return false;
  if (point_distance (at, middle) > within)
    return false;
  *found = point_scale (at, reduced);
  return true;
}
