#include "app/sheet-canvas-private.h"
#include "app/theme.h"

/* The plan in hand, where there is something of it to be seen. */
static bool
scene_plan (TrammelSheetCanvas *self, SheetPlan *shown)
{
  const Plan *plan = trammel_plan_store_plan (self->plans);
  const InkLevels *ink = trammel_plan_store_ink (self->plans);

  if (plan == NULL || ink == NULL || plan->shown == PLAN_HIDDEN) {
    sheet_plan_copy_clear (&self->plan_copy);     /* they would hold on to a picture that nobody sees */
    sheet_plan_copy_clear (&self->enlarged_copy);
    return false;
  }
  *shown = (SheetPlan) { .ink = ink, .strength = plan->strength / 100, .copy = &self->plan_copy,
                         .enlarged = &self->enlarged_copy, .device_scale = gtk_widget_get_scale_factor (GTK_WIDGET (self)) };
  for (int i = 0; i < 3 && plan->shown == PLAN_SCANNED; i++)
    shown->scanned[i] = trammel_plan_store_scanned (self->plans, i);
  return trammel_plan_store_placing (self->plans, &shown->placing);
}

/* While the Plan tool is in hand, or a printed line is followed: whoever traces compares. */
static bool
scene_print (TrammelSheetCanvas *self, SheetPrint *shown)
{
  const Plan *plan = trammel_plan_store_plan (self->plans);
  const PlanView *view = trammel_plan_store_view (self->plans);
  const bool traces = self->tool->kind == &tool_outline && plan != NULL && plan->cling && view != NULL;

  *shown = (SheetPrint) { .plan = plan, .view = view != NULL ? view->id : NULL, .bare = self->bare };
  return plan != NULL && (self->tool->kind == &tool_plan || traces || self->bare);
}

Look
sheet_canvas_look (TrammelSheetCanvas *self)
{
  const Plan *plan = trammel_plan_store_plan (self->plans);
  const bool scan = plan != NULL && plan->shown == PLAN_SCANNED && trammel_plan_store_scanned (self->plans, 0) != NULL;

  return scan ? theme_look_over_scan (GTK_WIDGET (self)) : theme_look (GTK_WIDGET (self));
}

bool
sheet_canvas_draws_over_plan (TrammelSheetCanvas *self)
{
  const ToolKind *kind = self->tool->kind;

  return kind == &tool_plan || kind == &tool_outline || kind == &tool_hinge || kind == &tool_former;
}

/* Not under a hand that draws over a plan; until its first press or key a plan that is worked on is still fitted, beneath its strip that
 * slides in. */
static bool
sheet_canvas_may_refit (TrammelSheetCanvas *self)
{
  return trammel_sheet_canvas_has_plan_alone (self)
         || (trammel_sheet_canvas_scene (self).plan != NULL) == sheet_canvas_draws_over_plan (self);
}

/* How far its upper left corner has moved in the window: a strip above opens and closes. */
static graphene_point_t
sheet_canvas_moved (TrammelSheetCanvas *self)
{
  GtkWidget *root = GTK_WIDGET (gtk_widget_get_root (GTK_WIDGET (self)));
  const graphene_point_t before = self->corner;

  if (root == NULL || !gtk_widget_compute_point (GTK_WIDGET (self), root, &GRAPHENE_POINT_INIT (0, 0), &self->corner))
    return GRAPHENE_POINT_INIT (0, 0);
  return GRAPHENE_POINT_INIT (self->corner.x - before.x, self->corner.y - before.y);
}

/* A sheet that was fitted stays fitted in a window of another size. Otherwise, and while a hand holds something, all of it stays where it is
 * on the screen: the side view beside it takes and gives width with every zoom. */
void
sheet_canvas_resized (TrammelSheetCanvas *self, int width, int height)
{
  const bool first = self->view.width == 0;
  const graphene_point_t moved = sheet_canvas_moved (self);

  if (self->view.width == width && self->view.height == height)
    return;
  self->view.width = width;
  self->view.height = height;
  if (self->fits && !self->pressed && sheet_canvas_may_refit (self)) {
    trammel_sheet_canvas_fit (self, false);
    return;
  }
  if (!first) {
    self->view.origin_x -= moved.x;
    self->view.origin_y -= moved.y;
    sheet_sight_keep_clear (self, moved.y);
  }
  sheet_canvas_emit_view (self);
}

void
sheet_canvas_plan_changed (TrammelSheetCanvas *self)
{
  sheet_cursor_follow_print (self);
  if (self->fits && !self->pressed && !self->tool->kind->draws && trammel_sheet_canvas_has_plan_alone (self))
    trammel_sheet_canvas_fit (self, false);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

SheetScene
trammel_sheet_canvas_scene (TrammelSheetCanvas *self)
{
  TrammelSettings *settings = trammel_session_settings (self->session);
  const bool has_plan = scene_plan (self, &self->plan_shown), prints = has_plan && scene_print (self, &self->print_shown);

  return (SheetScene) {
    .look = &self->look, .units = trammel_session_units (self->session), .view = &self->view,
    .figures = trammel_session_figures (self->session), .selection = trammel_session_selection (self->session), .overlay = &self->overlay,
    .offered = trammel_session_offered (self->session),
    .plan = has_plan ? &self->plan_shown : NULL, .print = prints ? &self->print_shown : NULL,
    .show_grid = trammel_settings_flag (settings, SHOW_GRID), .show_names = trammel_settings_flag (settings, SHOW_NAMES),
    .show_figures = trammel_settings_flag (settings, SHOW_FIGURES), .arranging = trammel_session_is_arranging (self->session),
  };
}

bool
sheet_canvas_shows_print (TrammelSheetCanvas *self)
{
  return trammel_sheet_canvas_scene (self).print != NULL;
}

void
trammel_sheet_canvas_magnify (TrammelSheetCanvas *self, Point place)
{
  self->overlay.has_magnified = point_is_finite (place) && trammel_settings_flag (trammel_session_settings (self->session), ENLARGED_VIEW);
  if (self->overlay.has_magnified)
    self->overlay.magnified = place;
}
