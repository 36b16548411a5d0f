#include "drawing/plan-placing.h"

#include <glib.h>
#include <math.h>

/* Until something is known: half an A2. */
static const double USUAL_WIDTH = 420, INCH = 25.4;

static StraightLine *
straight_lines (const Plan *plan)
{
  StraightLine *lines = g_new0 (StraightLine, plan->straight_count + 1);
  size_t first = 0;

  for (size_t i = 0; i < plan->straight_count; i++)
    {
      lines[i] = (StraightLine) { .places = plan->places + first, .count = plan->straight[i].count };
      first += plan->straight[i].count;
    }
  return lines;
}

static double
page_scale (const Plan *plan, bool page_is_true)
{
  return page_is_true && plan->dpi > 0 ? INCH / plan->dpi : NAN;
}

CoreStatus
plan_mapping (const Plan *plan, bool page_is_true, Mapping *mapping, MappingMisfit *misfit, bool *is_true)
{
  KnownLength *lengths = g_new0 (KnownLength, plan->length_count + 1);
  StraightLine *straight = straight_lines (plan);
  const KnownRectangle rectangle = { .corners = { plan->corners[0], plan->corners[1], plan->corners[2], plan->corners[3] },
                                     .width = plan->corners_width, .height = plan->corners_height };
  Knowns knowns = { .lengths = lengths, .length_count = plan->length_count, .rectangle = plan->has_corners ? &rectangle : NULL,
                    .straight = straight, .straight_count = plan->straight_count, .mm_per_px = page_scale (plan, page_is_true),
                    .has_level = plan->has_level, .level = { plan->level[0], plan->level[1] },
                    .width_px = plan->width, .height_px = plan->height };
  const bool known = plan->length_count > 0 || plan->has_corners || !isnan (knowns.mm_per_px);

  for (size_t i = 0; i < plan->length_count; i++)
    {
      const PlanLength *length = &plan->lengths[i];

      lengths[i] = (KnownLength) { length->a, length->b, length->mm, hypot (length->sigma_a, length->sigma_b) / G_SQRT2 };
    }
  if (!known)
    knowns.mm_per_px = USUAL_WIDTH / plan->width;
  if (is_true)
    *is_true = known;
  const CoreStatus status = plan->width > 0 && plan->height > 0 ? mapping_solve (&knowns, mapping, misfit) : CORE_OUT_OF_RANGE;
  g_free (lengths);
  g_free (straight);
  return status;
}

/* Which side of the axis comes to lie at starboard. */
static double
view_side (const PlanView *view)
{
  const double drawn = view->side == VIEW_PORT ? -1 : 1;

  return view->flipped ? -drawn : drawn;
}

CoreStatus
plan_placing (const Plan *plan, const Mapping *mapping, const PlanView *view, Placing *placing)
{
  Placing made = { .mapping = *mapping };

  if (!view)
    {
      const Point middle = mapping_to_mm (mapping, (Point) { plan->width / 2, 0 });
      made.frame = (AxisFrame) { .fore = middle, .along = { 0, 1 }, .side = 1 };
      *placing = made;
      return point_is_finite (middle) ? CORE_OK : CORE_NOT_FINITE;
    }
  const CoreStatus status = axis_frame_on (mapping, (ViewAxis) { .fore = view->fore, .aft = view->aft }, view_side (view), &made.frame);
  made.x = view->x;
  if (!status)
    *placing = made;
  return status;
}

const PlanView *
plan_view_by_id (const Plan *plan, const char *id)
{
  for (size_t i = 0; id && plan && i < plan->view_count; i++)
    if (g_strcmp0 (plan->views[i].id, id) == 0)
      return &plan->views[i];
  return NULL;
}
