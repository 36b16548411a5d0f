#include "plan/ink-corner.h"

#include <math.h>
#include "plan/ink-ridge.h"

/* Ink pixels: half of a window. */
enum { HALF_WINDOW = 7, STEP = 3, MOST_REACH = 90, PASSES = 6 };
/* Mean squared slope or ridge, in shades, of what counts as printed. */
static const double LEAST_CONTRAST = 60;

/* What a place says of a line through it: a vector across the line, as long as the line is plain there. */
typedef Point (*Across) (const Ink *ink, int x, int y);
/* Lines by their ridges cross where their middles do; the end of one has only edges. Of the two eigenvalues of a window the smaller over
 * the larger, at least: 1 where lines run every way alike, 0 along a straight one; an end has a short edge against two long ones. */
typedef struct { Across across; Point middle; double least_round; } Kind;

/* A window's vectors, summed: the matrix, and the matrix times the place of each. */
typedef struct { double xx, xy, yy, x, y, weight; } Window;

/* Between the four pixels that it is taken from, so that a line of one pixel has edges. */
static Point
edge_across (const Ink *ink, int x, int y)
{
  if (x + 1 >= ink_width (ink) || y + 1 >= ink_height (ink))
    return (Point) { 0, 0 };
  const unsigned char *up = ink_row (ink, y), *down = ink_row (ink, y + 1);

  return (Point) { (up[x + 1] - up[x] + down[x + 1] - down[x]) / 2.0, (down[x] - up[x] + down[x + 1] - up[x + 1]) / 2.0 };
}

static const Kind RIDGES = { ink_ridge, { 0.5, 0.5 }, 0.2 }, EDGES = { edge_across, { 1, 1 }, 0.06 };

/* About a place, ink pixels; what is nearer weighs more. */
static Window
window_at (const Ink *ink, const Kind *kind, Point middle)
{
  const int left = (int) floor (middle.x) - HALF_WINDOW, top = (int) floor (middle.y) - HALF_WINDOW;
  Window sum = { 0 };

  for (int y = top < 0 ? 0 : top; y <= top + 2 * HALF_WINDOW && y < ink_height (ink); y++)
    for (int x = left < 0 ? 0 : left; x <= left + 2 * HALF_WINDOW && x < ink_width (ink); x++)
      {
        const Point at = { x + kind->middle.x - middle.x, y + kind->middle.y - middle.y }, g = kind->across (ink, x, y);
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
cornerness (const Kind *kind, const Window *sum)
{
  const double half = (sum->xx + sum->yy) / 2, root = hypot ((sum->xx - sum->yy) / 2, sum->xy);
  const double small = half - root, large = half + root;

  return sum->weight > 0 && large > LEAST_CONTRAST * sum->weight && small > kind->least_round * large ? small / sum->weight : 0;
}

/* The place nearest all lines of the window, as a way from its middle. */
static Point
nearest_lines (const Window *sum)
{
  const double determinant = sum->xx * sum->yy - sum->xy * sum->xy;

  return (Point) { (sum->yy * sum->x - sum->xy * sum->y) / determinant, (sum->xx * sum->y - sum->xy * sum->x) / determinant };
}

/* From a window onto the corner within it; false when it runs away. */
static bool
settle (const Ink *ink, const Kind *kind, Point *at)
{
  const Point from = *at;

  for (int pass = 0; pass < PASSES; pass++)
    {
      const Window sum = window_at (ink, kind, *at);
      const Point step = cornerness (kind, &sum) > 0 ? nearest_lines (&sum) : (Point) { NAN, NAN };

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
best_window (const Ink *ink, const Kind *kind, Point near, double reach, Point *best)
{
  double most = 0;

  for (double y = -reach; y <= reach; y += STEP)
    for (double x = -reach; x <= reach; x += STEP)
      {
        const Point at = { near.x + x, near.y + y };
        const double off = hypot (x, y) / reach;
        const Window sum = off <= 1 ? window_at (ink, kind, at) : (Window) { 0 };
        const double worth = cornerness (kind, &sum) * (1 - 0.7 * off);

        if (worth > most)
          {
            most = worth;
            *best = at;
          }
      }
  return most;
}

static bool
find (const Ink *ink, const Kind *kind, Point near, double reach, Point *found)
{
  Point at = near;

  if (best_window (ink, kind, near, reach, &at) <= 0 || !settle (ink, kind, &at) || point_distance (at, near) > reach)
    return false;
  *found = at;
  return true;
}

bool
ink_corner (const Ink *ink, Point near, double reach, Point *found)
{
  const double reduced = ink_reduced (ink), within = fmin (reach / reduced, MOST_REACH);
  const Point middle = point_scale (near, 1 / reduced);
  Point at;

  if (!point_is_finite (near) || !(reach > 0)
      || (!find (ink, &RIDGES, middle, within, &at) && !find (ink, &EDGES, middle, within, &at)))
    return false;
  *found = point_scale (at, reduced);
  return true;
}
