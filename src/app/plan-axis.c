#include "app/plan-axis.h"
#include <math.h>
#include "app/plan-edit.h"

/* How far off a click is, px of the screen, and an end of a printed line, px of the picture. */
static const double HAND_PX = 4, PRINT_PX = 1;
/* Radians: an axis that may be turned by more than this is none. */
static const double MOST_DOUBT = 5 * G_PI / 180;

/* How far the way from one end to the other may be turned, radians: both ends are off, each its own way. */
static double
doubt_of (double off, double length)
{
  return length > 0 ? atan2 (off * G_SQRT2, length) : G_PI;
}

static bool
is_squared (const Plan *plan)
{
  return plan->has_level || plan->has_corners;
}

/* The after end where the axis runs along the nearer of the paper's own two ways; as it is where it runs neither. */
static Point
straightened (const Mapping *mapping, Point fore, Point aft, double doubt)
{
  const Point from = mapping_to_mm (mapping, fore), way = point_sub (mapping_to_mm (mapping, aft), from);
  const double angle = atan2 (way.y, way.x), nearest = round (angle / G_PI_2) * G_PI_2, length = hypot (way.x, way.y);
  const Point along = { round (cos (nearest)), round (sin (nearest)) };

  if (!(fabs (angle - nearest) <= doubt))
    return aft;
  return mapping_to_px (mapping, point_add (from, point_scale (along, length)));
}

bool
plan_axis_settle (TrammelSheetCanvas *sheet, const ViewAxis *found, Point *fore, Point *aft)
{
  const double px_per_mm = plan_edit_px_per_mm (sheet, point_mix (*fore, *aft, 0.5));
  const double px = point_distance (*fore, *aft), screen = px / px_per_mm * trammel_sheet_canvas_view (sheet)->scale;
  const double doubt = found != NULL ? doubt_of (PRINT_PX, px) : doubt_of (HAND_PX, screen);
  Mapping mapping;

  if (doubt > MOST_DOUBT)
    return false;
  if (found != NULL) {
    *fore = found->fore;
    *aft = found->aft;
  }
  if (is_squared (plan_edit_plan (sheet)) && trammel_plan_store_mapping (trammel_sheet_canvas_plan_store (sheet), &mapping, NULL, NULL))
    *aft = straightened (&mapping, *fore, *aft, doubt);
  return true;
}
