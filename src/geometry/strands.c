#include "geometry/strands.h"

/* Of the size: the first circle, how much wider each next one is, and how far apart on it two strands are told apart. */
static const double FIRST_CIRCLE = 1e-6;
static const double WIDER = 2;
static const double CLEAR = 1e-9;

/* Strands that lie upon one another for more segments than these are not followed to where they part. */
enum { FARTHEST_WALK = 64 };

typedef struct {
  const Outline *outline;
  Point centre;
  double radius;
} Circle;

static bool
is_outside (const Circle *circle, Point place)
{
  const Point out = point_sub (place, circle->centre);

  return point_dot (out, out) >= circle->radius * circle->radius;
}

/* Where the stretch leaves the circle between t (inside) and end (outside). */
static Point
place_of_leaving (const Circle *circle, const Stretch *stretch, double t, double end)
{
  for (int i = 0; i < 44; i++)
    {
      const double middle = (t + end) / 2;

      if (is_outside (circle, stretch_at (stretch, middle)))
        end = middle;
      else
        t = middle;
    }
  return stretch_at (stretch, end);
}

static bool
leaves_between (const Circle *circle, const Stretch *stretch, double t, double end, Point *place)
{
  const double half = (t + end) / 2;

  if (is_outside (circle, stretch_at (stretch, half)))
    end = half;
  else if (!is_outside (circle, stretch_at (stretch, end)))
    return false;
  *place = place_of_leaving (circle, stretch, t, end);
  return true;
}

/* Walks from one station towards the other, onwards or backwards, until it is out of the circle. False when the walk comes to
 * the other station first (the two are one strand with a loop too small for the circle) or nowhere. */
static bool
walk_out (const Circle *circle, Station from, Station to, bool onwards, Point *place)
{
  const size_t stretches = circle->outline->count + 1;
  double t = from.t;

  for (size_t i = from.stretch, walked = 0; walked < FARTHEST_WALK; walked++)
    {
      const bool last = i == to.stretch && (onwards ? to.t >= t : to.t <= t);
      const double end = last ? to.t : onwards ? 1 : 0;

      if (leaves_between (circle, &circle->outline->stretches[i], t, end, place))
        return true;
      if (last)
        return false;
      i = (onwards ? i + 1 : i + stretches - 1) % stretches;
      t = onwards ? 0 : 1;
    }
  return false;
}

static double
angle_from (Point centre, Point place, double zero)
{
  const double angle = remainder (atan2 (place.y - centre.y, place.x - centre.x) - zero, 2 * M_PI);

  return angle < 0 ? angle + 2 * M_PI : angle;
}

typedef enum { SIDES_UNCLEAR, SIDES_KEPT, SIDES_CHANGED } Sides;

/* a and b: where each strand comes into the circle and where it leaves. */
static Sides
sides_on_circle (const Circle *circle, const Point a[2], const Point b[2], double size)
{
  const double zero = angle_from (circle->centre, a[0], 0), other = angle_from (circle->centre, a[1], zero);
  const double margin = CLEAR * size / circle->radius;
  bool between[2];

  for (int i = 0; i < 2; i++)
    {
      const double angle = angle_from (circle->centre, b[i], zero);

      if (fmin (angle, 2 * M_PI - angle) < margin || fabs (remainder (angle - other, 2 * M_PI)) < margin)
        return SIDES_UNCLEAR;
      between[i] = angle < other;
    }
  return between[0] != between[1] ? SIDES_CHANGED : SIDES_KEPT;
}

bool
strands_change_sides (const Outline *outline, Station a, Station b, double size, double *settled)
{
  Circle circle = { .outline = outline, .centre = stretch_at (&outline->stretches[a.stretch], a.t) };

  for (circle.radius = FIRST_CIRCLE * size; circle.radius < size; circle.radius *= WIDER)
    {
      Point ends_a[2], ends_b[2];
      Sides sides;

      *settled = circle.radius;
      if (!walk_out (&circle, a, b, false, &ends_a[0]) || !walk_out (&circle, a, b, true, &ends_a[1])
          || !walk_out (&circle, b, a, false, &ends_b[0]) || !walk_out (&circle, b, a, true, &ends_b[1]))
        return false;
      sides = sides_on_circle (&circle, ends_a, ends_b, size);
      if (sides != SIDES_UNCLEAR)
        return sides == SIDES_CHANGED;
    }
  return false;
}
