#include "plan/sureness.h"

#include <math.h>

/* Less than this is no line. */
static const double SEEN = 0.05;
enum { FEWEST = 8 };

Sureness
sureness_of (const FollowedLine *line, size_t from, size_t to, double px_per_mm)
{
  const size_t reach = px_per_mm > 2 ? (size_t) round (px_per_mm) : 2;
  double squares = 0;
  size_t lost = 0, seen = 0;

  for (size_t i = from; i <= to; i++)
    {
      if (line->weights[i] < SEEN)
        {
          lost++;
          continue;
        }
      if (i < from + reach || i + reach > to)
        continue;
      const Point off = point_sub (line->places[i], point_mix (line->places[i - reach], line->places[i + reach], 0.5));
      squares += off.x * off.x + off.y * off.y;
      seen++;
    }
  /* A place less the mean of two others has three halves of one place's variance. */
  return (Sureness) { .lost = (double) lost / (double) (to - from + 1), .sigma = seen < FEWEST ? NAN : sqrt (squares / 1.5 / (double) seen) };
}

size_t
followed_line_nearest (const FollowedLine *line, Point place)
{
  size_t best = 0;

  for (size_t i = 1; i < line->count; i++)
    if (point_distance (line->places[i], place) < point_distance (line->places[best], place))
      best = i;
  return best;
}

double
followed_line_missed (const FollowedLine *line, size_t from, size_t to, Point place, double px_per_mm)
{
  const size_t reach = px_per_mm > 2 ? (size_t) round (px_per_mm) : 2;
  double nearest = NAN;
  size_t best = from;

  for (size_t i = from; i <= to; i++)
    if (line->weights[i] >= SEEN && !(point_distance (line->places[i], place) >= nearest))
      {
        nearest = point_distance (line->places[i], place);
        best = i;
      }
  if (isnan (nearest) || best < from + 4 * reach)
    return nearest;
  /* Its last millimetre bends to the place that it was asked for. */
  const Point last = line->places[best - reach], way = point_sub (last, line->places[best - 4 * reach]), off = point_sub (place, last);
  const double length = hypot (way.x, way.y);
  return length > 0 ? fmin (nearest, fabs (way.x * off.y - way.y * off.x) / length) : nearest;
}
