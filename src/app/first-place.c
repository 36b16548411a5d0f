#include "app/first-place.h"
#include <math.h>
#include "app/numbers-shape.h"
#include "drawing/plan-placing.h"

static const NumbersThing things[VIEW_SHOWS_COUNT] = {
  [VIEW_WING] = NUMBERS_WING, [VIEW_TAILPLANE] = NUMBERS_TAILPLANE, [VIEW_FOREPLANE] = NUMBERS_FOREPLANE, [VIEW_FIN] = NUMBERS_FIN,
  [VIEW_BODY_TOP] = NUMBERS_BODY, [VIEW_BODY_SIDE] = NUMBERS_BODY };

/* Share of a body's length ahead of the thing's leading edge. */
static const double along_body[VIEW_SHOWS_COUNT] = {
  [VIEW_WING] = 0.25, [VIEW_TAILPLANE] = 0.85, [VIEW_FOREPLANE] = 0.08, [VIEW_FIN] = 0.83 };

static const Outline *
body_outline (const Aeroplane *aeroplane)
{
  const Body *body = aeroplane_count (aeroplane, PIECE_BODY) > 0 ? aeroplane_body (aeroplane, 0) : NULL;

  return body == NULL ? NULL : body->outline != NULL ? body->outline : body->side_outline;
}

double
first_place (const Aeroplane *aeroplane, ViewShows shows)
{
  const Outline *body = body_outline (aeroplane);
  const Box box = body != NULL ? outline_bounds (body) : (Box) { { 0, 0 }, { 0, 0 } };
  double values[NUMBER_COUNT];

  if (body != NULL && things[shows] == NUMBERS_BODY)
    return box.min.x;
  if (aeroplane_reference_wing (aeroplane) != NULL) {
    numbers_usual (aeroplane, things[shows], values);
    return values[NUMBER_ROOT_X];
  }
  return body != NULL ? round (box.min.x + along_body[shows] * (box.max.x - box.min.x)) : NAN;
}

/* Clicked apart, no better than this: mm off the other's axis, and the sine of 3 degrees. */
static const double SAME_LINE_MM = 3, SAME_WAY = 0.052;

/* One of both is the body's from above, the other of something that may be drawn on its centre line. */
static bool
may_share_a_line (ViewShows a, ViewShows b)
{
  const ViewShows other = a == VIEW_BODY_TOP ? b : a;

  return (a == VIEW_BODY_TOP) != (b == VIEW_BODY_TOP) && (other == VIEW_WING || other == VIEW_TAILPLANE || other == VIEW_FOREPLANE);
}

/* Where the axis's forward end stands by the other view, mm aft of the datum; NAN where it does not lie on that view's axis. */
static double
place_by (const Plan *plan, const Mapping *mapping, const PlanView *other, const PlanView *view)
{
  Placing placing;
  Point fore, aft;

  if (!may_share_a_line (other->shows, view->shows) || plan_placing (plan, mapping, other, &placing) != CORE_OK)
    return NAN;
  fore = placing_sheet (&placing, view->fore);
  aft = placing_sheet (&placing, view->aft);
  return fabs (fore.y) <= SAME_LINE_MM && fabs (aft.y) <= SAME_LINE_MM && fabs (aft.y - fore.y) <= SAME_WAY * (aft.x - fore.x) ? fore.x : NAN;
}

bool
place_on_sheet (const Plan *plan, const Mapping *mapping, PlanView *view)
{
  bool found = false;

  for (size_t i = 0; i < plan->view_count; i++) {
    const double place = place_by (plan, mapping, &plan->views[i], view);

    if (isnan (place) || (found && !view->for_now))
      continue;
    view->x = round (place * 10) / 10;
    view->for_now = plan->views[i].for_now;
    found = true;
  }
  return found;
}
