#include "app/plan-correct.h"
#include <math.h>
#include "drawing/plan-placing.h"

/* Heights are drawn in one view alone: there the document adds its z to what was traced. */
static Point
view_shift (const PlanView *view)
{
  return (Point) { view->x, view->shows == VIEW_BODY_SIDE ? view->z : 0 };
}

/* What was traced beside an axis stays on its side, whichever half the view is said to show and whichever end of its axis is forward. */
static double
side_kept (const AxisCarry *carry, double length)
{
  const Point own = { length / 2, length / 4 };
  const Point px = mapping_to_px (&carry->from, axis_frame_paper (&carry->frame_from, own));
  const double off = axis_frame_own (&carry->frame_to, mapping_to_mm (&carry->to, px)).y;

  return off < 0 ? -carry->frame_to.side : carry->frame_to.side;
}

/* How what was traced in `before` moves; false where that cannot be told. */
static bool
view_carry (const Plan *const plans[2], const Mapping mappings[2], const PlanView *before, const PlanView *after, AxisCarry *carry)
{
  const double length = point_distance (mapping_to_mm (&mappings[0], before->fore), mapping_to_mm (&mappings[0], before->aft));
  Placing from, to;

  if (plan_placing (plans[0], &mappings[0], before, &from) || plan_placing (plans[1], &mappings[1], after, &to))
    return false;
  *carry = (AxisCarry) { .from = mappings[0], .to = mappings[1], .frame_from = from.frame, .frame_to = to.frame,
                         .shift_from = view_shift (before), .shift_to = view_shift (after) };
  carry->frame_to.side = side_kept (carry, length);
  return true;
}

static bool
is_same_frame (const AxisFrame *a, const AxisFrame *b)
{
  return a->fore.x == b->fore.x && a->fore.y == b->fore.y && a->along.x == b->along.x && a->along.y == b->along.y && a->side == b->side;
}

static bool
is_same_mapping (const Mapping *a, const Mapping *b)
{
  bool same = a->k1 == b->k1 && a->lens_radius == b->lens_radius && a->lens_centre.x == b->lens_centre.x
              && a->lens_centre.y == b->lens_centre.y;

  for (size_t i = 0; i < 9; i++)
    same = same && a->h[i] == b->h[i];
  return same;
}

/* Where nothing moves nothing is reckoned either: an outline keeps its digits. */
static bool
moves_nothing (const AxisCarry *carry)
{
  return is_same_mapping (&carry->from, &carry->to) && is_same_frame (&carry->frame_from, &carry->frame_to)
         && carry->shift_from.x == carry->shift_to.x && carry->shift_from.y == carry->shift_to.y;
}

static Point
carry_place (Point mm, const void *data)
{
  return axis_carry (data, mm);
}

/* The carries of all views that both plans have and that move; how many. */
static size_t
carries_of (const Plan *old, const Plan *next, const Mapping mappings[2], AxisCarry carries[], TracedMove moves[])
{
  const Plan *const plans[2] = { old, next };
  size_t count = 0;

  for (size_t i = 0; i < next->view_count; i++) {
    const PlanView *before = plan_view_by_id (old, next->views[i].id);

    if (before == NULL || !view_carry (plans, mappings, before, &next->views[i], &carries[count]) || moves_nothing (&carries[count]))
      continue;
    moves[count] = (TracedMove) { .view = next->views[i].id, .move = carry_place, .data = &carries[count] };
    count++;
  }
  return count;
}

Aeroplane *
plan_corrected (const Aeroplane *self, const char *plan_id, Plan *takes)
{
  const Plan *old = aeroplane_plan_by_id (self, plan_id);
  g_autofree AxisCarry *carries = g_new0 (AxisCarry, takes->view_count + 1);
  g_autofree TracedMove *moves = g_new0 (TracedMove, takes->view_count + 1);
  Mapping mappings[2];
  size_t count = 0;

  if (old != NULL) {
    Plan sized = *old;      /* only read: its picture may have been measured since */

    sized.width = isnan (old->width) ? takes->width : old->width;
    sized.height = isnan (old->height) ? takes->height : old->height;
    if (!plan_mapping (&sized, sized.dpi > 0, &mappings[0], NULL, NULL) && !plan_mapping (takes, takes->dpi > 0, &mappings[1], NULL, NULL))
      count = carries_of (&sized, takes, mappings, carries, moves);
  }
  return change_plan_carrying (self, plan_id, takes, moves, count);
}
