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

/* How what was traced in `before` moves; false where its axis would be nowhere. A view whose axis was nowhere before stays behind. */
static bool
view_carry (const Plan *const plans[2], const Mapping mappings[2], const PlanView *before, const PlanView *after, AxisCarry *carry,
            bool *moves)
{
  const double length = point_distance (mapping_to_mm (&mappings[0], before->fore), mapping_to_mm (&mappings[0], before->aft));
  Placing from, to;

  *moves = false;
  if (plan_placing (plans[0], &mappings[0], before, &from))
    return true;
  if (plan_placing (plans[1], &mappings[1], after, &to))
    return false;
  *carry = (AxisCarry) { .from = mappings[0], .to = mappings[1], .frame_from = from.frame, .frame_to = to.frame,
                         .shift_from = view_shift (before), .shift_to = view_shift (after) };
  /* A body from the side has no other half that could stand for it: where its picture comes to be upside down, so does its outline. */
  if (after->shows != VIEW_BODY_SIDE || before->shows != VIEW_BODY_SIDE)
    carry->frame_to.side = side_kept (carry, length);
  *moves = !moves_nothing (carry);
  return true;
}

static Point
carry_place (Point mm, const void *data)
{
  return axis_carry (data, mm);
}

/* The carries of all views that both plans have and that move, and how many; false where one cannot. */
static bool
carries_of (const Plan *const plans[2], const Mapping mappings[2], AxisCarry carries[], TracedMove moves[], size_t *count)
{
  for (size_t i = 0; i < plans[1]->view_count; i++) {
    const PlanView *after = &plans[1]->views[i], *before = plan_view_by_id (plans[0], after->id);
    bool is_moved;

    if (before == NULL)
      continue;
    if (!view_carry (plans, mappings, before, after, &carries[*count], &is_moved))
      return false;
    moves[*count] = (TracedMove) { .view = after->id, .move = carry_place, .data = &carries[*count] };
    *count += is_moved;
  }
  return true;
}

/* Takes the aeroplane and gives it with what was traced in that view, of one plan and another, so much higher. */
static Aeroplane *
raised (Aeroplane *takes, const char *view, double up)
{
  Aeroplane *now = takes;

  for (size_t i = 0; i < aeroplane_count (now, PIECE_SURFACE); i++) {
    const Surface *surface = aeroplane_surface (now, i);
    Aeroplane *before = now;
    Surface *next;

    if (up == 0 || g_strcmp0 (surface->traced, view) != 0)
      continue;
    next = (Surface *) piece_dup (&surface->piece);
    next->z += up;
    now = aeroplane_with_replaced (before, &surface->piece, &next->piece);
    aeroplane_unref (before);
  }
  return now;
}

/* A surface's height is none of its outline's places: it follows its view's apart from them. */
static Aeroplane *
with_heights (Aeroplane *takes, const Plan *before, const char *plan_id)
{
  const Plan *after = takes != NULL ? aeroplane_plan_by_id (takes, plan_id) : NULL;
  Aeroplane *now = takes;

  for (size_t i = 0; after != NULL && i < before->view_count; i++) {
    const PlanView *view = plan_view_by_id (after, before->views[i].id);

    if (view != NULL)
      now = raised (now, view->id, view->z - before->views[i].z);
  }
  return now;
}

Aeroplane *
plan_corrected (const Aeroplane *self, const char *plan_id, Plan *takes)
{
  const Plan *old = aeroplane_plan_by_id (self, plan_id);
  g_autofree AxisCarry *carries = g_new0 (AxisCarry, takes->view_count + 1);
  g_autofree TracedMove *moves = g_new0 (TracedMove, takes->view_count + 1);
  Mapping mappings[2];
  Aeroplane *now;
  size_t count = 0;

  if (old != NULL) {
    Plan sized = *old;      /* only read: its picture may have been measured since */
    const Plan *const plans[2] = { &sized, takes };

    sized.width = isnan (old->width) ? takes->width : old->width;
    sized.height = isnan (old->height) ? takes->height : old->height;
    /* What was true would be so no more. */
    if (!plan_mapping (&sized, sized.dpi > 0, &mappings[0], NULL, NULL)
        && (plan_mapping (takes, takes->dpi > 0, &mappings[1], NULL, NULL) || !carries_of (plans, mappings, carries, moves, &count))) {
      piece_unref (&takes->piece);
      return NULL;
    }
  }
  now = change_plan_carrying (self, plan_id, takes, moves, count);
  return old != NULL ? with_heights (now, old, plan_id) : now;
}
