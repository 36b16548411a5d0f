#include "plan/ink-corner.h"

#include <math.h>
#include "plan/ink-ridge.h"

/* Ink pixels: half of a window. */
enum { HALF_WINDOW = 7, STEP = 3, MOST_REACH = 90, PASSES = 6, MOST_REFUSED = 24, MOST_GAP = 3, WAYS = 96, LEAST_INK = 64 };
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

/* What is looked for, and what was found there already and is lettering. */
typedef struct { Point near; double reach, least; Point refused[MOST_REFUSED]; int refused_count; } Search;

static bool
is_refused (const Search *self, Point at)
{
  for (int i = 0; i < self->refused_count; i++)
    if (point_distance (self->refused[i], at) < HALF_WINDOW)
      return true;
  return false;
}

/* How far the print goes on from a place that way, a gap of a few pixels not counted. */
static double
run_length (const Ink *ink, Point from, Point way, double most)
{
  double last = HALF_WINDOW;

  for (double along = HALF_WINDOW; along <= most && along - last <= MOST_GAP; along++)
    for (int across = -1; across <= 1; across++)
      {
        const Point at = { from.x + along * way.x - across * way.y, from.y + along * way.y + across * way.x };

        if (at.x >= 0 && at.y >= 0 && at.x < ink_width (ink) && at.y < ink_height (ink) && ink_at (ink, at) >= LEAST_INK)
          last = along;
      }
  return last;
}

/* Whether a line that long ends or crosses there: a stroke of a letter is shorter. */
static bool
is_of_a_line (const Ink *ink, Point at, double least)
{
  if (least <= HALF_WINDOW)
    return true;
  for (int i = 0; i < WAYS; i++)
    if (run_length (ink, at, (Point) { cos (2 * M_PI * i / WAYS), sin (2 * M_PI * i / WAYS) }, least + MOST_GAP) >= least)
      return true;
  return false;
}

/* The best window about `near`; further ones count less. */
static double
best_window (const Ink *ink, const Kind *kind, const Search *search, Point *best)
{
  const Point near = search->near;
  const double reach = search->reach;
  double most = 0;

  for (double y = -reach; y <= reach; y += STEP)
    for (double x = -reach; x <= reach; x += STEP)
      {
        const Point at = { near.x + x, near.y + y };
        const double off = hypot (x, y) / reach;
        const Window sum = off <= 1 && !is_refused (search, at) ? window_at (ink, kind, at) : (Window) { 0 };
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
find (const Ink *ink, const Kind *kind, Search search, Point *found)
{
  Point at, window;

  for (search.refused_count = 0; search.refused_count < MOST_REFUSED; search.refused[search.refused_count++] = window)
    {
      if (best_window (ink, kind, &search, &window) <= 0)
        return false;
      at = window;
      if (!settle (ink, kind, &at) || point_distance (at, search.near) > search.reach)
        {
          if (search.least <= HALF_WINDOW)
            return false;
        }
      else if (is_of_a_line (ink, at, search.least))
        {
          *found = at;
          return true;
        }
    }
  return false;
}

bool
ink_line_corner (const Ink *ink, Point near, double reach, double least, Point *found)
{
  const double reduced = ink_reduced (ink), within = fmin (reach / reduced, MOST_REACH);
  const Search search = { .near = point_scale (near, 1 / reduced), .reach = within, .least = least / reduced };
  Point at;

  if (!point_is_finite (near) || !(reach > 0) || (!find (ink, &RIDGES, search, &at) && !find (ink, &EDGES, search, &at)))
    return false;
  *found = point_scale (at, reduced);
  return true;
}

bool
ink_corner (const Ink *ink, Point near, double reach, Point *found)
{
  return ink_line_corner (ink, near, reach, 0, found);
}
