#include "app/plan-remark.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "app/plan-edit.h"
#include "app/plan-making.h"
#include "app/plan-misfit.h"
#include "app/plan-view-edit.h"
#include "app/plan-work.h"

static const PlanView *
view_in_hand (TrammelSheetCanvas *sheet)
{
  return trammel_plan_store_view (trammel_sheet_canvas_plan_store (sheet));
}

/* Of what was traced the root is told, as the panel tells it: the axis's end, clicked somewhere ahead of it, would be a second figure. */
static char *
root_words (double x, Units units)
{
  g_autofree char *place = units_length (units, fabs (x));

  if (x < 0)
    /* Translators: %s is a length with its unit. */
    return g_strdup_printf (_("The root's leading edge stands %s ahead of the datum, a guess: step View takes it to its own place."), place);
  return g_strdup_printf (_("The root's leading edge stands %s aft of the datum, a guess: step View takes it to its own place."), place);
}

/* The view in hand stands where such a thing usually does, and nobody has put it there yet; NULL where it was put. */
static char *
place_words (TrammelSheetCanvas *sheet, Units units)
{
  const PlanView *view = view_in_hand (sheet);
  const Surface *traced = view != NULL ? plan_making_traced (sheet, view->id) : NULL;
  g_autofree char *place = NULL;

  if (view == NULL || !view->for_now)
    return NULL;
  if (traced != NULL)
    return root_words (outline_node (traced->outline, 0).x, units);
  place = units_length (units, fabs (view->x));
  if (view->x < 0)
    /* Translators: %s is a length with its unit. */
    return g_strdup_printf (_("The forward end of its axis stands %s ahead of the datum, a guess: step View takes it to its own place."), place);
  return g_strdup_printf (_("The forward end of its axis stands %s aft of the datum, a guess: step View takes it to its own place."), place);
}

/* What is traced stands in the side view, and that is not there; NULL where it is to be seen. */
static const char *
side_words (TrammelSheetCanvas *sheet)
{
  const PlanView *view = view_in_hand (sheet);

  if (view == NULL || (view->shows != VIEW_FIN && view->shows != VIEW_BODY_SIDE))
    return NULL;
  if (!trammel_settings_flag (trammel_session_settings (trammel_sheet_canvas_session (sheet)), SHOW_SIDE_VIEW))
    return _("What is traced here stands in the side view, which is switched off: the menu shows it.");
  return _("What is traced here stands in the side view, which has no room now: fold the panel away with F9, or widen the window.");
}

/* Without a view there is nothing to trace in; NULL where there is one. */
static const char *
no_view_words (TrammelSheetCanvas *sheet)
{
  if (view_in_hand (sheet) != NULL)
    return NULL;
  return _("This sheet has no view in hand: what you draw clings to no line, counts as the right half on either side, and stays as "
           "it is when the plan is corrected; step View sets one to trace in.");
}

/* Nothing says how large the picture is; NULL where something does. */
static const char *
no_length_words (TrammelSheetCanvas *sheet)
{
  bool is_true = true;

  if (!trammel_plan_store_mapping (trammel_sheet_canvas_plan_store (sheet), NULL, NULL, &is_true) || is_true)
    return NULL;
  if (view_in_hand (sheet) == NULL)
    return _("No length is known yet: the size is a guess until step Known Length tells it.");
  return _("No length is known yet: the outline will be wrong in size until step Known Length tells one, and then goes along with it.");
}

bool
plan_remark_is_pressing (TrammelSheetCanvas *sheet)
{
  const Plan *plan = trammel_plan_store_plan (trammel_sheet_canvas_plan_store (sheet));

  return plan != NULL && plan->shown != PLAN_HIDDEN && (no_view_words (sheet) != NULL || no_length_words (sheet) != NULL);
}

/* None is to be missed for another. */
static char *
trace_words (TrammelSheetCanvas *sheet, bool side_is_seen, Units units)
{
  const char *side = side_is_seen ? NULL : side_words (sheet);
  g_autofree char *place = place_words (sheet, units);
  const char *const all[] = { no_view_words (sheet), no_length_words (sheet), place, side };
  GString *words = g_string_new (NULL);

  for (size_t i = 0; i < G_N_ELEMENTS (all); i++)
    if (all[i] != NULL)
      g_string_append_printf (words, "%s%s", words->len > 0 ? "\n" : "", all[i]);
  return g_string_free (words, words->len == 0);
}

/* A place that nobody knows can be clicked in the body's side view, once the plan has one. */
static const char *
click_words (TrammelSheetCanvas *sheet)
{
  const PlanView *view = view_in_hand (sheet);

  if (view == NULL || !view->for_now || view->shows == VIEW_BODY_SIDE || plan_view_can_be_placed (sheet)
      || trammel_plan_work_adds_view (trammel_plan_work_of (sheet)) || trammel_plan_work_places (trammel_plan_work_of (sheet)) != NULL)
    return NULL;
  return _("Does the sheet show the body from the side? Add that view with +: the place of this one can then be clicked in it.");
}

static char *
view_words (TrammelSheetCanvas *sheet, const Plan *plan, const MappingMisfit *misfit, bool is_true, Units units)
{
  char *size = is_true ? plan_misfit_size (plan, misfit, units) : NULL;

  if (size == NULL && is_true && plan->view_count == 0 && misfit->maker == MADE_BY_TRUE_SIZE)
    return plan_misfit_picture (plan, misfit, units);
  return size != NULL ? size : g_strdup (click_words (sheet));
}

/* A picture's size tells whether the figure typed can be: it is of use where that was typed. */
static char *
known_words (TrammelSession *session, const Plan *plan, PlanStep step, const MappingMisfit *misfit, bool is_true)
{
  const Units units = trammel_session_units (session);
  char *words = plan_misfit_span (trammel_session_aeroplane (session), plan);

  if (words == NULL)
    words = plan_misfit_words (plan, misfit, is_true, units);
  if (words == NULL && is_true && step == PLAN_STEP_LENGTH && plan->length_count < 2)
    words = plan_misfit_picture (plan, misfit, units);
  return words;
}

char *
plan_remark (TrammelSheetCanvas *sheet, bool side_is_seen)
{
  TrammelSession *session = trammel_sheet_canvas_session (sheet);
  TrammelPlanWork *work = trammel_plan_work_of (sheet);
  const Units units = trammel_session_units (session);
  const Plan *plan = plan_edit_plan (sheet);
  const PlanStep step = trammel_plan_work_step (work);
  MappingMisfit misfit;
  bool is_true;

  if (plan == NULL)
    return NULL;
  if (trammel_plan_work_note (work, plan) != NULL)
    return g_strdup (trammel_plan_work_note (work, plan));
  if (step == PLAN_STEP_TRACE)
    return trace_words (sheet, side_is_seen, units);
  if (trammel_session_is_previewing (session) || !trammel_plan_store_mapping (trammel_sheet_canvas_plan_store (sheet), NULL, &misfit, &is_true))
    return NULL;
  if (step == PLAN_STEP_VIEW)
    return view_words (sheet, plan, &misfit, is_true, units);
  return known_words (session, plan, step, &misfit, is_true);
}
