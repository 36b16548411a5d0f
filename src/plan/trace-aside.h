#pragma once
#include "plan/follow.h"
#include "plan/trace.h"

/* Private to the plan room. */

/** The furthest step aside by which a followed line goes over to another line across bare paper: in trace->aside and aside_at, 0 without.
 *  line      in the file's px
 *  returns   CORE_OK, CORE_NO_MEMORY
 *  source    common practice, no source */
CoreStatus trace_look_aside (const TraceRequest *request, const FollowedLine *line, Trace *trace);
