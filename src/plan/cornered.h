#pragma once
#include "plan/follow.h"

/* Private to the plan room. */

/** follow_line(), with corners where they were clicked: about a smooth run through the clicks a sharp corner is easily cut, onto an inner line
 *  or across bare paper. Where the clicks turn and hardly any line was seen there, the line is followed anew from one such click to the next, and
 *  what is seen better counts.
 *  returns   as follow_line
 *  cost      as follow_line, and once or twice more where there is such a click */
CoreStatus follow_cornered (const Ink *ink, const Point clicks[], size_t count, const FollowOptions *options, FollowedLine *made);
