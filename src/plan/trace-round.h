#pragma once
#include "plan/trace.h"

/* Private to the plan room. */

/** The clicks of an outline that goes round, made ready for it to be followed: begun at its forward end, wherever it was begun by hand, and
 *  with the corners of ends that are cut straight across and were clicked once. */
typedef struct {
  Point *clicks;              /* the file's px; the first and the last are the same place */
  bool *drawn;                /* count - 1 of them */
  size_t count;
} RoundClicks;

/** mm_a_px  of the file's px, about
 *  made     set on success; round_clicks_clear gives it back
 *  returns  CORE_OK, CORE_NO_MEMORY */
CoreStatus round_clicks (const Ink *ink, const TraceRequest *request, double mm_a_px, RoundClicks *made);
void       round_clicks_clear (RoundClicks *self);      /* frees its clicks; again is fine */
