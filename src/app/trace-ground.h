#pragma once
#include "app/plan-store.h"

/** The plan and view in hand as a trace wants them, held for as long as a worker needs them. Nobody changes one; counted references, safe
 *  across threads. */
typedef struct {
  gatomicrefcount references;
  InkLevels *ink;
  Placing placing;
  char *view;                /* its id */
  ViewShows shows;
  ViewSide side;
  double z;                  /* where its axis stands, mm up */
} TraceGround;

/** NULL while there is no line to be seen: no plan, no picture yet, no view, or a plan that is hidden. */
TraceGround *trace_ground_new   (TrammelPlanStore *store);
TraceGround *trace_ground_ref   (TraceGround *self);      /* one reference more, the caller's; not NULL */
void         trace_ground_unref (TraceGround *self);      /* NULL is fine */

/** Whether what is traced is one half of what stands on both sides. */
bool   trace_ground_is_half (const TraceGround *self);
/** In the view's own axes, mm: of a place on the picture, and of one on the sheet. */
Point  trace_ground_own     (const TraceGround *self, Point px);
/** How many of the file's pixels are a mm, about, at a place on the picture. */
double trace_ground_scale   (const TraceGround *self, Point px);
