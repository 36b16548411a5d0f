#include "plan/axis-frame.h"

/* Where y grows: along turned so that nose at the top has starboard on the right. */
static Point
beside (Point along, double side)
{
  return (Point) { along.y * side, -along.x * side };
}

double
axis_side (const Mapping *mapping, ViewAxis axis, Point px)
{
  const Point fore = mapping_to_mm (mapping, axis.fore), along = point_sub (mapping_to_mm (mapping, axis.aft), fore);
  const Point starboard = beside (along, 1), way = point_sub (mapping_to_mm (mapping, px), fore);

  return starboard.x * way.x + starboard.y * way.y < 0 ? -1 : 1;
}

CoreStatus
axis_frame_on (const Mapping *mapping, ViewAxis axis, double side, AxisFrame *frame)
{
  const Point fore = mapping_to_mm (mapping, axis.fore), way = point_sub (mapping_to_mm (mapping, axis.aft), fore);
  const double length = hypot (way.x, way.y);

  if (!isfinite (length))
    return CORE_NOT_FINITE;
  if (!(length > 0))
    return CORE_SINGULAR;
  *frame = (AxisFrame) { .fore = fore, .along = point_scale (way, 1 / length), .side = side < 0 ? -1 : 1 };
  return CORE_OK;
}

Point
axis_frame_own (const AxisFrame *frame, Point paper)
{
  const Point way = point_sub (paper, frame->fore), y = beside (frame->along, frame->side);

  return (Point) { way.x * frame->along.x + way.y * frame->along.y, way.x * y.x + way.y * y.y };
}

Point
axis_frame_paper (const AxisFrame *frame, Point own)
{
  return point_add (frame->fore, point_add (point_scale (frame->along, own.x), point_scale (beside (frame->along, frame->side), own.y)));
}

Point
axis_carry (const AxisCarry *carry, Point mm)
{
  const Point px = mapping_to_px (&carry->from, axis_frame_paper (&carry->frame_from, point_sub (mm, carry->shift_from)));

  return point_add (axis_frame_own (&carry->frame_to, mapping_to_mm (&carry->to, px)), carry->shift_to);
}

static bool
same_place (Point one, Point other)
{
  return (one.x == other.x || (isnan (one.x) && isnan (other.x))) && (one.y == other.y || (isnan (one.y) && isnan (other.y)));
}

bool
axis_frame_equal (const AxisFrame *one, const AxisFrame *other)
{
  return same_place (one->fore, other->fore) && same_place (one->along, other->along) && one->side == other->side;
}
