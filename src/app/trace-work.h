#pragma once
#include <gio/gio.h>
#include "app/trace-ground.h"
#include "plan/halves.h"
#include "plan/stretch.h"
#include "plan/trace.h"

/** Following and tracing away from the main thread. Answers come in the main thread, later. */

/** Asks for one stretch. mapping is the ground's own; the request is copied. `done` gets NULL when there is no line to be had; the stretch
 *  is lent. */
typedef void (*StretchDone) (const Stretch *stretch, gpointer data);
/** Holds on to the ground until it has answered. */
void stretch_ask (TraceGround *ground, const StretchRequest *request, StretchDone done, gpointer data);

/** A whole outline to be traced. A value with arrays of its own, counted references: it is kept so that it can be traced again. */
typedef struct {
  gatomicrefcount references;
  TraceGround *ground;
  Point *clicks;             /* the file's px */
  bool *drawn;               /* count - 1: stretches by hand */
  size_t count;
  double click_sigma;        /* the file's px */
  bool ends_on_root;         /* both ends are carried to y = root */
  bool goes_round;
  double root;               /* mm off the axis; 0: on it */
  double side;               /* 1, or -1: traced on the other side of the axis than the view is placed by */
} TraceOrder;
/** Both arrays are copied; takes nothing. What follows from the places is filled in: where its ends go, unless it was left `open`, and on
 *  which side it lies. Clicks and click_sigma in pixels of the file. */
TraceOrder *trace_order_new   (TraceGround *ground, const Point clicks[], const bool drawn[], size_t count, double click_sigma, bool open);
TraceOrder *trace_order_ref   (TraceOrder *self);      /* one reference more, the caller's; not NULL */
void        trace_order_unref (TraceOrder *self);        /* NULL is fine */

/** What came of it: in the view's own axes, mm. */
typedef struct {
  CoreStatus status;
  Outline *outline;          /* NULL unless the status is CORE_OK */
  Outline *mean;             /* halfway to the other half, where there was one to be averaged with; NULL */
  HalvesDifference difference;
  double sigma, lost;        /* as Trace */
  PassedClick passed;        /* by that outline; or where it goes aside */
  GArray *unseen;            /* where no line is to be seen, as trace_unseen; NULL where that is not worth a word */
} TraceResult;
/** The share of an outline along which there may be no line before that is worth a word. */
#define TRACE_GAPS 0.15
typedef void (*TraceDone) (const TraceResult *result, gpointer data);
/** Traces; `other` is the other half, NULL without. Cancelled, the status is CORE_CANCELLED. The tolerance in mm. */
void trace_ask (TraceOrder *order, const Outline *other, double tolerance, GCancellable *cancellable, TraceDone done, gpointer data);
