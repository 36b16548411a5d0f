#pragma once
#include <gtk/gtk.h>
#include "app/trace-work.h"
#include "document/units.h"

/** What a window says about a trace. `told` is any widget of it. */

/** What takes longer than this is said to, ms. */
#define TRACE_TELLING_QUIET_MS 400

void trace_telling_busy   (GtkWidget *told, GCancellable *work);      /* with a button that cancels it */
void trace_telling_done   (GtkWidget *told, GCancellable *work);      /* that is not under way any more */
void trace_telling_stale  (GtkWidget *told);                          /* the plan was changed before the outline came */
/** Asks about a root off the centre line, tells how two halves differ, what was not seen, or why there is no outline. */
void trace_telling_result (GtkWidget *told, Units units, const TraceOrder *order, const TraceResult *result);
