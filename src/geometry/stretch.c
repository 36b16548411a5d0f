#include "geometry/stretch.h"

/* Ends this near to their ellipse, in parts of its semi-axes, leave it as it was given: the rest is rounding. */
static const double ON_THE_ELLIPSE = 1e-12;
/* Sweeps this near to half a turn are half a turn exactly: the side is then chosen, not left to rounding. */
static const double HALF_TURN_SLACK = 1e-9;

static Point
in_unit_circle (Point place, const Segment *arc)
{
  return (Point) { (place.x - arc->centre.x) / arc->rx, (place.y - arc->centre.y) / arc->ry };
}

double
stretch_off_ellipse (Point place, const Segment *arc)
{
  const Point unit = in_unit_circle (place, arc);
  const double gradient = 2 * hypot (unit.x / arc->rx, unit.y / arc->ry);

  return gradient > 0 ? fabs (point_dot (unit, unit) - 1) / gradient : INFINITY;
}

/* The shorter way; half-way round the side of greater y, or of greater x where both sides are as high. */
static double
sweep_between (double begin, double end)
{
  double sweep = remainder (end - begin, 2 * M_PI);

  if (fabs (sweep) > M_PI - HALF_TURN_SLACK)
    {
      const double middle = begin + sweep / 2;
      const double side = fabs (sin (middle)) > HALF_TURN_SLACK ? sin (middle) : cos (middle);

      if (side < 0)
        sweep -= copysign (2 * M_PI, sweep);
    }
  return sweep;
}

static void
make_line (Stretch *self)
{
  self->kind = SEGMENT_LINE;
  self->power[0] = self->from;
  self->power[1] = point_sub (self->segment.to, self->from);
}

static void
make_curve (Stretch *self)
{
  const Point a = self->from, b = self->segment.control1, c = self->segment.control2, d = self->segment.to;
  const Point ab = point_sub (b, a), bc = point_sub (c, b), cd = point_sub (d, c);

  self->power[0] = a;
  self->power[1] = point_scale (ab, 3);
  self->power[2] = point_scale (point_sub (bc, ab), 3);
  self->power[3] = point_add (point_sub (ab, bc), point_sub (cd, bc));
}

/* In the unit circle's plane one turn-and-stretch carries the two directions to the two ends; it makes a circle of the
 * circle, so that the ellipse stays parallel to the axes. */
static void
fit_ellipse_to_ends (Stretch *self, Point unit_from, Point unit_to)
{
  const double end = self->begin + self->sweep;
  const Point circle_from = { cos (self->begin), sin (self->begin) };
  const Point circle_chord = point_sub ((Point) { cos (end), sin (end) }, circle_from);
  const Point chord = point_sub (unit_to, unit_from);
  const double square = point_dot (circle_chord, circle_chord);
  const Point turn = { point_dot (circle_chord, chord) / square, point_cross (circle_chord, chord) / square };
  const Point shift = { unit_from.x - (turn.x * circle_from.x - turn.y * circle_from.y),
                        unit_from.y - (turn.x * circle_from.y + turn.y * circle_from.x) };
  const double growth = point_length (turn);

  self->centre.x += shift.x * self->rx;
  self->centre.y += shift.y * self->ry;
  self->rx *= growth;
  self->ry *= growth;
  self->begin += atan2 (turn.y, turn.x);
}

static void
make_arc (Stretch *self)
{
  const Point unit_from = in_unit_circle (self->from, &self->segment);
  const Point unit_to = in_unit_circle (self->segment.to, &self->segment);

  self->centre = self->segment.centre;
  self->rx = self->segment.rx;
  self->ry = self->segment.ry;
  self->begin = atan2 (unit_from.y, unit_from.x);
  self->sweep = sweep_between (self->begin, atan2 (unit_to.y, unit_to.x));
  if (fabs (self->sweep) < ON_THE_ELLIPSE)
    make_line (self);
  else if (fmax (fabs (point_length (unit_from) - 1), fabs (point_length (unit_to) - 1)) > ON_THE_ELLIPSE)
    fit_ellipse_to_ends (self, unit_from, unit_to);
}

Stretch
stretch_make (Point from, const Segment *segment)
{
  Stretch self = { .from = from, .segment = *segment, .kind = segment->kind };

  switch (segment->kind)
    {
    case SEGMENT_LINE:  make_line (&self);  break;
    case SEGMENT_CURVE: make_curve (&self); break;
    case SEGMENT_ARC:   make_arc (&self);   break;
    }
  return self;
}

static Point
power_at (const Point power[4], double t)
{
  return (Point) { power[0].x + t * (power[1].x + t * (power[2].x + t * power[3].x)),
                   power[0].y + t * (power[1].y + t * (power[2].y + t * power[3].y)) };
}

Point
stretch_at (const Stretch *self, double t)
{
  if (t <= 0)
    return self->from;
  if (t >= 1)
    return self->segment.to;
  if (self->kind == SEGMENT_LINE)
    return point_mix (self->from, self->segment.to, t);
  if (self->kind == SEGMENT_CURVE)
    return power_at (self->power, t);
  const double angle = self->begin + t * self->sweep;
  return (Point) { self->centre.x + self->rx * cos (angle), self->centre.y + self->ry * sin (angle) };
}

Point
stretch_slope (const Stretch *self, double t)
{
  if (self->kind == SEGMENT_ARC)
    {
      const double angle = self->begin + t * self->sweep;
      return (Point) { -self->rx * sin (angle) * self->sweep, self->ry * cos (angle) * self->sweep };
    }
  return (Point) { self->power[1].x + t * (2 * self->power[2].x + t * 3 * self->power[3].x),
                   self->power[1].y + t * (2 * self->power[2].y + t * 3 * self->power[3].y) };
}

static Point
unit_towards (Point from, const Point places[3])
{
  for (size_t i = 0; i < 3; i++)
    {
      const Point along = point_sub (places[i], from);
      const double length = point_length (along);

      if (length > 0)
        return point_scale (along, 1 / length);
    }
  return (Point) { 0, 0 };
}

Point
stretch_leaves (const Stretch *self)
{
  const Segment *segment = &self->segment;
  const bool curve = self->kind == SEGMENT_CURVE;
  const Point ahead[3] = { curve ? segment->control1 : segment->to, curve ? segment->control2 : segment->to, segment->to };

  if (self->kind == SEGMENT_ARC)
    return unit_towards ((Point) { 0, 0 }, (Point[3]) { stretch_slope (self, 0) });
  return unit_towards (self->from, ahead);
}

Point
stretch_arrives (const Stretch *self)
{
  const Segment *segment = &self->segment;
  const bool curve = self->kind == SEGMENT_CURVE;
  const Point behind[3] = { curve ? segment->control2 : self->from, curve ? segment->control1 : self->from, self->from };

  if (self->kind == SEGMENT_ARC)
    return unit_towards ((Point) { 0, 0 }, (Point[3]) { stretch_slope (self, 1) });
  return point_scale (unit_towards (segment->to, behind), -1);
}

double
stretch_sagitta (const Stretch *self, double t0, double t1)
{
  const Point *power = self->power;
  const double step = t1 - t0;
  double bend = 0;

  if (self->kind == SEGMENT_ARC)
    bend = fmax (self->rx, self->ry) * self->sweep * self->sweep;
  else if (self->kind == SEGMENT_CURVE)
    bend = fmax (hypot (2 * power[2].x + 6 * power[3].x * t0, 2 * power[2].y + 6 * power[3].y * t0),
                 hypot (2 * power[2].x + 6 * power[3].x * t1, 2 * power[2].y + 6 * power[3].y * t1));
  return bend * step * step / 8;
}

Segment
stretch_as_curve (const Stretch *self, double t0, double t1)
{
  const Point from = stretch_at (self, t0), to = stretch_at (self, t1);
  const double angle = self->sweep * (t1 - t0);

  if (self->kind == SEGMENT_CURVE && t0 <= 0 && t1 >= 1)
    return self->segment;
  const double reach = self->kind == SEGMENT_ARC ? 4.0 / 3 * tan (angle / 4) / self->sweep : (t1 - t0) / 3;
  return segment_curve (point_add (from, point_scale (stretch_slope (self, t0), reach)),
                        point_sub (to, point_scale (stretch_slope (self, t1), reach)), to);
}

double
stretch_twice_area (const Stretch *self, Point origin)
{
  const Point a = point_sub (self->from, origin), d = point_sub (self->segment.to, origin);

  if (self->kind == SEGMENT_LINE)
    return point_cross (a, d);
  if (self->kind == SEGMENT_ARC)
    return self->rx * self->ry * self->sweep + point_cross (point_sub (self->centre, origin), point_sub (d, a));
  const Point b = point_sub (self->segment.control1, origin), c = point_sub (self->segment.control2, origin);
  return 0.3 * (2 * point_cross (a, b) + point_cross (a, c) + point_cross (b, c) + point_cross (b, d) + 2 * point_cross (c, d))
         + 0.1 * point_cross (a, d);
}
