#include "app/tool-plan.h"
#include <math.h>
#include "app/plan-edit.h"
#include "app/plan-field.h"
#include "app/plan-making.h"

/* px on the screen: how near a figure a click means it; ms after which what the arrow keys moved is one step. */
static const double FIGURE_PX = 20;
/* px of the file: corners no further apart than this are one, found from two sides. */
static const double SAME_CORNER_PX = 2;
enum { NUDGE_MS = 700 };

void
plan_tool_hold_mark (PlanTool *self, const ToolEvent *from)
{
  const Plan *plan = plan_edit_plan (self->tool.sheet);
  Point at;

  self->held = (Point) { 0, 0 };
  if (plan != NULL && plan_mark_place (plan, self->pressed, &at))
    self->held = point_sub (at, placing_px (&self->placing, from->place));
}

/* As far as the hand moves; to a printed corner or end nearby, but not back to the one that the mark was on: that would take small moves
 * away. */
static Point
dragged_to (PlanTool *self, const Plan *plan, const ToolEvent *event)
{
  const Point free = point_add (placing_px (&self->placing, event->place), self->held);
  ToolEvent carried = *event;
  Point at, px;

  carried.place = placing_sheet (&self->placing, free);
  px = plan_tool_aim (self, &carried);
  if (plan_mark_place (plan, self->pressed, &at) && point_distance (px, at) < SAME_CORNER_PX)
    return free;
  return px;
}

void
plan_tool_drag_mark (PlanTool *self, const ToolEvent *event)
{
  const Plan *plan = plan_edit_plan (self->tool.sheet);
  const Point px = plan != NULL ? dragged_to (self, plan, event) : (Point) { NAN, NAN };

  if (plan == NULL || !point_is_finite (px))
    return;
  plan_tool_clear_draft (self);
  self->draft = plan_with_mark_at (plan, self->pressed, px, plan_edit_click_sigma (self->tool.sheet, px));
  self->aim = px;
  self->aims = true;
}

/* The picture is made true anew when the hand lets go, not under it. */
void
plan_tool_drop_mark (PlanTool *self)
{
  Plan *draft = g_steal_pointer (&self->draft);

  if (draft == NULL)
    return;
  if (plan_making_is_offered (self->tool.sheet))
    plan_edit_propose (self->tool.sheet, draft);
  else
    plan_edit_do (self->tool.sheet, draft, plan_edit_moved_label (self->pressed.kind));
}

/* Put there by hand, a view's place is a guess no more; back where it was before the hand came, it is what it was. */
static void
view_stands (PlanTool *self, Plan *moved, size_t index, double x)
{
  const Aeroplane *settled = trammel_session_settled (trammel_sheet_canvas_session (self->tool.sheet));
  const PlanView *was = aeroplane_view_by_id (settled, moved->views[index].id, NULL);

  moved->views[index].x = x;
  moved->views[index].for_now = was != NULL && was->for_now && was->x == x;
}

void
plan_tool_drag_view (PlanTool *self, double dx)
{
  const Plan *plan = plan_edit_plan (self->tool.sheet);
  size_t view;
  Plan *moved;

  if (!plan_tool_view (self, &view))
    return;
  moved = (Plan *) piece_dup (&plan->piece);
  /* From where it stood in steps of a tenth: no other place is where it stood. */
  view_stands (self, moved, view, fabs (dx) < 0.05 ? self->stood : round ((self->stood + dx) * 10) / 10);
  plan_edit_preview (self->tool.sheet, moved);
}

/* All marks shown, one after the other, then none. */
bool
plan_tool_walk (PlanTool *self, bool back)
{
  const Plan *plan = plan_tool_plan (self);
  const PlanMark none = { .kind = PLAN_MARK_NONE };
  g_autoptr (GArray) all = g_array_new (FALSE, FALSE, sizeof (PlanMark));
  guint now = 0;

  g_array_append_val (all, none);
  for (size_t k = 0; plan != NULL && k < self->marks.kind_count; k++)
    for (size_t i = 0; i < plan_mark_count (plan, self->marks.kinds[k]); i++) {
      const PlanMark mark = plan_mark_nth (plan, self->marks.kinds[k], i);

      now = plan_mark_equal (mark, self->chosen) ? all->len : now;
      g_array_append_val (all, mark);
    }
  self->chosen = g_array_index (all, PlanMark, (now + (back ? all->len - 1 : 1)) % all->len);
  plan_tool_show (self);
  return all->len > 1;
}

void
plan_tool_end_nudge (PlanTool *self, bool keep)
{
  TrammelSession *session = trammel_sheet_canvas_session (self->tool.sheet);

  if (self->nudging == 0)
    return;
  g_clear_handle_id (&self->nudging, g_source_remove);
  if (!trammel_session_is_previewing (session))
    return;
  if (keep)
    trammel_session_settle (session, plan_edit_moved_label (self->chosen.kind));
  else
    trammel_session_abandon (session);
}

static gboolean
nudge_rests (gpointer data)
{
  PlanTool *self = data;

  plan_tool_end_nudge (self, true);
  return G_SOURCE_REMOVE;
}

static bool
arrow (guint keyval, Point *direction)
{
  switch (keyval) {
    case GDK_KEY_Up:    case GDK_KEY_KP_Up:    *direction = (Point) { -1, 0 }; return true;
    case GDK_KEY_Down:  case GDK_KEY_KP_Down:  *direction = (Point) { 1, 0 };  return true;
    case GDK_KEY_Left:  case GDK_KEY_KP_Left:  *direction = (Point) { 0, -1 }; return true;
    case GDK_KEY_Right: case GDK_KEY_KP_Right: *direction = (Point) { 0, 1 };  return true;
    default: return false;
  }
}

/* By a pixel of the picture; a view by the sheet's own step. */
static Plan *
nudged (PlanTool *self, const Plan *plan, Point direction, double times)
{
  Point px, sheet;
  Plan *moved;

  if (self->chosen.kind == PLAN_MARK_STANDS) {
    moved = (Plan *) piece_dup (&plan->piece);
    view_stands (self, moved, self->chosen.index,
                 moved->views[self->chosen.index].x + direction.x * times * trammel_sheet_canvas_key_step (self->tool.sheet));
    return moved;
  }
  if (!plan_mark_place (plan, self->chosen, &px))
    return NULL;
  sheet = placing_sheet (&self->placing, px);
  sheet = point_add (sheet, point_scale (direction, times / plan_edit_px_per_mm (self->tool.sheet, px)));
  return plan_with_mark_at (plan, self->chosen, placing_px (&self->placing, sheet), plan_edit_click_sigma (self->tool.sheet, px));
}

bool
plan_tool_nudge (PlanTool *self, guint keyval, GdkModifierType state)
{
  const Plan *plan = plan_edit_plan (self->tool.sheet);
  Point direction;

  if (plan == NULL || self->chosen.kind == PLAN_MARK_NONE || (state & (GDK_CONTROL_MASK | GDK_ALT_MASK)) || !arrow (keyval, &direction))
    return false;
  if (plan_making_is_offered (self->tool.sheet) && self->nudging == 0) {
    plan_edit_propose (self->tool.sheet, nudged (self, plan, direction, state & GDK_SHIFT_MASK ? 10 : 1));
    return true;
  }
  g_clear_handle_id (&self->nudging, g_source_remove);
  if (plan_edit_preview (self->tool.sheet, nudged (self, plan, direction, state & GDK_SHIFT_MASK ? 10 : 1)))
    self->nudging = g_timeout_add (NUDGE_MS, nudge_rests, self);
  return true;
}

bool
plan_tool_remove (PlanTool *self)
{
  const Plan *plan = plan_edit_plan (self->tool.sheet);
  const PlanMarkKind kind = self->chosen.kind;
  Plan *less = plan != NULL ? plan_without_mark (plan, self->chosen) : NULL;

  if (less == NULL)
    return false;
  self->chosen.kind = PLAN_MARK_NONE;
  if (plan_making_is_offered (self->tool.sheet)) {
    piece_unref (&less->piece);
    trammel_session_abandon (trammel_sheet_canvas_session (self->tool.sheet));
  } else
    plan_edit_do (self->tool.sheet, less, plan_edit_removed_label (kind));
  return true;
}

/* The middle between two marks on the screen; false when one is nowhere. */
static bool
middle_of (PlanTool *self, PlanMark a, PlanMark b, Point *middle)
{
  const SheetView *view = trammel_sheet_canvas_view (self->tool.sheet);
  Point from, to;

  if (!plan_marks_screen (&self->marks, view, a, &from) || !plan_marks_screen (&self->marks, view, b, &to))
    return false;
  *middle = point_mix (from, to, 0.5);
  return true;
}

/* The field numbered so of those the marks shown have, and where its figure is. */
static bool
field_nth (PlanTool *self, size_t number, PlanField *field, Point *middle)
{
  const Plan *plan = plan_tool_plan (self);
  const bool corners = self->marks.kind_count > 0 && self->marks.kinds[0] == PLAN_MARK_CORNER;
  size_t ends[2];

  if (corners && number < 2 && plan_marks_side (plan, (int) number, ends)) {
    field->kind = number == 0 ? PLAN_FIELD_WIDTH : PLAN_FIELD_HEIGHT;
    return middle_of (self, (PlanMark) { PLAN_MARK_CORNER, 0, ends[0] }, (PlanMark) { PLAN_MARK_CORNER, 0, ends[1] % 4 }, middle);
  }
  if (self->marks.kind_count > 0 && self->marks.kinds[0] == PLAN_MARK_LENGTH && number < plan->length_count) {
    *field = (PlanField) { .kind = PLAN_FIELD_LENGTH, .index = number };
    return middle_of (self, (PlanMark) { PLAN_MARK_LENGTH, number, 0 }, (PlanMark) { PLAN_MARK_LENGTH, number, 1 }, middle);
  }
  return false;
}

static bool
open_chosen (PlanTool *self)
{
  PlanField field = { .kind = PLAN_FIELD_STANDS, .index = self->chosen.index };
  Point at;

  if (self->chosen.kind == PLAN_MARK_STANDS || self->chosen.kind == PLAN_MARK_AXIS) {
    const PlanMark fore = { PLAN_MARK_AXIS, self->chosen.index, 0 };

    if (!plan_marks_screen (&self->marks, trammel_sheet_canvas_view (self->tool.sheet), fore, &at))
      return false;
  } else if ((self->chosen.kind != PLAN_MARK_LENGTH && self->chosen.kind != PLAN_MARK_CORNER)
             || !field_nth (self, self->chosen.kind == PLAN_MARK_CORNER ? self->chosen.end % 2 : self->chosen.index, &field, &at))
    return false;
  plan_field_open (self->tool.sheet, field, at);
  return true;
}

bool
plan_tool_open_field (PlanTool *self, const Point *screen)
{
  PlanField field = { .kind = PLAN_FIELD_LENGTH };
  Point at;

  if (plan_tool_plan (self) == NULL)
    return false;
  if (screen == NULL)
    return open_chosen (self);
  for (size_t i = 0; field_nth (self, i, &field, &at); i++)
    if (point_distance (at, *screen) <= FIGURE_PX) {
      plan_field_open (self->tool.sheet, field, at);
      return true;
    }
  return false;
}

void
plan_tool_ask_width (PlanTool *self)
{
  PlanField field = { .kind = PLAN_FIELD_WIDTH };
  Point at;

  plan_tool_show (self);
  if (plan_making_is_offered (self->tool.sheet) && field_nth (self, 0, &field, &at))
    plan_field_open (self->tool.sheet, field, at);
}
