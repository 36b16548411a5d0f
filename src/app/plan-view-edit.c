#include "app/plan-view-edit.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "app/plan-edit.h"
#include "app/plan-making.h"
#include "app/plan-work.h"

PlanView
plan_view_shown (TrammelSheetCanvas *sheet, bool *there)
{
  const PlanView *view = trammel_plan_store_view (trammel_sheet_canvas_plan_store (sheet));

  *there = view != NULL && !trammel_plan_work_adds_view (trammel_plan_work_of (sheet));
  return *there ? *view : trammel_plan_work_next_view (trammel_plan_work_of (sheet));
}

void
plan_view_set (TrammelSheetCanvas *sheet, PlanView wanted)
{
  const Plan *plan = plan_edit_plan (sheet);
  bool there;
  const PlanView now = plan_view_shown (sheet, &there);
  Plan *next;

  if (!there) {
    trammel_plan_work_set_next_view (trammel_plan_work_of (sheet), wanted);
    return;
  }
  next = (Plan *) piece_dup (&plan->piece);
  for (size_t i = 0; i < next->view_count; i++)
    if (g_strcmp0 (next->views[i].id, now.id) == 0) {
      next->views[i].shows = wanted.shows;
      next->views[i].side = wanted.side;
      next->views[i].flipped = wanted.flipped;
    }
  plan_edit_do (sheet, next, _("Change View"));
}

/* Both are done with the Plan tool, wherever one was. */
static void
take_step (TrammelSheetCanvas *sheet)
{
  trammel_plan_work_set_step (trammel_plan_work_of (sheet), PLAN_STEP_VIEW);
  trammel_sheet_canvas_set_tool (sheet, "plan");
  gtk_widget_grab_focus (GTK_WIDGET (sheet));
}

static bool
has_view (const Plan *plan, ViewShows shows)
{
  for (size_t i = 0; i < plan->view_count; i++)
    if (plan->views[i].shows == shows)
      return true;
  return false;
}

/* What comes behind the last view and is not on the sheet yet; few have a foreplane. */
static ViewShows
shows_next (const Plan *plan)
{
  const ViewShows last = plan->views[plan->view_count - 1].shows;

  for (int step = 1; step < VIEW_SHOWS_COUNT; step++) {
    const ViewShows shows = (ViewShows) ((last + step) % VIEW_SHOWS_COUNT);

    if (shows != VIEW_FOREPLANE && !has_view (plan, shows))
      return shows;
  }
  return last;
}

void
plan_view_add (TrammelSheetCanvas *sheet)
{
  TrammelPlanWork *work = trammel_plan_work_of (sheet);
  TrammelPlanStore *plans = trammel_sheet_canvas_plan_store (sheet);
  const Plan *plan = plan_edit_plan (sheet);
  g_autofree char *came_from = trammel_plan_store_view (plans) != NULL ? g_strdup (trammel_plan_store_view (plans)->id) : NULL;
  PlanView next = trammel_plan_work_next_view (work);
  PlanSight sight;

  if (plan->view_count > 0)
    next.shows = shows_next (plan);
  next.side = next.shows == VIEW_BODY_TOP ? VIEW_BOTH : VIEW_STARBOARD;
  next.flipped = false;
  take_step (sheet);
  sight = plan_sight_of (sheet);
  trammel_plan_store_choose (plans, plan_edit_plan (sheet)->piece.id, NULL);
  trammel_plan_work_set_next_view (work, next);
  trammel_plan_work_begin_view (work, came_from);
  plan_sight_keep (sheet, &sight);
}

void
plan_view_place (TrammelSheetCanvas *sheet)
{
  take_step (sheet);
  plan_making_begin_place (sheet);
}

bool
plan_view_can_be_placed (TrammelSheetCanvas *sheet)
{
  const Plan *plan = plan_edit_plan (sheet);
  const PlanView *in_hand = trammel_plan_store_view (trammel_sheet_canvas_plan_store (sheet));
  bool side = false;

  for (size_t i = 0; plan != NULL && i < plan->view_count; i++)
    side = side || plan->views[i].shows == VIEW_BODY_SIDE;
  return side && in_hand != NULL && in_hand->shows != VIEW_BODY_SIDE;
}

void
plan_view_remove (TrammelSheetCanvas *sheet)
{
  const Plan *plan = plan_edit_plan (sheet);
  const PlanView *view = trammel_plan_store_view (trammel_sheet_canvas_plan_store (sheet));

  if (view == NULL)
    return;
  plan_edit_do (sheet, plan_without_mark (plan, (PlanMark) { PLAN_MARK_AXIS, (size_t) (view - plan->views), 0 }),
                plan_edit_removed_label (PLAN_MARK_AXIS));
  gtk_widget_grab_focus (GTK_WIDGET (sheet));
}
