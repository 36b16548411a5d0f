#pragma once
#include "plan/trace.h"

/* Private to the plan room. */

/** Where an outline that goes round runs out and comes back over a short stretch of its length, as round a fin on a body's back: in
 *  trace->spur and spur_at, 0 without.
 *  returns   CORE_OK, CORE_NO_MEMORY
 *  method    of two places the one behind the other, no further apart than three tenths of the length, the furthest that it rises above both
 *            between them; as steep a rise as a canopy's or a windscreen's is none
 *  source    common practice, no source */
CoreStatus trace_look_for_spur (Trace *trace);
