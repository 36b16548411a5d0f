#include "app/sheet-canvas-private.h"
#include "app/theme.h"

/* The plan in hand, where there is something of it to be seen. */
static bool
scene_plan (TrammelSheetCanvas *self, SheetPlan *shown)
{
  const Plan *plan = trammel_plan_store_plan (self->plans);
  const InkLevels *ink = trammel_plan_store_ink (self->plans);

  if (plan == NULL || ink == NULL || plan->shown == PLAN_HIDDEN) {
    sheet_plan_copy_clear (&self->plan_copy);     /* it would hold on to a picture that nobody sees */
    return false;
  }
  *shown = (SheetPlan) { .ink = ink, .strength = plan->strength / 100, .copy = &self->plan_copy,
                         .device_scale = gtk_widget_get_scale_factor (GTK_WIDGET (self)) };
  for (int i = 0; i < 3 && plan->shown == PLAN_SCANNED; i++)
    shown->scanned[i] = trammel_plan_store_scanned (self->plans, i);
  return trammel_plan_store_placing (self->plans, &shown->placing);
}

Look
sheet_canvas_look (TrammelSheetCanvas *self)
{
  const Plan *plan = trammel_plan_store_plan (self->plans);
  const bool scan = plan != NULL && plan->shown == PLAN_SCANNED && trammel_plan_store_scanned (self->plans, 0) != NULL;

  return scan ? theme_look_over_scan (GTK_WIDGET (self)) : theme_look (GTK_WIDGET (self));
}

bool
sheet_canvas_may_refit (TrammelSheetCanvas *self)
{
  return trammel_sheet_canvas_scene (self).plan == NULL || trammel_sheet_canvas_has_plan_alone (self);
}

void
sheet_canvas_plan_changed (TrammelSheetCanvas *self)
{
  if (self->fits && !self->pressed && !self->tool->kind->draws && trammel_sheet_canvas_has_plan_alone (self))
    trammel_sheet_canvas_fit (self, false);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

SheetScene
trammel_sheet_canvas_scene (TrammelSheetCanvas *self)
{
  TrammelSettings *settings = trammel_session_settings (self->session);

  return (SheetScene) {
    .look = &self->look, .units = trammel_session_units (self->session), .view = &self->view,
    .figures = trammel_session_figures (self->session), .selection = trammel_session_selection (self->session), .overlay = &self->overlay,
    .plan = scene_plan (self, &self->plan_shown) ? &self->plan_shown : NULL,
    .show_grid = trammel_settings_flag (settings, SHOW_GRID), .show_names = trammel_settings_flag (settings, SHOW_NAMES),
    .show_figures = trammel_settings_flag (settings, SHOW_FIGURES),
  };
}
