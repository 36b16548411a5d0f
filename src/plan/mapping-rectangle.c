#include "plan/mapping-private.h"
#include <string.h>

enum { UNKNOWNS = 8 };

/* The triangle of three corners, twice its area. */
static double
corner_turn (const Point corners[4], int i)
{
  const Point to = point_sub (corners[(i + 1) % 4], corners[i]), on = point_sub (corners[(i + 2) % 4], corners[(i + 1) % 4]);

  return cross (to, on);
}

CoreStatus
corners_check (const Point corners[4])
{
  double round = 0;
  int right = 0;

  for (int i = 0; i < 4; i++)
    round += point_distance (corners[i], corners[(i + 1) % 4]);
  for (int i = 0; i < 4; i++)
    {
      const double turn = corner_turn (corners, i);

      if (!(fabs (turn) > AS_GOOD_AS_NOTHING * round * round))
        return CORE_SINGULAR;
      right += turn > 0;
    }
  if (right == 2)       /* turning both ways: two sides cross */
    return CORE_CROSSES_ITSELF;
  return right == 0 || right == 4 ? CORE_OK : CORE_SINGULAR;
}

/* How much of a side's way is along the picture's horizontal, 0 to 1. */
static double
side_level (const Point corners[4], int i)
{
  const Point way = point_sub (corners[(i + 1) % 4], corners[i % 4]);

  return fabs (way.x) / hypot (way.x, way.y);
}

int
known_rectangle_widths (const Point corners[4])
{
  return side_level (corners, 0) + side_level (corners, 2) >= side_level (corners, 1) + side_level (corners, 3) ? 0 : 1;
}

/* The corners in the order upper left, upper right, lower right, lower left. */
static void
corners_sort (const Point corners[4], Point sorted[4])
{
  const int wide = known_rectangle_widths (corners);
  const Point top = corners[wide], next = corners[wide + 1], far = corners[(wide + 2) % 4], last = corners[(wide + 3) % 4];
  const bool right = next.x + far.x > top.x + last.x;
  const Point row[2] = { right ? top : next, right ? next : top }, other[2] = { right ? last : far, right ? far : last };
  const bool down = cross (point_sub (row[1], row[0]), point_sub (other[0], row[0])) > 0;

  sorted[0] = down ? row[0] : other[0];
  sorted[1] = down ? row[1] : other[1];
  sorted[2] = down ? other[1] : row[1];
  sorted[3] = down ? other[0] : row[0];
}

/* Moves and scales the places so that their middle is 0 and their mean distance from it √2 (Hartley and Zisserman, section 4.4.4). */
typedef struct { Point middle; double scale; } Normalised;

static Normalised
normalise (Point places[4])
{
  Normalised by = { { 0, 0 }, 0 };
  double distance = 0;

  for (int i = 0; i < 4; i++)
    by.middle = point_add (by.middle, point_scale (places[i], 0.25));
  for (int i = 0; i < 4; i++)
    distance += point_distance (places[i], by.middle) / 4;
  by.scale = sqrt (2) / distance;
  for (int i = 0; i < 4; i++)
    places[i] = point_scale (point_sub (places[i], by.middle), by.scale);
  return by;
}

/* Gauss's elimination with row exchange; false without a single solution. */
static bool
solve (double rows[UNKNOWNS][UNKNOWNS + 1], double solution[UNKNOWNS])
{
  for (int column = 0; column < UNKNOWNS; column++)
    {
      int best = column;

      for (int row = column + 1; row < UNKNOWNS; row++)
        if (fabs (rows[row][column]) > fabs (rows[best][column]))
          best = row;
      if (!(fabs (rows[best][column]) > 1e-13))
        return false;
      for (int i = 0; best != column && i <= UNKNOWNS; i++)
        {
          const double held = rows[best][i];

          rows[best][i] = rows[column][i];
          rows[column][i] = held;
        }
      for (int row = column + 1; row < UNKNOWNS; row++)
        for (int i = UNKNOWNS; i >= column; i--)
          rows[row][i] -= rows[column][i] * rows[row][column] / rows[column][column];
    }
  for (int row = UNKNOWNS - 1; row >= 0; row--)
    {
      solution[row] = rows[row][UNKNOWNS];
      for (int i = row + 1; i < UNKNOWNS; i++)
        solution[row] -= rows[row][i] * solution[i];
      solution[row] /= rows[row][row];
    }
  return true;
}

/* The direct linear transform of four pairs; h[8] is 1 between normalised places, whose middle is never at infinity. */
static bool
transform (const Point from[4], const Point to[4], double h[9])
{
  double rows[UNKNOWNS][UNKNOWNS + 1];

  for (int i = 0; i < 4; i++)
    {
      const Point a = from[i], b = to[i];
      const double x[] = { a.x, a.y, 1, 0, 0, 0, -b.x * a.x, -b.x * a.y, b.x };
      const double y[] = { 0, 0, 0, a.x, a.y, 1, -b.y * a.x, -b.y * a.y, b.y };

      memcpy (rows[2 * i], x, sizeof x);
      memcpy (rows[2 * i + 1], y, sizeof y);
    }
  h[8] = 1;
  return solve (rows, h);
}

/* h between normalised places becomes one between the places themselves. */
static void
undo_normalising (double h[9], Normalised from, Normalised to)
{
  for (int row = 0; row < 3; row++)
    {
      h[3 * row] *= from.scale, h[3 * row + 1] *= from.scale;
      h[3 * row + 2] -= h[3 * row] * from.middle.x + h[3 * row + 1] * from.middle.y;
    }
  for (int i = 0; i < 3; i++)
    {
      h[i] = h[i] / to.scale + to.middle.x * h[6 + i];
      h[3 + i] = h[3 + i] / to.scale + to.middle.y * h[6 + i];
    }
}

/* What clicks on the corners explain: a width is the mean of two sides. */
static double
click_percent (const Point corners[4])
{
  const double wide = point_distance (corners[0], corners[1]) + point_distance (corners[3], corners[2]);
  const double high = point_distance (corners[0], corners[3]) + point_distance (corners[1], corners[2]);

  return 100 * 2 * LENGTH_SIGMA_PX * sqrt (2) / fmin (wide, high);
}

CoreStatus
mapping_from_rectangle (const Knowns *knowns, Mapping *mapping, MappingMisfit *misfit)
{
  const KnownRectangle *rectangle = knowns->rectangle;
  Point paper[4] = { { 0, 0 }, { rectangle->width, 0 }, { rectangle->width, rectangle->height }, { 0, rectangle->height } };
  Point corners[4], straight[4];
  Normalised from, to;
  CoreStatus status;

  for (int i = 0; i < 4; i++)
    straight[i] = mapping_undo_lens (mapping, rectangle->corners[i]);
  if ((status = corners_check (straight)))
    return status;
  corners_sort (straight, corners);
  misfit->rectangle_click_percent = click_percent (corners);
  from = normalise (corners);
  to = normalise (paper);
  if (!transform (corners, paper, mapping->h))
    return CORE_SINGULAR;
  undo_normalising (mapping->h, from, to);
  misfit->maker = MADE_BY_RECTANGLE;
  return CORE_OK;
}
