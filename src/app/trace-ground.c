#include "trammel-config.h"
#include "app/trace-ground.h"
#include <math.h>

TraceGround *
trace_ground_new (TrammelPlanStore *store)
{
  const Plan *plan = trammel_plan_store_plan (store);
  const PlanView *view = trammel_plan_store_view (store);
  const InkLevels *ink = trammel_plan_store_ink (store);
  TraceGround *self;
  Placing placing;

  if (plan == NULL || view == NULL || view->id == NULL || ink == NULL || plan->shown == PLAN_HIDDEN
      || !trammel_plan_store_placing (store, &placing))
    return NULL;
  self = g_new0 (TraceGround, 1);
  *self = (TraceGround) { .ink = ink_levels_ref (ink), .placing = placing, .view = g_strdup (view->id), .shows = view->shows,
                          .side = view->side, .z = view->z };
  g_atomic_ref_count_init (&self->references);
  return self;
}

TraceGround *
trace_ground_ref (TraceGround *self)
{
  g_atomic_ref_count_inc (&self->references);
  return self;
}

void
trace_ground_unref (TraceGround *self)
{
  if (self == NULL || !g_atomic_ref_count_dec (&self->references))
    return;
  ink_levels_unref (self->ink);
  g_free (self->view);
  g_free (self);
}

bool
trace_ground_is_half (const TraceGround *self)
{
  return self->shows != VIEW_FIN && self->shows != VIEW_BODY_SIDE;
}

Point
trace_ground_own (const TraceGround *self, Point px)
{
  return axis_frame_own (&self->placing.frame, mapping_to_mm (&self->placing.mapping, px));
}

double
trace_ground_scale (const TraceGround *self, Point px)
{
  return 1 / mapping_mm_per_px (&self->placing.mapping, px, (Point) { 1, 0 });
}
