#include "document/plan-marks.h"
#include <math.h>

/* How far the two ratios of size may be apart: scanners stretch by less. Common practice, no source. */
static const double SAME_SHAPE = 0.01;

static void
scale_places (Point places[], size_t count, double factor)
{
  for (size_t i = 0; i < count; i++)
    places[i] = point_scale (places[i], factor);
}

static void
scale_marks (Plan *plan, double factor)
{
  for (size_t i = 0; i < plan->length_count; i++)
    {
      plan->lengths[i].a = point_scale (plan->lengths[i].a, factor);
      plan->lengths[i].b = point_scale (plan->lengths[i].b, factor);
      plan->lengths[i].sigma_a *= factor;
      plan->lengths[i].sigma_b *= factor;
    }
  for (size_t i = 0; i < plan->view_count; i++)
    {
      plan->views[i].fore = point_scale (plan->views[i].fore, factor);
      plan->views[i].aft = point_scale (plan->views[i].aft, factor);
    }
  scale_places (plan->corners, G_N_ELEMENTS (plan->corners), factor);
  scale_places (plan->level, G_N_ELEMENTS (plan->level), factor);
  scale_places (plan->places, plan->place_count, factor);
}

static bool
has_marks (const Plan *plan)
{
  return plan->length_count > 0 || plan->view_count > 0 || plan->place_count > 0 || plan->has_corners || plan->has_level;
}

PlanRescaled
plan_rescale (Plan *plan, double width, double height)
{
  const double across = width / plan->width, down = height / plan->height;

  if (!has_marks (plan))
    return PLAN_RESCALED_FITS;
  if (!(across > 0) || !(down > 0) || !isfinite (across) || !isfinite (down))
    return PLAN_RESCALED_UNKNOWN;
  if (fabs (down / across - 1) > SAME_SHAPE)
    return PLAN_RESCALED_OTHER_SHAPE;
  if (across != 1)
    scale_marks (plan, across);
  return PLAN_RESCALED_FITS;
}
