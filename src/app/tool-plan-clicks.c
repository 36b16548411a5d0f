#include "app/tool-plan.h"
#include "app/plan-edit.h"
#include "app/plan-field.h"
#include "app/plan-look.h"
#include "app/plan-making.h"
#include "app/sheet-field.h"

enum { LEAST_STRAIGHT = 3 };

size_t
plan_tool_wanted (PlanTool *self)
{
  size_t view;

  if (plan_tool_plan (self) == NULL)
    return 0;
  switch (trammel_plan_work_step (self->work)) {
    case PLAN_STEP_LENGTH:
      return 2;
    case PLAN_STEP_SQUARE:
      switch (trammel_plan_work_way (self->work)) {
        case PLAN_SQUARE_LEVEL:   return 2;
        case PLAN_SQUARE_CORNERS: return plan_tool_plan (self)->has_corners ? 0 : 4;
        default:                  return PLAN_PENDING_MOST - 1;
      }
    case PLAN_STEP_VIEW:
      if (trammel_plan_work_places (self->work) != NULL)
        return 1;
      return plan_tool_view (self, &view) && !trammel_plan_work_adds_view (self->work) ? 0 : 2;
    default:
      return 0;
  }
}

PlanPendingKind
plan_tool_pending (PlanTool *self)
{
  switch (trammel_plan_work_step (self->work)) {
    case PLAN_STEP_LENGTH:
      return PLAN_PENDING_LENGTH;
    case PLAN_STEP_SQUARE:
      switch (trammel_plan_work_way (self->work)) {
        case PLAN_SQUARE_LEVEL:   return PLAN_PENDING_LEVEL;
        case PLAN_SQUARE_CORNERS: return PLAN_PENDING_CORNERS;
        default:                  return PLAN_PENDING_STRAIGHT;
      }
    default:
      return PLAN_PENDING_AXIS;
  }
}

bool
plan_tool_catches (PlanTool *self)
{
  const PlanPendingKind pending = plan_tool_pending (self);

  return pending == PLAN_PENDING_LENGTH || pending == PLAN_PENDING_CORNERS;
}

static void
ask_length (PlanTool *self)
{
  const PlanField field = { .kind = PLAN_FIELD_NEW_LENGTH, .a = self->clicks[0], .b = self->clicks[1],
                            .sigmas = { self->sigmas[0], self->sigmas[1] } };
  const Point middle = placing_sheet (&self->placing, point_mix (self->clicks[0], self->clicks[1], 0.5));

  plan_field_open (self->tool.sheet, field, view_to_screen (trammel_sheet_canvas_view (self->tool.sheet), middle));
}

/* A length stays in the hand until it is typed. */
static void
complete (PlanTool *self)
{
  TrammelSheetCanvas *sheet = self->tool.sheet;
  const size_t count = self->click_count;
  Point clicks[PLAN_PENDING_MOST];

  memcpy (clicks, self->clicks, sizeof clicks);
  if (plan_tool_pending (self) == PLAN_PENDING_LENGTH) {
    ask_length (self);
    return;
  }
  self->click_count = 0;
  if (trammel_plan_work_places (self->work) != NULL) {
    plan_making_place (sheet, &clicks[0]);
    return;
  }
  switch (plan_tool_pending (self)) {
    case PLAN_PENDING_LEVEL:   plan_making_level (sheet, clicks[0], clicks[1], self->loose); break;
    case PLAN_PENDING_AXIS:    plan_making_view (sheet, clicks[0], clicks[1], self->loose); break;
    case PLAN_PENDING_CORNERS: plan_making_rectangle (sheet, clicks); plan_tool_ask_width (self); break;
    default:                   plan_making_straight (sheet, clicks, count);
  }
}

void
plan_tool_add_click (PlanTool *self, Point px)
{
  const size_t wanted = plan_tool_wanted (self);

  if (wanted == 0 || !point_is_finite (px))
    return;
  if (self->click_count >= wanted)
    self->click_count = 0;
  if (self->click_count > 0 && point_distance (self->clicks[self->click_count - 1], px) < 1)
    return;
  self->sigmas[self->click_count] = plan_edit_click_sigma (self->tool.sheet, px);
  self->clicks[self->click_count++] = px;
  if (self->click_count == wanted)
    complete (self);
  plan_tool_show (self);
}

bool
plan_tool_take_back (Tool *tool)
{
  PlanTool *self = (PlanTool *) tool;

  if (plan_look_stop (tool->sheet))
    return true;                  /* what they would have made does not come */
  if (self->click_count == 0)
    return false;
  if (self->click_count == plan_tool_wanted (self)) {      /* its length is being asked for */
    trammel_sheet_field_close (trammel_sheet_canvas_field (tool->sheet));
    gtk_widget_grab_focus (GTK_WIDGET (tool->sheet));
  }
  self->click_count--;
  plan_tool_show (self);
  return true;
}

bool
plan_tool_finish_row (PlanTool *self)
{
  if (plan_making_is_offered (self->tool.sheet)) {
    plan_making_accept (self->tool.sheet);
    return true;
  }
  if (plan_tool_plan (self) == NULL || plan_tool_pending (self) != PLAN_PENDING_STRAIGHT || self->click_count < LEAST_STRAIGHT)
    return false;
  complete (self);
  plan_tool_show (self);
  return true;
}
