#include "app/tool-plan.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "app/plan-making.h"

static const char *
length_sentence (PlanTool *self)
{
  if (self->click_count == 0)
    return _("Click both ends of a length you know. Ctrl lets go of what is printed.");
  return self->click_count == 1 ? _("Click its other end.") : _("Type how long it is.");
}

static const char *
square_sentence (PlanTool *self)
{
  switch (trammel_plan_work_way (self->work)) {
    case PLAN_SQUARE_LEVEL:
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
view_sentence (PlanTool *self)
{
  if (trammel_plan_work_places (self->work) != NULL)
    return _("Click where the forward end of the view's axis stands, in the side view.");
  if (plan_tool_wanted (self) == 0)
    return _("Drag the plan along to where this view stands on the aeroplane.");
  return self->click_count == 0 ? _("Click the forward end of this view's axis.") : _("Click the after end of its axis.");
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
