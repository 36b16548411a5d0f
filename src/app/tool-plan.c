#include "app/tool-plan.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "app/plan-edit.h"
#include "app/plan-look.h"
#include "app/plan-making.h"
#include "app/sheet-field.h"
#include "plan/ink-corner.h"

/* mm: strokes of lettering are shorter. px on the screen: how far off a printed corner or end is reached, and a mark. */
static const double LETTERING = 4.5, CORNER_PX = 10, MARK_PX = 12, FINGER_PX = 22;

static TrammelPlanStore *
plan_tool_plans (PlanTool *self)
{
  return trammel_sheet_canvas_plan_store (self->tool.sheet);
}

const Plan *
plan_tool_plan (PlanTool *self)
{
  return self->draft != NULL ? self->draft : plan_edit_plan (self->tool.sheet);
}

void
plan_tool_clear_draft (PlanTool *self)
{
  Plan *draft = g_steal_pointer (&self->draft);

  if (draft != NULL)
    piece_unref (&draft->piece);
}

bool
plan_tool_view (PlanTool *self, size_t *index)
{
  const Plan *plan = plan_edit_plan (self->tool.sheet);
  const PlanView *view = trammel_plan_store_view (plan_tool_plans (self));

  if (plan == NULL || view == NULL)
    return false;
  *index = (size_t) (view - plan->views);
  return true;
}

/* What is shown at each step, in the order of Tab. */
static void
plan_tool_choose_kinds (PlanTool *self)
{
  static const PlanMarkKind length[] = { PLAN_MARK_LENGTH }, level[] = { PLAN_MARK_LEVEL }, corners[] = { PLAN_MARK_CORNER },
                            straight[] = { PLAN_MARK_STRAIGHT, PLAN_MARK_CORNER }, axis[] = { PLAN_MARK_AXIS, PLAN_MARK_STANDS };
  static const PlanMarkKind *const ways[] = { level, corners, straight };
  const PlanStep step = trammel_plan_work_step (self->work);
  const PlanSquare way = trammel_plan_work_way (self->work);

  self->marks.kinds = step == PLAN_STEP_LENGTH ? length : step == PLAN_STEP_SQUARE ? ways[way] : axis;
  self->marks.kind_count = step == PLAN_STEP_TRACE ? 0 : step == PLAN_STEP_VIEW || self->marks.kinds == straight ? 2 : 1;
}

static bool
plan_tool_is_asking (PlanTool *self)
{
  return self->click_count > 0 && self->click_count == plan_tool_wanted (self)
         && trammel_sheet_field_is_open (trammel_sheet_canvas_field (self->tool.sheet));
}

/* The place under the hand enlarged, while it is about to be marked. */
static void
plan_tool_magnify (PlanTool *self)
{
  const bool dragged = self->draft != NULL && self->drags;
  const bool marks = self->aims && !plan_tool_is_asking (self) && (dragged || plan_tool_wanted (self) > 0);

  trammel_sheet_canvas_magnify (self->tool.sheet, marks ? placing_sheet (&self->placing, self->aim) : (Point) { NAN, NAN });
}

static void
plan_tool_hint (PlanTool *self)
{
  const char *hint = plan_tool_sentence (self);

  if (trammel_sheet_canvas_tool (self->tool.sheet) == &self->tool && g_strcmp0 (trammel_sheet_canvas_hint (self->tool.sheet), hint) != 0)
    trammel_sheet_canvas_set_hint (self->tool.sheet, hint);
}

void
plan_tool_show (PlanTool *self)
{
  SheetOverlay *overlay = trammel_sheet_canvas_overlay (self->tool.sheet);
  const Plan *plan = plan_tool_plan (self);
  const PlanView *view = trammel_plan_store_view (plan_tool_plans (self));
  const size_t wanted = plan_tool_wanted (self);
  Point at;

  if (self->draft == NULL && !trammel_plan_store_placing (plan_tool_plans (self), &self->placing))
    plan = NULL;
  plan_tool_choose_kinds (self);
  if (plan == NULL || (self->chosen.kind == PLAN_MARK_STANDS ? self->chosen.index >= plan->view_count
                                                              : !plan_mark_place (plan, self->chosen, &at)))
    self->chosen.kind = PLAN_MARK_NONE;
  self->marks.plan = plan;
  self->marks.placing = self->placing;
  self->marks.chosen = self->chosen;
  self->marks.view = view != NULL ? view->id : NULL;
  self->marks.pending_kind = plan_tool_pending (self);
  memcpy (self->marks.pending, self->clicks, sizeof self->clicks);
  self->marks.pending_count = self->click_count;
  if (self->aims && self->draft == NULL && wanted > 0 && self->click_count < wanted)
    self->marks.pending[self->marks.pending_count++] = self->aim;
  overlay->plan_marks = plan != NULL ? &self->marks : NULL;
  plan_tool_magnify (self);
  plan_tool_hint (self);
  trammel_sheet_canvas_refresh (self->tool.sheet);
}

static bool
plan_tool_snaps (PlanTool *self, const ToolEvent *event)
{
  return !event->loose && trammel_settings_flag (trammel_session_settings (trammel_sheet_canvas_session (self->tool.sheet)), SNAPPING);
}

/* Shift holds the way from the last click straight along or across. */
static Point
plan_tool_held (PlanTool *self, const ToolEvent *event)
{
  Point from;

  if (!event->shift || self->click_count == 0 || self->click_count >= plan_tool_wanted (self))
    return event->place;
  from = placing_sheet (&self->placing, self->clicks[self->click_count - 1]);
  if (fabs (event->place.x - from.x) >= fabs (event->place.y - from.y))
    return (Point) { event->place.x, from.y };
  return (Point) { from.x, event->place.y };
}

Point
plan_tool_aim (PlanTool *self, const ToolEvent *event)
{
  const double scale = trammel_sheet_canvas_view (self->tool.sheet)->scale;
  const Point px = placing_px (&self->placing, plan_tool_held (self, event));
  const double px_per_mm = plan_edit_px_per_mm (self->tool.sheet, px);
  const Ink *ink = plan_edit_ink (self->tool.sheet);
  Point corner;

  self->loose = !plan_tool_snaps (self, event);
  if (ink == NULL || self->loose || event->shift || !plan_tool_catches (self)
      || !ink_line_corner (ink, px, CORNER_PX / scale * px_per_mm, LETTERING * px_per_mm, &corner))
    return px;
  return corner;
}

/* A length whose field was left untyped is none. */
static void
plan_tool_drop_unasked (PlanTool *self)
{
  if (self->click_count > 0 && self->click_count == plan_tool_wanted (self) && !plan_tool_is_asking (self))
    self->click_count = 0;
}

static void
plan_press (Tool *tool, const ToolEvent *event)
{
  PlanTool *self = (PlanTool *) tool;
  const double catch_px = event->finger ? FINGER_PX : MARK_PX;

  plan_tool_end_nudge (self, true);
  plan_tool_drop_unasked (self);
  self->drags = false;
  plan_tool_show (self);
  self->pressed = self->click_count == 0 && trammel_plan_work_places (self->work) == NULL
                  ? plan_marks_hit (&self->marks, trammel_sheet_canvas_view (tool->sheet), (Point) { event->x, event->y }, catch_px)
                  : (PlanMark) { .kind = PLAN_MARK_NONE };
}

static void
plan_click (Tool *tool, const ToolEvent *event)
{
  PlanTool *self = (PlanTool *) tool;
  const Point screen = { event->x, event->y };

  /* A new view's axis may lie on another's: the body's on the wing's. */
  if (trammel_plan_work_step (self->work) == PLAN_STEP_VIEW && plan_tool_wanted (self) == 2)
    self->pressed.kind = PLAN_MARK_NONE;
  self->chosen = self->pressed;
  if (self->pressed.kind == PLAN_MARK_NONE && (self->click_count > 0 || !plan_tool_open_field (self, &screen)))
    plan_tool_add_click (self, plan_tool_aim (self, event));
  plan_tool_show (self);
}

static void
plan_grab (Tool *tool, const ToolEvent *from)
{
  PlanTool *self = (PlanTool *) tool;
  size_t view;

  self->drags = true;
  self->from = from->place.x;
  self->chosen = self->pressed;
  if (self->pressed.kind != PLAN_MARK_NONE) {
    plan_tool_hold_mark (self, from);
    return;
  }
  /* Press, drag, release marks both ends in one; after a first click it is the next that is dragged. */
  if (plan_tool_wanted (self) == 2 && self->click_count == 0)
    plan_tool_add_click (self, plan_tool_aim (self, from));
  if (plan_tool_wanted (self) == 0 && plan_tool_view (self, &view))
    self->stood = plan_edit_plan (tool->sheet)->views[view].x;
}

static bool
plan_drags_view (PlanTool *self)
{
  size_t view;

  return self->pressed.kind == PLAN_MARK_NONE && trammel_plan_work_step (self->work) == PLAN_STEP_VIEW && plan_tool_wanted (self) == 0
         && plan_tool_view (self, &view);
}

static void
plan_pull (Tool *tool, const ToolEvent *event)
{
  PlanTool *self = (PlanTool *) tool;

  if (self->pressed.kind != PLAN_MARK_NONE)
    plan_tool_drag_mark (self, event);
  else if (plan_drags_view (self))
    plan_tool_drag_view (self, event->place.x - self->from);
  else {
    self->aim = plan_tool_aim (self, event);
    self->aims = true;
  }
  plan_tool_show (self);
}

static void
plan_drop (Tool *tool, const ToolEvent *event)
{
  PlanTool *self = (PlanTool *) tool;

  self->drags = false;
  if (self->pressed.kind != PLAN_MARK_NONE)
    plan_tool_drop_mark (self);
  else if (plan_drags_view (self))
    trammel_session_settle (trammel_sheet_canvas_session (tool->sheet), plan_edit_moved_label (PLAN_MARK_STANDS));
  else
    plan_tool_add_click (self, plan_tool_aim (self, event));
  plan_tool_show (self);
}

/* Beyond the picture there is nothing to mark, and on a mark that is there nothing new. */
static bool
plan_tool_aims_at (PlanTool *self, const ToolEvent *event)
{
  const Plan *plan = plan_tool_plan (self);
  const Point px = placing_px (&self->placing, event->place), screen = { event->x, event->y };
  Mapping mapping;

  if (plan == NULL || !trammel_plan_store_mapping (plan_tool_plans (self), &mapping, NULL, NULL))
    return false;
  /* The lens is centred in the picture. */
  if (!(px.x >= 0 && px.y >= 0 && px.x <= 2 * mapping.lens_centre.x && px.y <= 2 * mapping.lens_centre.y))
    return false;
  return self->click_count > 0 || trammel_plan_work_places (self->work) != NULL
         || plan_marks_hit (&self->marks, trammel_sheet_canvas_view (self->tool.sheet), screen, MARK_PX).kind == PLAN_MARK_NONE;
}

static void
plan_hover (Tool *tool, const ToolEvent *event)
{
  PlanTool *self = (PlanTool *) tool;

  plan_tool_drop_unasked (self);
  self->aims = plan_tool_aims_at (self, event);
  if (self->aims)
    self->aim = plan_tool_aim (self, event);
  plan_tool_show (self);
}

static void
plan_leave (Tool *tool)
{
  PlanTool *self = (PlanTool *) tool;

  self->aims = false;
  plan_tool_show (self);
}

static bool
plan_key (Tool *tool, guint keyval, GdkModifierType state)
{
  PlanTool *self = (PlanTool *) tool;

  if (plan_tool_nudge (self, keyval, state))
    return true;
  /* A Shift on its way to an arrow ends nothing. */
  if ((state & (GDK_CONTROL_MASK | GDK_ALT_MASK)) || (keyval >= GDK_KEY_Shift_L && keyval <= GDK_KEY_Hyper_R))
    return false;
  plan_tool_end_nudge (self, true);
  switch (keyval) {
    case GDK_KEY_Tab:          return plan_tool_walk (self, state & GDK_SHIFT_MASK);
    case GDK_KEY_ISO_Left_Tab: return plan_tool_walk (self, true);
    case GDK_KEY_Return: case GDK_KEY_KP_Enter:
      return plan_tool_finish_row (self) || plan_tool_open_field (self, NULL);
    case GDK_KEY_Delete: case GDK_KEY_KP_Delete: return plan_tool_remove (self);
    case GDK_KEY_BackSpace:    return plan_tool_take_back (tool) || plan_tool_remove (self);
    default:                   return false;
  }
}

static bool
plan_cancel (Tool *tool)
{
  PlanTool *self = (PlanTool *) tool;
  TrammelSession *session = trammel_sheet_canvas_session (tool->sheet);
  const bool busy = self->click_count > 0 || self->draft != NULL || self->nudging != 0 || trammel_session_is_previewing (session);
  const bool chose = self->chosen.kind != PLAN_MARK_NONE, places = trammel_plan_work_places (self->work) != NULL;
  const bool adds = trammel_plan_work_adds_view (self->work);

  if (plan_look_stop (tool->sheet))
    return true;
  plan_tool_end_nudge (self, false);
  plan_tool_clear_draft (self);
  self->click_count = 0;
  self->drags = false;
  if (!busy || plan_making_is_offered (tool->sheet))
    self->chosen.kind = PLAN_MARK_NONE;
  if (trammel_session_is_previewing (session))
    trammel_session_abandon (session);
  if (places)
    plan_making_place (tool->sheet, NULL);
  if (adds && !busy)
    plan_making_no_view (tool->sheet);
  plan_tool_show (self);
  return busy || chose || places || adds;
}

/* What has been clicked stays clicked, whatever else was done or undone; a drag of what is gone ends. */
static void
plan_changed (Tool *tool)
{
  PlanTool *self = (PlanTool *) tool;

  if (self->nudging != 0 && !trammel_session_is_previewing (trammel_sheet_canvas_session (tool->sheet)))
    g_clear_handle_id (&self->nudging, g_source_remove);
  if (plan_tool_is_asking (self) && plan_tool_pending (self) == PLAN_PENDING_LENGTH)
    self->click_count = 0;      /* it was typed */
  /* What is dragged is taken hold of anew by the hand's next move, in the plan as it is now. */
  plan_tool_clear_draft (self);
  /* The picture may have moved away from under the pointer. */
  self->aims = self->aims && self->drags;
  plan_tool_show (self);
}

static void
plan_step_changed (PlanTool *self)
{
  plan_tool_end_nudge (self, true);
  self->click_count = 0;
  self->chosen.kind = PLAN_MARK_NONE;
  plan_tool_show (self);
}

/* How the picture lay when it was last shown is not how it lies now. */
static void
plan_picture_changed (PlanTool *self)
{
  const Placing seen = self->placing;

  if (trammel_plan_work_step (self->work) == PLAN_STEP_VIEW)
    plan_making_follow (self->tool.sheet, &seen);
  plan_tool_show (self);
}

static void
plan_begin (Tool *tool)
{
  PlanTool *self = (PlanTool *) tool;
  bool is_true;

  self->work = trammel_plan_work_of (tool->sheet);
  self->work_changed = g_signal_connect_swapped (self->work, "changed", G_CALLBACK (plan_step_changed), self);
  self->plans_changed = g_signal_connect_swapped (plan_tool_plans (self), "changed", G_CALLBACK (plan_picture_changed), self);
  trammel_plan_work_end_view (self->work);
  trammel_plan_work_set_places (self->work, NULL);
  /* Another document's plan, or one that was just opened, begins at the beginning. */
  if (trammel_plan_store_mapping (plan_tool_plans (self), NULL, NULL, &is_true) && !is_true)
    trammel_plan_work_set_step (self->work, PLAN_STEP_LENGTH);
  else if (trammel_plan_work_step (self->work) == PLAN_STEP_TRACE)
    trammel_plan_work_set_step (self->work, PLAN_STEP_VIEW);
  plan_tool_show (self);
}

static void
plan_finish (Tool *tool)
{
  PlanTool *self = (PlanTool *) tool;

  plan_tool_end_nudge (self, true);
  plan_look_stop (tool->sheet);
  if (plan_making_is_offered (tool->sheet))
    trammel_session_abandon (trammel_sheet_canvas_session (tool->sheet));
  g_clear_signal_handler (&self->work_changed, self->work);
  g_clear_signal_handler (&self->plans_changed, plan_tool_plans (self));
  plan_tool_clear_draft (self);
}

static bool
plan_is_useful (const Aeroplane *aeroplane)
{
  return aeroplane_count (aeroplane, PIECE_PLAN) > 0 || aeroplane_piece_count (aeroplane) == 0;
}

const ToolKind tool_plan = {
  .word = "plan", .help = "plan", .name = N_("Plan"), .letter = N_("T"), .cursor = "crosshair", .group = 4, .draws = true,
  .size = sizeof (PlanTool),
  .hint = N_("Click both ends of a length you know."), .is_useful = plan_is_useful,
  .begin = plan_begin, .press = plan_press, .click = plan_click, .grab = plan_grab, .pull = plan_pull, .drop = plan_drop,
  .hover = plan_hover, .leave = plan_leave, .key = plan_key, .take_back = plan_tool_take_back, .cancel = plan_cancel, .changed = plan_changed, .finish = plan_finish,
};
