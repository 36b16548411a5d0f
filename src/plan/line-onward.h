#pragma once
#include "geometry/drawn-run.h"
#include "plan/follow.h"

/* Private to the plan room. */

/** Where a printed line goes on straight from a place, over gaps and lettering. */
typedef struct {
  Point *places;           /* px, 3 mm from one to the next, the first where it was seen first */
  size_t count;            /* 0: nothing goes on */
  double strength;         /* how strongly it is printed, in the mean, in the unit of line_print_strength */
} LineOnward;

/** Looks where a line goes on.
 *  from       px, on the line, and the unit vector along it
 *  beside     a line followed nearby: where it comes to that it ends, and where it is further from it than lines of a pair are
 *  made       set on success; line_onward_clear gives it back
 *  returns    CORE_OK, CORE_NO_MEMORY
 *  method     pieces of 3 mm straight on from the last three; one without a line is passed over, 25 mm of them in a row at most
 *  source     common practice, no source */
CoreStatus line_onward (const Ink *ink, const RunPassage *from, const FollowedLine *beside, double px_per_mm, LineOnward *made);
void       line_onward_clear (LineOnward *self);      /* frees its places; again is fine */

/** How strongly a line is printed between two places on it, in the mean: the ink's unit, 0 where there is none; NAN without memory.
 *  Places and half_width in pixels; px_per_mm pixels a mm. */
double line_print_strength (const Ink *ink, Point from, Point to, double half_width, double px_per_mm);
