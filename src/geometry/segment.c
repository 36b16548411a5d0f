#include "geometry/segment.h"

#include "geometry/stretch.h"

Segment
segment_line (Point to)
{
  return (Segment) { .kind = SEGMENT_LINE, .to = to };
}

Segment
segment_curve (Point control1, Point control2, Point to)
{
  return (Segment) { .kind = SEGMENT_CURVE, .to = to, .control1 = control1, .control2 = control2 };
}

Segment
segment_arc (Point centre, double rx, double ry, Point to)
{
  return (Segment) { .kind = SEGMENT_ARC, .to = to, .centre = centre, .rx = rx, .ry = ry };
}

Point
segment_at (Point from, const Segment *segment, double t)
{
  const Stretch stretch = stretch_make (from, segment);

  return stretch_at (&stretch, t);
}

Point
segment_slope (Point from, const Segment *segment, double t)
{
  const Stretch stretch = stretch_make (from, segment);

  return stretch_slope (&stretch, t);
}

static void
curve_split (Point from, const Segment *curve, double t, Segment *first, Segment *second)
{
  const Point ab = point_mix (from, curve->control1, t), bc = point_mix (curve->control1, curve->control2, t);
  const Point cd = point_mix (curve->control2, curve->to, t);
  const Point abc = point_mix (ab, bc, t), bcd = point_mix (bc, cd, t);

  *first = segment_curve (ab, abc, point_mix (abc, bcd, t));
  *second = segment_curve (bcd, cd, curve->to);
}

void
segment_split (Point from, const Segment *segment, double t, Segment *first, Segment *second)
{
  const Stretch stretch = stretch_make (from, segment);
  const Point middle = stretch_at (&stretch, t), to = segment->to;

  if (segment->kind == SEGMENT_CURVE)
    {
      curve_split (from, &stretch.segment, t, first, second);
    }
  else if (stretch.kind == SEGMENT_ARC)
    {
      *first = segment_arc (stretch.centre, stretch.rx, stretch.ry, middle);
      *second = segment_arc (stretch.centre, stretch.rx, stretch.ry, to);
    }
  else
    {
      *first = stretch.segment;
      *second = stretch.segment;
      first->to = middle;
    }
}

Segment
segment_reversed (Point from, const Segment *segment)
{
  Segment reversed = *segment;

  reversed.to = from;
  reversed.control1 = segment->control2;
  reversed.control2 = segment->control1;
  return reversed;
}

Box
segment_bounds (Point from, const Segment *segment)
{
  const Stretch stretch = stretch_make (from, segment);

  return stretch_bounds (&stretch, 0, 1);
}

size_t
segment_y_turns (Point from, const Segment *segment, double t[2])
{
  const Stretch stretch = stretch_make (from, segment);

  return stretch_y_turns (&stretch, t);
}

size_t
segment_at_station (Point from, const Segment *segment, double y, double t[3])
{
  const Stretch stretch = stretch_make (from, segment);
  double ends[4] = { 0 };
  const size_t pieces = stretch_y_turns (&stretch, ends + 1) + 1;
  size_t count = 0;

  ends[pieces] = 1;
  for (size_t i = 0; i < pieces; i++)
    {
      const double y0 = stretch_at (&stretch, ends[i]).y, y1 = stretch_at (&stretch, ends[i + 1]).y;
      const bool rises = y1 > y0;
      double met;

      if (y < fmin (y0, y1) || y > fmax (y0, y1))
        continue;
      if (y == y0 || y == y1)
        met = y == y0 ? ends[i] : ends[i + 1];
      else
        met = stretch_t_at_station (&stretch, ends[rises ? i : i + 1], ends[rises ? i + 1 : i], y);
      if (count == 0 || met > t[count - 1])
        t[count++] = met;
      if (y == y0 && y == y1)       /* lies along the station: its two ends speak for it */
        t[count++] = ends[i + 1];
    }
  return count;
}

size_t
segment_as_curves (Point from, const Segment *segment, Segment curves[4])
{
  const Stretch stretch = stretch_make (from, segment);
  const double quarters = fabs (stretch.sweep) / (M_PI / 2);
  const size_t count = stretch.kind == SEGMENT_ARC ? (size_t) fmax (1, ceil (quarters - 1e-6)) : 1;

  if (stretch.kind != SEGMENT_ARC)
    curves[0] = stretch.kind == SEGMENT_CURVE ? *segment : segment_line (segment->to);
  else
    for (size_t i = 0; i < count; i++)
      curves[i] = stretch_as_curve (&stretch, (double) i / (double) count, (double) (i + 1) / (double) count);
  return count;
}
