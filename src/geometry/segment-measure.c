#include "geometry/quadrature.h"
#include "geometry/segment.h"
#include "geometry/stretch.h"

enum { SAMPLES = 16 };

/* Half the change of the squared distance from `point` with t: its sign tells on which side of a nearest place t lies. */
static double
departure (const Stretch *stretch, Point point, double t)
{
  return point_dot (point_sub (stretch_at (stretch, t), point), stretch_slope (stretch, t));
}

/* The nearest place between low and high by the secant rule inside a shrinking bracket. */
static double
nearest_between (const Stretch *stretch, Point point, double low, double high)
{
  double at_low = departure (stretch, point, low), at_high = departure (stretch, point, high);

  if (at_low >= 0)
    return low;
  if (at_high <= 0)
    return high;
  for (int i = 0; i < 100 && high - low > 1e-15; i++)
    {
      const double secant = (low * at_high - high * at_low) / (at_high - at_low);
      const double t = i % 3 == 2 || !(secant > low && secant < high) ? (low + high) / 2 : secant;
      const double at = departure (stretch, point, t);

      if (at == 0)
        return t;
      if (at < 0)
        {
          low = t;
          at_low = at;
        }
      else
        {
          high = t;
          at_high = at;
        }
    }
  return (low + high) / 2;
}

static double
line_nearest (const Stretch *stretch, Point point)
{
  const Point along = stretch->power[1];
  const double square = point_dot (along, along);

  if (!(square > 0))
    return 0;
  return fmin (fmax (point_dot (point_sub (point, stretch->from), along) / square, 0), 1);
}

static double
bent_nearest (const Stretch *stretch, Point point)
{
  double distance[SAMPLES + 1], best = INFINITY, best_t = 0;

  for (int i = 0; i <= SAMPLES; i++)
    distance[i] = point_distance (stretch_at (stretch, (double) i / SAMPLES), point);
  for (int i = 0; i <= SAMPLES; i++)
    {
      const int before = i > 0 ? i - 1 : 0, after = i < SAMPLES ? i + 1 : SAMPLES;

      if (distance[i] > distance[before] || distance[i] > distance[after])
        continue;
      const double t = nearest_between (stretch, point, (double) before / SAMPLES, (double) after / SAMPLES);
      const double reached = point_distance (stretch_at (stretch, t), point);
      if (reached < best)
        {
          best = reached;
          best_t = t;
        }
    }
  return best_t;
}

double
segment_nearest (Point from, const Segment *segment, Point point, double *distance)
{
  const Stretch stretch = stretch_make (from, segment);
  const double t = stretch.kind == SEGMENT_LINE ? line_nearest (&stretch, point) : bent_nearest (&stretch, point);

  if (distance)
    *distance = point_distance (stretch_at (&stretch, t), point);
  return t;
}

static void
pace (double t, const void *stretch, double values[])
{
  values[0] = point_length (stretch_slope (stretch, t));
}

double
segment_length (Point from, const Segment *segment)
{
  const Stretch stretch = stretch_make (from, segment);
  const Box box = stretch_bounds (&stretch, 0, 1);
  const double size = point_distance (box.min, box.max);
  const Quadrature quadrature = { .values = pace, .data = &stretch, .count = 1, .accuracy = { 1e-10 * size } };
  double length = 0;

  if (stretch.kind == SEGMENT_LINE)
    return point_distance (from, segment->to);
  quadrature_add (&quadrature, 0, 1, &length);
  return length;
}
