#pragma once
#include <stdbool.h>
#include "plan/line-steps.h"
#include "plan/follow.h"

/* Private to the plan room. */

/** Whether a step goes over to another line across bare paper: a step of the outline itself is printed all its way. */
bool line_step_goes_over (const LineStep *step);

/** Takes the line that goes straight on, where a followed line goes over to one beside it across bare paper: with lettering in one of
 *  two lines 3 mm apart and few, rough clicks a way over and back costs less than the line itself.
 *  line      as followed by these clicks; followed again where another way goes over less
 *  returns   CORE_OK, also where none is; what follow_cornered returns
 *  method    the line that comes to such a step is looked for beyond it, and the one behind it before it; of the ways led along them that
 *            go over less and pass the clicks as near, one that is printed as dark is taken, the darker rather
 *  cost      next to nothing while the line goes over nowhere; else that of following it twice for each step, ten times at most
 *  source    common practice, no source */
CoreStatus take_line_kept (const Ink *ink, const Point clicks[], size_t count, const FollowOptions *options, FollowedLine *line);
