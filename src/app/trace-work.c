#include "trammel-config.h"
#include "app/trace-work.h"
#include "app/trace-unseen.h"
#include <math.h>

/* mm: an end no further from the axis lies on it. Two ends off it, no further apart than twice that, stand at one root. */
static const double ON_AXIS = 3;

/* One stretch */

typedef struct {
  TraceGround *ground;
  StretchRequest request;
  Stretch stretch;
  CoreStatus status;
  StretchDone done;
  gpointer data;
} StretchWork;

static void
stretch_work_free (gpointer data)
{
  StretchWork *work = data;

  if (work->status == CORE_OK)
    stretch_clear (&work->stretch);
  trace_ground_unref (work->ground);
  g_free (work);
}

static void
stretch_in_thread (GTask *task, gpointer source, gpointer data, GCancellable *cancellable)
{
  StretchWork *work = data;

  work->status = stretch_follow (ink_levels_ink (work->ground->ink), &work->request, &work->stretch);
  g_task_return_boolean (task, TRUE);
}

static void
stretch_arrived (GObject *source, GAsyncResult *result, gpointer nothing)
{
  StretchWork *work = g_task_get_task_data (G_TASK (result));

  work->done (work->status == CORE_OK ? &work->stretch : NULL, work->data);
}

void
stretch_ask (TraceGround *ground, const StretchRequest *request, StretchDone done, gpointer data)
{
  StretchWork *work = g_new0 (StretchWork, 1);
  g_autoptr (GTask) task = g_task_new (NULL, NULL, stretch_arrived, NULL);

  *work = (StretchWork) { .ground = trace_ground_ref (ground), .request = *request, .status = CORE_CANCELLED, .done = done, .data = data };
  work->request.mapping = &work->ground->placing.mapping;
  g_task_set_task_data (task, work, stretch_work_free);
  g_task_run_in_thread (task, stretch_in_thread);
}

/* An order */

static void
order_find_ends (TraceOrder *self, bool open)
{
  double sum = 0;
  const double first = trace_ground_own (self->ground, self->clicks[0]).y;
  const double last = trace_ground_own (self->ground, self->clicks[self->count - 1]).y;

  self->side = 1;
  if (self->ground->shows == VIEW_BODY_SIDE) {
    self->goes_round = !open;
    return;
  }
  for (size_t i = 0; i < self->count; i++)
    sum += trace_ground_own (self->ground, self->clicks[i]).y;
  self->side = sum < 0 ? -1 : 1;
  if (open)
    return;
  /* A body's nose may be blunt, and is then carried straight across to the axis. */
  if (fabs (last) <= ON_AXIS && (fabs (first) <= ON_AXIS || self->ground->shows == VIEW_BODY_TOP))
    self->ends_on_root = true;
  else if (fabs (first - last) <= 2 * ON_AXIS && fmin (self->side * first, self->side * last) > 0) {
    self->ends_on_root = true;
    /* A body has no root: its blunt ends go straight across to the axis. */
    if (self->ground->shows != VIEW_BODY_TOP)
      self->root = round (self->side * (first + last) / 2 * 10) / 10;
  }
}

TraceOrder *
trace_order_new (TraceGround *ground, const Point clicks[], const bool drawn[], size_t count, double click_sigma, bool open)
{
  TraceOrder *self = g_new0 (TraceOrder, 1);

  g_atomic_ref_count_init (&self->references);
  self->ground = trace_ground_ref (ground);
  self->clicks = g_memdup2 (clicks, count * sizeof *clicks);
  self->drawn = g_memdup2 (drawn, (count - 1) * sizeof *drawn);
  self->count = count;
  self->click_sigma = click_sigma;
  order_find_ends (self, open);
  return self;
}

TraceOrder *
trace_order_ref (TraceOrder *self)
{
  g_atomic_ref_count_inc (&self->references);
  return self;
}

void
trace_order_unref (TraceOrder *self)
{
  if (self == NULL || !g_atomic_ref_count_dec (&self->references))
    return;
  trace_ground_unref (self->ground);
  g_free (self->clicks);
  g_free (self->drawn);
  g_free (self);
}

/* A whole outline */

typedef struct {
  TraceOrder *order;
  Outline *other;
  double tolerance;
  GCancellable *cancellable;
  TraceResult result;
  TraceDone done;
  gpointer data;
} TraceWork;

static void
trace_work_free (gpointer data)
{
  TraceWork *work = data;

  trace_order_unref (work->order);
  g_clear_pointer (&work->other, outline_unref);
  g_clear_pointer (&work->result.outline, outline_unref);
  g_clear_pointer (&work->result.mean, outline_unref);
  g_clear_pointer (&work->result.unseen, g_array_unref);
  g_object_unref (work->cancellable);
  g_free (work);
}

static bool
trace_goes_on (double done, void *data)
{
  return !g_cancellable_is_cancelled (data);
}

/* The worse of what it passes and how far it goes aside. A body's fairings do that too: from the side it is a fin that is told. */
static PassedClick
to_look_at (const TraceOrder *order, const Trace *trace)
{
  const double passed = trace_astray (trace->astray, order->click_sigma * trace->mm_per_px);
  const bool body = order->ground->shows == VIEW_BODY_TOP || order->ground->shows == VIEW_BODY_SIDE;

  if (order->ground->shows == VIEW_BODY_SIDE && trace->spur > passed)
    return (PassedClick) { trace->spur, trace->spur_at, true };
  if (!body && trace->aside > passed)
    return (PassedClick) { trace->aside, trace->aside_at, true };
  return (PassedClick) { passed, trace->astray_at, false };
}

static void
trace_in_thread (GTask *task, gpointer source, gpointer data, GCancellable *cancellable)
{
  TraceWork *work = data;
  const TraceOrder *order = work->order;
  TraceRequest request = {
    .mapping = &order->ground->placing.mapping, .frame = order->ground->placing.frame, .clicks = order->clicks, .click_count = order->count,
    .drawn = order->drawn, .click_sigma = order->click_sigma, .ends_on_axis = order->ends_on_root, .root = order->root,
    .goes_round = order->goes_round, .is_body = order->ground->shows == VIEW_BODY_TOP, .tolerance = work->tolerance,
    .goes_on = trace_goes_on, .data = work->cancellable };
  Trace trace;

  request.frame.side *= order->side;
  work->result.status = trace_outline (ink_levels_ink (order->ground->ink), &request, &trace);
  if (work->result.status == CORE_OK) {
    work->result.outline = outline_ref (trace.outline);
    work->result.sigma = trace.sigma;
    work->result.lost = trace.lost;
    work->result.passed = to_look_at (order, &trace);
    if (work->other != NULL)
      halves_mean (work->result.outline, work->other, isnan (work->tolerance) ? trace_usual_tolerance (trace.mm_per_px) : work->tolerance,
                   &work->result.mean, &work->result.difference);
    if (work->result.lost > TRACE_GAPS) {
      double share;

      /* What is said is what is shown: looked at again along the outline, most of it is often there. */
      work->result.unseen = trace_unseen (order, work->result.outline, work->cancellable, &share);
      work->result.lost = isnan (share) ? work->result.lost : share;
    }
    trace_clear (&trace);
  }
  g_task_return_boolean (task, TRUE);
}

static void
trace_arrived (GObject *source, GAsyncResult *result, gpointer nothing)
{
  TraceWork *work = g_task_get_task_data (G_TASK (result));

  if (g_cancellable_is_cancelled (work->cancellable))
    work->result.status = CORE_CANCELLED;
  work->done (&work->result, work->data);
}

void
trace_ask (TraceOrder *order, const Outline *other, double tolerance, GCancellable *cancellable, TraceDone done, gpointer data)
{
  TraceWork *work = g_new0 (TraceWork, 1);
  g_autoptr (GTask) task = g_task_new (NULL, NULL, trace_arrived, NULL);

  *work = (TraceWork) { .order = trace_order_ref (order), .other = other != NULL ? outline_ref ((Outline *) other) : NULL,
                        .tolerance = tolerance, .cancellable = g_object_ref (cancellable), .done = done, .data = data };
  g_task_set_task_data (task, work, trace_work_free);
  g_task_run_in_thread (task, trace_in_thread);
}
