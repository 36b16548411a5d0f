#pragma once
#include "plan/trace.h"

/* Private to the plan room. */

/** The line of a request from its first click to its last, in the file's px: followed where it is to be, straight where it was drawn by
 *  hand. A straight stretch begins and ends where the followed ones beside it do.
 *  mm_a_px  of the file's px, about
 *  made     set on success; followed_line_clear gives it back
 *  returns  as follow_line */
CoreStatus trace_run (const Ink *ink, const TraceRequest *request, double mm_a_px, FollowedLine *made);
