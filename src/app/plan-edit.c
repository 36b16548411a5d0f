#include "app/plan-edit.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "app/plan-correct.h"
#include "app/plan-work.h"

/* A usual scan: 200 dots to the inch. */
static const double USUAL_PX_PER_MM = 8;
/* Half a pixel of the screen. */
static const double CLICK_SIGMA_SCREEN_PX = 0.5;

const Plan *
plan_edit_plan (TrammelSheetCanvas *sheet)
{
  return trammel_plan_store_plan (trammel_sheet_canvas_plan_store (sheet));
}

const Ink *
plan_edit_ink (TrammelSheetCanvas *sheet)
{
  const InkLevels *levels = trammel_plan_store_ink (trammel_sheet_canvas_plan_store (sheet));

  return levels != NULL ? ink_levels_ink (levels) : NULL;
}

double
plan_edit_px_per_mm (TrammelSheetCanvas *sheet, Point px)
{
  Mapping mapping;
  double mm;

  if (!trammel_plan_store_mapping (trammel_sheet_canvas_plan_store (sheet), &mapping, NULL, NULL))
    return USUAL_PX_PER_MM;
  mm = mapping_mm_per_px (&mapping, px, (Point) { 1, 0 });
  return mm > 0 ? 1 / mm : USUAL_PX_PER_MM;
}

double
plan_edit_click_sigma (TrammelSheetCanvas *sheet, Point px)
{
  return CLICK_SIGMA_SCREEN_PX / trammel_sheet_canvas_view (sheet)->scale * plan_edit_px_per_mm (sheet, px);
}

/* Why an edit is refused: what is known then is of no paper, or what was traced cannot be where it would have to. */
static const char *
edit_refusal (bool is_paper)
{
  return is_paper ? _("What was traced cannot follow there: the plan stays as it was.")
                  : _("Nothing flat looks like that: the plan stays as it was.");
}

/* The aeroplane with the plan in hand replaced; NULL, and said, when it is refused. A picture measured since is so for good. */
static Aeroplane *
edit_made (TrammelSheetCanvas *sheet, Plan *takes)
{
  const DecodeFacts *facts = trammel_plan_store_facts (trammel_sheet_canvas_plan_store (sheet));
  Aeroplane *made;
  Mapping mapping;
  bool is_paper;

  /* It may have been undone in the middle of a drag. */
  if (plan_edit_plan (sheet) == NULL) {
    piece_unref (&takes->piece);
    return NULL;
  }
  if (facts != NULL && isnan (takes->width)) {
    takes->width = facts->width_px;
    takes->height = facts->height_px;
  }
  is_paper = plan_mapping (takes, takes->dpi > 0, &mapping, NULL, NULL) == CORE_OK;
  made = plan_corrected (trammel_session_settled (trammel_sheet_canvas_session (sheet)), plan_edit_plan (sheet)->piece.id, takes);
  trammel_plan_work_set_note (trammel_plan_work_of (sheet), plan_edit_plan (sheet), made != NULL ? NULL : edit_refusal (is_paper));
  return made;
}

PlanSight
plan_sight_of (TrammelSheetCanvas *sheet)
{
  const SheetView *view = trammel_sheet_canvas_view (sheet);
  PlanSight sight = { .px = { NAN, NAN } };

  if (trammel_plan_store_placing (trammel_sheet_canvas_plan_store (sheet), &sight.placing))
    sight.px = placing_px (&sight.placing, view_from_screen (view, view->width / 2, view->height / 2));
  return sight;
}

/* What of the picture was in the middle stays there, as large as it was: making a plan true must not take it from under the hand. */
void
plan_sight_keep (TrammelSheetCanvas *sheet, const PlanSight *sight)
{
  SheetView view = *trammel_sheet_canvas_view (sheet);
  Placing now;
  Point middle;

  if (!point_is_finite (sight->px) || !trammel_plan_store_placing (trammel_sheet_canvas_plan_store (sheet), &now)
      || (mapping_equal (&now.mapping, &sight->placing.mapping) && axis_frame_equal (&now.frame, &sight->placing.frame)))
    return;
  middle = placing_sheet (&now, sight->px);
  view.scale *= mapping_mm_per_px (&sight->placing.mapping, sight->px, (Point) { 1, 0 })
                / mapping_mm_per_px (&now.mapping, sight->px, (Point) { 1, 0 });
  view.origin_x = view.width / 2 - middle.y * view.scale;
  view.origin_y = view.height / 2 - middle.x * view.scale;
  if (isfinite (view.origin_x) && isfinite (view.origin_y) && view.scale > 0)
    trammel_sheet_canvas_set_view (sheet, view);
}

bool
plan_edit_do (TrammelSheetCanvas *sheet, Plan *takes, const char *label)
{
  const PlanSight sight = plan_sight_of (sheet);
  Aeroplane *made = takes != NULL ? edit_made (sheet, takes) : NULL;

  trammel_session_do (trammel_sheet_canvas_session (sheet), made, label);
  plan_sight_keep (sheet, &sight);
  return made != NULL;
}

bool
plan_edit_preview (TrammelSheetCanvas *sheet, Plan *takes)
{
  Aeroplane *made = takes != NULL ? edit_made (sheet, takes) : NULL;

  trammel_session_preview (trammel_sheet_canvas_session (sheet), made);
  return made != NULL;
}

bool
plan_edit_propose (TrammelSheetCanvas *sheet, Plan *takes)
{
  Aeroplane *made = takes != NULL ? edit_made (sheet, takes) : NULL;

  trammel_session_propose (trammel_sheet_canvas_session (sheet), made);
  return made != NULL;
}

const char *
plan_edit_moved_label (PlanMarkKind kind)
{
  switch (kind) {
    case PLAN_MARK_LENGTH:   return _("Move Known Length");
    case PLAN_MARK_LEVEL:    return _("Move Level Line");
    case PLAN_MARK_CORNER:   return _("Move Corner");
    case PLAN_MARK_STRAIGHT: return _("Move Straight Line");
    case PLAN_MARK_AXIS:     return _("Move Axis");
    default:                 return _("Place View");
  }
}

const char *
plan_edit_removed_label (PlanMarkKind kind)
{
  switch (kind) {
    case PLAN_MARK_LENGTH:   return _("Remove Known Length");
    case PLAN_MARK_LEVEL:    return _("Remove Level Line");
    case PLAN_MARK_CORNER:   return _("Remove Rectangle");
    case PLAN_MARK_STRAIGHT: return _("Remove Straight Line");
    default:                 return _("Remove View");
  }
}
