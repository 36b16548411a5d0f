#pragma once
#include <stdbool.h>
#include "geometry/drawn-run.h"

/* Private to the plan room. */

/** Where a followed line goes aside, to go on beside its way as it came: over to another line, or round a step of the outline. */
typedef struct {
  size_t before, behind;   /* the last place of the way it leaves, and the first of the one it goes over to */
  double aside;            /* mm, positive from x towards y of its way */
  double seen;             /* the share of its way over that shows a line, 0 to 1 */
} LineStep;

/** The next step aside by 2 mm or more within 2 cm; a bend and a corner are none.
 *  run       a followed line, px, with its weights
 *  along     px: where to begin to look; moved behind the step found
 *  returns   false where there is none
 *  method    what its way before foretells of it behind, less what its way behind foretells of it before: of a bend or corner both agree
 *  source    common practice, no source */
bool line_step_next (const DrawnRun *run, double px_per_mm, double *along, LineStep *step);
