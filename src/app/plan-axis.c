#include "app/plan-axis.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "app/plan-edit.h"

/* How far off a click is, px of the screen, and an end of a printed line, px of the picture. */
static const double HAND_PX = 4, PRINT_PX = 2;
/* Radians: an axis that may be turned by more than this is none. */
static const double MOST_DOUBT = 5 * G_PI / 180;
/* Degrees: what is turned by more is drawn so, and what is turned by less is worth no word. */
static const double DRAWN_SO_DEG = 2, WORTH_A_WORD_DEG = 0.25;

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
straightened (const Mapping *mapping, Point fore, Point aft, double doubt, PlanAxisOff *off)
{
  const Point from = mapping_to_mm (mapping, fore), way = point_sub (mapping_to_mm (mapping, aft), from);
  const double angle = atan2 (way.y, way.x), nearest = round (angle / G_PI_2) * G_PI_2, length = hypot (way.x, way.y);
  const double turned = fabs (angle - nearest);
  const Point along = { round (cos (nearest)), round (sin (nearest)) };

  if (turned * 180 / G_PI <= DRAWN_SO_DEG || turned <= doubt)
    *off = (PlanAxisOff) { .off_deg = turned * 180 / G_PI, .taken = turned <= doubt };
  if (!(turned <= doubt))
    return aft;
  return mapping_to_px (mapping, point_add (from, point_scale (along, length)));
}

bool
plan_axis_settle (TrammelSheetCanvas *sheet, const ViewAxis *found, Point *fore, Point *aft, PlanAxisOff *off)
{
  const double px_per_mm = plan_edit_px_per_mm (sheet, point_mix (*fore, *aft, 0.5));
  const double px = point_distance (*fore, *aft), screen = px / px_per_mm * trammel_sheet_canvas_view (sheet)->scale;
  const double doubt = found != NULL ? doubt_of (PRINT_PX, px) : doubt_of (HAND_PX, screen);
  PlanAxisOff lies = { .off_deg = 0 };
  Mapping mapping;

  if (doubt > MOST_DOUBT)
    return false;
  if (found != NULL) {
    *fore = found->fore;
    *aft = found->aft;
  }
  if (is_squared (plan_edit_plan (sheet)) && trammel_plan_store_mapping (trammel_sheet_canvas_plan_store (sheet), &mapping, NULL, NULL))
    *aft = straightened (&mapping, *fore, *aft, doubt, &lies);
  if (off != NULL)
    *off = lies;
  return true;
}

char *
plan_axis_words (const PlanAxisOff *off)
{
  g_autofree char *angle = units_number (off->off_deg, 1);

  if (off->off_deg < WORTH_A_WORD_DEG)
    return NULL;
  if (off->taken)
    /* Translators: an angle in degrees. */
    return g_strdup_printf (_("As clicked the axis ran %s° off the squared sheet, as so short an axis may: it lies along the sheet now."),
                            angle);
  return g_strdup_printf (_("The axis runs %s° off the squared sheet, and turns the view: drag its ends if it was meant to run along it."),
                          angle);
}
