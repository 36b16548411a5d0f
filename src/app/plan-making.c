#include "app/plan-making.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>
#include "app/first-place.h"
#include "app/plan-axis.h"
#include "app/plan-edit.h"
#include "app/plan-look.h"
#include "app/plan-work.h"

/* px: how far from straight the sides of one rectangle may be when the lens is undone; as mapping_solve_printed() holds it. */
static const double MOST_BENT_PX = 0.7;

static Plan *
plan_copy (TrammelSheetCanvas *sheet)
{
  return (Plan *) piece_dup (&plan_edit_plan (sheet)->piece);
}

/* Rectangle */

/* How long two opposite sides measure, in the mean, mm. */
static double
side_now (const Mapping *mapping, const Point corners[4], size_t first)
{
  const size_t third = first + 2, fourth = (first + 3) % 4;

  return (point_distance (mapping_to_mm (mapping, corners[first]), mapping_to_mm (mapping, corners[first + 1]))
          + point_distance (mapping_to_mm (mapping, corners[third]), mapping_to_mm (mapping, corners[fourth]))) / 2;
}

void
plan_making_rectangle (TrammelSheetCanvas *sheet, const Point corners[4])
{
  Plan *plan = plan_copy (sheet);
  Mapping mapping;
  double sides[2];
  int wide;

  if (!trammel_plan_store_mapping (trammel_sheet_canvas_plan_store (sheet), &mapping, NULL, NULL)) {
    piece_unref (&plan->piece);
    return;
  }
  sides[0] = side_now (&mapping, corners, 0);
  sides[1] = side_now (&mapping, corners, 1);
  wide = known_rectangle_widths (corners);
  plan->has_corners = true;
  memcpy (plan->corners, corners, sizeof plan->corners);
  plan->corners_width = round (sides[wide]);
  plan->corners_height = round (sides[1 - wide]);
  plan_edit_propose (sheet, plan);
}

static bool
corners_stand (const Plan *before, const Plan *after)
{
  for (size_t i = 0; i < G_N_ELEMENTS (before->corners); i++)
    if (before->corners[i].x != after->corners[i].x || before->corners[i].y != after->corners[i].y)
      return false;
  return before->has_corners && before->corners_width == after->corners_width && before->corners_height == after->corners_height;
}

bool
plan_making_is_offered (TrammelSheetCanvas *sheet)
{
  TrammelSession *session = trammel_sheet_canvas_session (sheet);
  const Plan *plan = plan_edit_plan (sheet), *before;

  if (plan == NULL || !plan->has_corners || !trammel_session_is_previewing (session))
    return false;
  before = aeroplane_plan_by_id (trammel_session_settled (session), plan->piece.id);
  return before != NULL && !corners_stand (before, plan);
}

/* What is printed along the rectangle's sides is straight on the paper, whatever the lens made of it, and its corners are where the sides
 * meet. */
static Plan *
with_sides (TrammelSheetCanvas *sheet, const PrintedSides *sides)
{
  Plan *plan = plan_copy (sheet), *before;

  memcpy (plan->corners, sides->rectangle.corners, sizeof plan->corners);
  for (size_t i = 0; i < sides->line_count; i++) {
    before = plan;
    plan = plan_with_straight (before, sides->lines[i].places, sides->lines[i].count);
    piece_unref (&before->piece);
  }
  return plan;
}

/* Where sides and rectangle do not agree a side was mistaken for another line. */
static bool
sides_agree (const Plan *plan)
{
  MappingMisfit misfit;
  Mapping mapping;

  return plan_mapping (plan, plan->dpi > 0, &mapping, &misfit, NULL) == CORE_OK && !(misfit.bend_after_px > MOST_BENT_PX);
}

static void
accept_with (TrammelSheetCanvas *sheet, const PlanLooked *looked, gconstpointer nothing)
{
  Plan *printed;

  if (!plan_making_is_offered (sheet))
    return;
  printed = looked->found ? with_sides (sheet, &looked->sides) : NULL;
  if (printed != NULL && sides_agree (printed))
    plan_edit_propose (sheet, printed);
  else if (printed != NULL)
    piece_unref (&printed->piece);
  trammel_session_settle (trammel_sheet_canvas_session (sheet), _("Square Up"));
}

void
plan_making_accept (TrammelSheetCanvas *sheet)
{
  const Plan *plan = plan_edit_plan (sheet);

  if (!plan_making_is_offered (sheet))
    return;
  if (plan->straight_count > 0) {
    accept_with (sheet, &(PlanLooked) { .found = false }, NULL);
    return;
  }
  const KnownRectangle clicked = { .corners = { plan->corners[0], plan->corners[1], plan->corners[2], plan->corners[3] },
                                   .width = plan->corners_width, .height = plan->corners_height };

  plan_look_sides (sheet, &clicked, accept_with, NULL);
}

/* Lines */

static void
level_with (TrammelSheetCanvas *sheet, const PlanLooked *looked, gconstpointer nothing)
{
  Plan *plan = plan_copy (sheet);

  plan->has_level = true;
  plan->level[0] = looked->found ? looked->line.fore : looked->a;
  plan->level[1] = looked->found ? looked->line.aft : looked->b;
  plan_edit_do (sheet, plan, _("Level the Plan"));
}

void
plan_making_level (TrammelSheetCanvas *sheet, Point a, Point b, bool loose)
{
  if (loose)
    level_with (sheet, &(PlanLooked) { .a = a, .b = b }, NULL);
  else
    plan_look_line (sheet, a, b, level_with, NULL);
}

void
plan_making_straight (TrammelSheetCanvas *sheet, const Point places[], size_t count)
{
  plan_edit_do (sheet, plan_with_straight (plan_edit_plan (sheet), places, count), _("Add Straight Line"));
}

/* Views */

/* Side views are drawn nose to the left as a rule, and then up is to starboard of their axis; nose to the right it is the other side. */
static bool
points_up (TrammelSheetCanvas *sheet, Point fore, Point aft)
{
  Mapping mapping;

  if (!trammel_plan_store_mapping (trammel_sheet_canvas_plan_store (sheet), &mapping, NULL, NULL))
    return true;
  return mapping_to_mm (&mapping, aft).x >= mapping_to_mm (&mapping, fore).x;
}

/* Where the sheet itself shows it, else for now where it usually stands: not on top of what was traced before. */
static void
view_stand (TrammelSheetCanvas *sheet, PlanView *view)
{
  Mapping mapping;
  double place;

  view->x = 0;
  view->for_now = false;
  if (trammel_plan_store_mapping (trammel_sheet_canvas_plan_store (sheet), &mapping, NULL, NULL)
      && place_on_sheet (plan_edit_plan (sheet), &mapping, view))
    return;
  place = first_place (trammel_session_settled (trammel_sheet_canvas_session (sheet)), view->shows);
  view->for_now = !isnan (place);
  if (view->for_now)
    view->x = place;
}

static bool
view_add (TrammelSheetCanvas *sheet, PlanView view)
{
  TrammelPlanWork *work = trammel_plan_work_of (sheet);
  g_autofree char *came_from = g_strdup (trammel_plan_work_came_from (work));
  const PlanSight sight = plan_sight_of (sheet);
  const Plan *now;
  Box axis;

  view_stand (sheet, &view);
  if (view.shows == VIEW_FIN || view.shows == VIEW_BODY_SIDE)
    view.flipped = view.flipped != !points_up (sheet, view.fore, view.aft);
  if (!plan_edit_do (sheet, plan_with_view (plan_edit_plan (sheet), view), _("Add View")))
    return false;
  now = plan_edit_plan (sheet);
  trammel_plan_work_set_added (work, now->views[now->view_count - 1].id, came_from);
  trammel_plan_work_end_view (work);
  trammel_plan_store_choose (trammel_sheet_canvas_plan_store (sheet), now->piece.id, now->views[now->view_count - 1].id);
  plan_sight_keep (sheet, &sight);
  if (trammel_sheet_canvas_work_extent (sheet, &axis))
    trammel_sheet_canvas_bring_into_sight (sheet, axis);
  return true;
}

/* `next` is what the view shall show, as it was chosen when its axis was clicked. */
static void
view_along (TrammelSheetCanvas *sheet, const PlanLooked *looked, gconstpointer next)
{
  PlanView view = *(const PlanView *) next;
  g_autofree char *words = NULL;
  PlanAxisOff off;

  view.fore = looked->a;
  view.aft = looked->b;
  if (plan_axis_settle (sheet, looked->found ? &looked->line : NULL, &view.fore, &view.aft, &off)) {
    words = plan_axis_words (&off);
    if (view_add (sheet, view) && words != NULL)
      trammel_plan_work_set_note (trammel_plan_work_of (sheet), plan_edit_plan (sheet), words);
  } else
    trammel_plan_work_set_note (trammel_plan_work_of (sheet), plan_edit_plan (sheet),
                                _("So short an axis does not tell its direction: click its two ends further apart, or zoom in."));
}

void
plan_making_view (TrammelSheetCanvas *sheet, Point fore, Point aft, bool loose)
{
  PlanView view = trammel_plan_work_next_view (trammel_plan_work_of (sheet));

  view.fore = fore;
  view.aft = aft;
  if (loose)
    view_add (sheet, view);
  else
    plan_look_line (sheet, fore, aft, view_along, g_memdup2 (&view, sizeof view));
}

void
plan_making_no_view (TrammelSheetCanvas *sheet)
{
  TrammelPlanWork *work = trammel_plan_work_of (sheet);
  g_autofree char *came_from = g_strdup (trammel_plan_work_came_from (work));
  const PlanSight sight = plan_sight_of (sheet);

  trammel_plan_work_end_view (work);
  trammel_plan_store_choose (trammel_sheet_canvas_plan_store (sheet), plan_edit_plan (sheet) != NULL ? plan_edit_plan (sheet)->piece.id : NULL,
                             came_from);
  plan_sight_keep (sheet, &sight);
}

void
plan_making_follow (TrammelSheetCanvas *sheet, const Placing *seen)
{
  TrammelPlanStore *plans = trammel_sheet_canvas_plan_store (sheet);
  TrammelPlanWork *work = trammel_plan_work_of (sheet);
  const SheetView *view = trammel_sheet_canvas_view (sheet);
  const PlanSight sight = { .placing = *seen, .px = placing_px (seen, view_from_screen (view, view->width / 2, view->height / 2)) };
  const Plan *plan = plan_edit_plan (sheet);
  const char *added = trammel_plan_work_added (work);
  const bool there = plan != NULL && added != NULL && plan_view_by_id (plan, added) != NULL;

  if (plan == NULL || added == NULL || plan->view_count == 0)
    return;
  if (!there && g_strcmp0 (trammel_plan_store_chosen (plans), added) == 0) {
    trammel_plan_store_choose (plans, plan->piece.id, NULL);
    trammel_plan_work_begin_again (work);
  } else if (there && trammel_plan_work_begins_again (work)) {
    trammel_plan_work_end_view (work);
    trammel_plan_store_choose (plans, plan->piece.id, added);
  } else
    return;
  plan_sight_keep (sheet, &sight);
}

static const PlanView *
side_view (const Plan *plan)
{
  for (size_t i = 0; i < plan->view_count; i++)
    if (plan->views[i].shows == VIEW_BODY_SIDE)
      return &plan->views[i];
  return NULL;
}

bool
plan_making_begin_place (TrammelSheetCanvas *sheet)
{
  TrammelPlanStore *plans = trammel_sheet_canvas_plan_store (sheet);
  const PlanView *view = trammel_plan_store_view (plans), *side = view != NULL ? side_view (plan_edit_plan (sheet)) : NULL;

  if (side == NULL || view->shows == VIEW_BODY_SIDE)
    return false;
  trammel_plan_work_set_places (trammel_plan_work_of (sheet), view->id);
  trammel_plan_store_choose (plans, plan_edit_plan (sheet)->piece.id, side->id);
  return true;
}

const Surface *
plan_making_traced (TrammelSheetCanvas *sheet, const char *view)
{
  const Aeroplane *aeroplane = trammel_session_aeroplane (trammel_sheet_canvas_session (sheet));

  for (size_t i = 0; view != NULL && i < aeroplane_count (aeroplane, PIECE_SURFACE); i++)
    if (g_strcmp0 (aeroplane_surface (aeroplane, i)->traced, view) == 0)
      return aeroplane_surface (aeroplane, i);
  return NULL;
}

/* Where the root's leading edge of what was traced in it, else its axis's forward end, is clicked in the side view: how far aft, and what
 * stands at a height of its own, how high. The body's axis has none; heights in the side view itself run from its own. */
static void
view_put (PlanView *view, const PlanView *side, const Surface *traced, Point at)
{
  view->x = traced != NULL ? at.x - (outline_node (traced->outline, 0).x - view->x) : at.x;
  view->for_now = false;
  if (view->shows != VIEW_BODY_TOP)
    view->z = at.y + side->z;
}

void
plan_making_place (TrammelSheetCanvas *sheet, const Point *px)
{
  TrammelPlanStore *plans = trammel_sheet_canvas_plan_store (sheet);
  g_autofree char *id = g_strdup (trammel_plan_work_places (trammel_plan_work_of (sheet)));
  const PlanView *side = trammel_plan_store_view (plans);
  Plan *plan = plan_copy (sheet);
  Placing placing;

  trammel_plan_work_set_places (trammel_plan_work_of (sheet), NULL);
  for (size_t i = 0; px != NULL && side != NULL && i < plan->view_count && trammel_plan_store_placing (plans, &placing); i++)
    if (g_strcmp0 (plan->views[i].id, id) == 0)
      view_put (&plan->views[i], side, plan_making_traced (sheet, id), placing_sheet (&placing, *px));
  plan_edit_do (sheet, plan, plan_edit_moved_label (PLAN_MARK_STANDS));
  trammel_plan_store_choose (plans, plan_edit_plan (sheet)->piece.id, id);
}
