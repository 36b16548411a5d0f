#include "geometry/stretch.h"

/* Nearer to an end than this a turn is smaller than rounding: (1e-8)² of the run. */
static const double TURN_FROM_END = 1e-8;

static size_t
keep_inside (double first, double second, double t[2])
{
  const double least = fmin (first, second), greatest = fmax (first, second);
  size_t count = 0;

  if (least > TURN_FROM_END && least < 1 - TURN_FROM_END)
    t[count++] = least;
  if (greatest > TURN_FROM_END && greatest < 1 - TURN_FROM_END && greatest > least)
    t[count++] = greatest;
  return count;
}

/* Where c1 + 2 c2 t + 3 c3 t² changes its sign. */
static size_t
cubic_turns (double c1, double c2, double c3, double t[2])
{
  const double discriminant = c2 * c2 - 3 * c3 * c1;

  if (!(discriminant > 0))
    return 0;
  const double q = -(c2 + copysign (sqrt (discriminant), c2));
  return keep_inside (c3 != 0 ? q / (3 * c3) : -1, q != 0 ? c1 / q : -1, t);
}

/* Where an arc passes the angle `at` or the one opposite. */
static size_t
arc_turns (const Stretch *self, double at, double t[2])
{
  double found[2];

  for (size_t i = 0; i < 2; i++)
    {
      double ahead = remainder (at + (double) i * M_PI - self->begin, 2 * M_PI);

      if (ahead * self->sweep < 0)
        ahead += copysign (2 * M_PI, self->sweep);
      found[i] = ahead / self->sweep;
    }
  return keep_inside (found[0], found[1], t);
}

size_t
stretch_y_turns (const Stretch *self, double t[2])
{
  if (self->kind == SEGMENT_LINE)
    return 0;
  if (self->kind == SEGMENT_ARC)
    return arc_turns (self, M_PI / 2, t);
  return cubic_turns (self->power[1].y, self->power[2].y, self->power[3].y, t);
}

size_t
stretch_x_turns (const Stretch *self, double t[2])
{
  if (self->kind == SEGMENT_LINE)
    return 0;
  if (self->kind == SEGMENT_ARC)
    return arc_turns (self, 0, t);
  return cubic_turns (self->power[1].x, self->power[2].x, self->power[3].x, t);
}

Box
stretch_bounds (const Stretch *self, double t0, double t1)
{
  Box box = box_around (stretch_at (self, t0), stretch_at (self, t1));
  double turns[4];
  size_t count = stretch_y_turns (self, turns);

  count += stretch_x_turns (self, turns + count);
  for (size_t i = 0; i < count; i++)
    if (turns[i] > t0 && turns[i] < t1)
      {
        const Point place = stretch_at (self, turns[i]);
        box = box_join (box, box_around (place, place));
      }
  return box;
}

/* A guess from how far up the station stands: a square root where y turns at an end of the run, else in proportion. */
static double
guess_fraction (double up, bool turns_low, bool turns_high)
{
  if (turns_low && turns_high)
    return acos (1 - 2 * up) / M_PI;
  if (turns_low)
    return sqrt (up);
  if (turns_high)
    return 1 - sqrt (1 - up);
  return up;
}

/* Newton's steps inside a bracket that shrinks with each; a step that leaves it is replaced by halving. */
static double
curve_t_at_station (const Stretch *self, double low, double high, double y)
{
  const Point *power = self->power;
  const double y_low = stretch_at (self, low).y, y_high = stretch_at (self, high).y, rise = y_high - y_low;
  const double flat = 0.3 * fabs (rise), length = fabs (high - low);
  const bool turns_low = fabs (stretch_slope (self, low).y) * length < flat;
  const bool turns_high = fabs (stretch_slope (self, high).y) * length < flat;
  double t = low + (high - low) * guess_fraction (fmin (fmax ((y - y_low) / rise, 0), 1), turns_low, turns_high);

  for (int i = 0; i < 80; i++)
    {
      const double miss = power[0].y + t * (power[1].y + t * (power[2].y + t * power[3].y)) - y;
      const double slope = power[1].y + t * (2 * power[2].y + t * 3 * power[3].y);
      double next = t - miss / slope;

      if (miss > 0)
        high = t;
      else
        low = t;
      if (!((next - low) * (next - high) <= 0))
        next = (low + high) / 2;
      const double step = fabs (next - t);
      t = next;
      if (step < 1e-11)
        break;
    }
  return t;
}

static double
arc_t_at_station (const Stretch *self, double low, double high, double y)
{
  const double middle = self->begin + self->sweep * (low + high) / 2;
  const double rise = asin (fmin (fmax ((y - self->centre.y) / self->ry, -1), 1));
  const double angle = cos (middle) >= 0 ? rise : M_PI - rise;

  return (remainder (angle - middle, 2 * M_PI) + middle - self->begin) / self->sweep;
}

double
stretch_t_at_station (const Stretch *self, double low, double high, double y)
{
  double t;

  if (self->kind == SEGMENT_LINE)
    t = (y - self->from.y) / self->power[1].y;
  else if (self->kind == SEGMENT_ARC)
    t = arc_t_at_station (self, low, high, y);
  else
    t = curve_t_at_station (self, low, high, y);
  return fmin (fmax (t, fmin (low, high)), fmax (low, high));
}
