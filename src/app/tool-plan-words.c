#include "app/tool-plan.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "app/plan-making.h"
#include "app/plan-view-edit.h"

static bool
is_true_page (PlanTool *self)
{
  bool is_true = false;

  return trammel_plan_store_mapping (trammel_sheet_canvas_plan_store (self->tool.sheet), NULL, NULL, &is_true) && is_true;
}

static const char *
length_sentence (PlanTool *self)
{
  const Plan *plan = plan_tool_plan (self);

  if (self->click_count == 0 && plan->has_corners)
    return _("The rectangle gives the scale, and a length only checks it: click both ends of one, or go on with View.");
  if (self->click_count == 0 && plan->length_count > 1)
    return _("Click both ends of another length you know, or go on with Square Up.");
  if (self->click_count == 0 && plan->length_count == 1)
    return _("Click another length across the first: paper often stretches by half a per cent. Or go on with Square Up.");
  if (self->click_count == 0 && is_true_page (self))
    return _("Click a length you know to check the page, or go on with View.");
  if (self->click_count == 0)
    return _("Click both ends of a length you know. Ctrl lets go of what is printed.");
  return self->click_count == 1 ? _("Click its other end.") : _("Type how long it is.");
}

static const char *
square_sentence (PlanTool *self)
{
  switch (trammel_plan_work_way (self->work)) {
    case PLAN_SQUARE_LEVEL:
      if (plan_tool_plan (self)->has_level && self->click_count == 0)
        return _("The plan is level by that line: drag along another to level it anew, or go on with View.");
      return _("Drag along anything printed straight, level or upright: the plan turns when you let go.");
    case PLAN_SQUARE_STRAIGHT:
      return self->click_count < 3 ? _("Click three places or more along a line that is straight on the paper.")
                                   : _("Click more places along it, or press Return.");
    default:
      if (plan_making_is_offered (self->tool.sheet))
        return _("Type width and height on two of its sides; Return takes it, Esc puts it back.");
      return plan_tool_wanted (self) > 0 ? _("Click the four corners of a rectangle you know, one after the other round it.")
                                         : _("Drag a corner, or click a side's figure. Delete removes the rectangle.");
  }
}

static const char *
axis_sentence (ViewShows shows)
{
  switch (shows) {
    case VIEW_WING:      return _("Click the forward end of the wing's axis, the line its two halves meet at.");
    case VIEW_TAILPLANE: return _("Click the forward end of the tailplane's axis, the line its two halves meet at.");
    case VIEW_FOREPLANE: return _("Click the forward end of the foreplane's axis, the line its two halves meet at.");
    case VIEW_FIN:       return _("Click the forward end of the fin's axis, the line it stands on.");
    default:             return _("Click the forward end of the body's axis, the line along its middle.");
  }
}

static const char *
view_sentence (PlanTool *self)
{
  const PlanView *view = trammel_plan_store_view (trammel_sheet_canvas_plan_store (self->tool.sheet));

  if (plan_making_traced (self->tool.sheet, trammel_plan_work_places (self->work)) != NULL)
    return _("In the side view click where the root's leading edge stands.");
  if (trammel_plan_work_places (self->work) != NULL)
    return _("In the side view click where the forward end of the axis stands: the place that you clicked first on this view.");
  if (plan_tool_wanted (self) == 0 && view != NULL && view->for_now && plan_view_can_be_placed (self->tool.sheet))
    return _("It stands where such a part usually does: drag the plan to its own place, or click that in the side view.");
  if (plan_tool_wanted (self) == 0 && view != NULL && view->for_now)
    return _("It stands for now where such a part usually does: drag the plan along to its own place, or go on with Trace.");
  if (plan_tool_wanted (self) == 0)
    return _("Drag the plan along to where this view stands on the aeroplane, or go on with Trace.");
  if (self->click_count > 0)
    return _("Click the after end of its axis.");
  return axis_sentence (trammel_plan_work_next_view (self->work).shows);
}

const char *
plan_tool_sentence (PlanTool *self)
{
  if (plan_tool_plan (self) == NULL)
    return _("Open a plan to lie beneath the sheet.");
  switch (trammel_plan_work_step (self->work)) {
    case PLAN_STEP_LENGTH: return length_sentence (self);
    case PLAN_STEP_SQUARE: return square_sentence (self);
    default:               return view_sentence (self);
  }
}
