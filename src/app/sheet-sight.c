#include "app/sheet-canvas-private.h"
#include <math.h>
#include "drawing/plan-placing.h"
#include "drawing/sheet-places.h"

/* px: so far from the edge what is worked on can be clicked. */
static const double CLEAR_PX = 16;

static Box
box_of_px (const Placing *placing, const Point px[], size_t count)
{
  Box box = box_empty ();

  for (size_t i = 0; i < count; i++) {
    const Point at = placing_sheet (placing, px[i]);

    if (point_is_finite (at))
      box = box_with (box, at);
  }
  return box;
}

bool
sheet_sight_picture (TrammelSheetCanvas *self, Box *box)
{
  const InkLevels *levels = trammel_plan_store_ink (self->plans);
  const Ink *ink = levels != NULL ? ink_levels_ink (levels) : NULL;
  Placing placing;
  double width, height;

  if (ink == NULL || !trammel_plan_store_placing (self->plans, &placing))
    return false;
  width = ink_width (ink) * ink_reduced (ink);
  height = ink_height (ink) * ink_reduced (ink);
  *box = box_of_px (&placing, (const Point[]) { { 0, 0 }, { width, 0 }, { 0, height }, { width, height } }, 4);
  return true;
}

/* Along the axis alone: across it a height stands elsewhere on the sheet than in its picture. */
static Box
with_outline (Box box, const Outline *outline, const char *traced, const char *view)
{
  Box bounds;

  if (outline == NULL || g_strcmp0 (traced, view) != 0)
    return box;
  bounds = outline_bounds (outline);
  box.min.x = fmin (box.min.x, bounds.min.x);
  box.max.x = fmax (box.max.x, bounds.max.x);
  return box;
}

static Box
with_traced (Box box, const Aeroplane *aeroplane, const char *view)
{
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_SURFACE); i++) {
    const Surface *surface = aeroplane_surface (aeroplane, i);

    box = with_outline (box, surface->outline, surface->traced, view);
  }
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_BODY); i++) {
    const Body *body = aeroplane_body (aeroplane, i);

    box = with_outline (box, body->outline, body->traced, view);
    box = with_outline (box, body->side_outline, body->side_traced, view);
  }
  return box;
}

bool
trammel_sheet_canvas_work_extent (TrammelSheetCanvas *self, Box *box)
{
  const PlanView *view = trammel_plan_store_view (self->plans);
  Placing placing;

  if (view == NULL)
    return sheet_sight_picture (self, box);
  if (!trammel_plan_store_placing (self->plans, &placing))
    return false;
  *box = box_of_px (&placing, (const Point[]) { view->fore, view->aft }, 2);
  *box = with_traced (*box, trammel_session_aeroplane (self->session), view->id);
  return point_is_finite (box->min) && point_is_finite (box->max);
}

/* All of it where all of it was in sight, else its forward end. */
static void
move_clear (TrammelSheetCanvas *self, double fore, double aft)
{
  const double room = self->view.height - 2 * CLEAR_PX, across = self->view.origin_x;

  if (aft <= self->view.height && aft - fore > room && room > 0) {
    self->view = view_zoomed (&self->view, room / (aft - fore), across, fore);
    self->view = view_panned (&self->view, 0, CLEAR_PX - fore);
  } else
    self->view = view_panned (&self->view, 0, CLEAR_PX - fore);
}

void
sheet_sight_keep_clear (TrammelSheetCanvas *self, double covered)
{
  double fore, aft;
  Box box;

  if (covered <= 0 || self->pressed || !sheet_canvas_draws_over_plan (self) || trammel_plan_store_view (self->plans) == NULL
      || !trammel_sheet_canvas_work_extent (self, &box))
    return;
  fore = view_to_screen (&self->view, box.min).y;
  aft = view_to_screen (&self->view, box.max).y;
  if (fore + covered >= 0 && fore < CLEAR_PX)
    move_clear (self, fore, aft);
}
