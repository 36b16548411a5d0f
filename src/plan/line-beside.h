#pragma once
#include "plan/follow.h"

/* Private to the plan room. */

/** Takes the line beside the one that was followed, piece by piece, where that is nearer to the clicks. A leading edge is printed as
 *  two lines 3 mm apart; lettering and gaps in the outer one cost a path more than a few clicks that lie nearer to it.
 *  line      as followed by these clicks; followed again where another is taken
 *  returns   CORE_OK, also where none is; what follow_cornered returns
 *  method    lanes beside the line followed, up to 5 mm off, in pieces of 10 mm: the least sum of the clicks' distances and of what is not
 *            seen of a line, each change of lane costing as much as a click 0.8 mm off and more where no line is (dynamic programming)
 *  cost      nothing while all clicks are within 0.6 mm of the line; else about as much as following it once more */
CoreStatus take_line_beside (const Ink *ink, const Point clicks[], size_t count, const FollowOptions *options, FollowedLine *line);
