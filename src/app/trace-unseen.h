#pragma once
#include "app/trace-work.h"

/** Where along an outline just traced no printed line is to be seen: runs of places, mm in the view's own axes, a NAN place after each.
 *  Runs shorter than 2 mm are none. Follows the line once more, so it is a worker's; the caller's array of Point, empty when all is seen
 *  or the work was cancelled.
 *  share  set to what of the outline's length these runs are, 0 to 1; NAN where it could not be looked at */
GArray *trace_unseen (const TraceOrder *order, const Outline *outline, GCancellable *cancellable, double *share);
