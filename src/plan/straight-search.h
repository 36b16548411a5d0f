#pragma once
#include "plan/ink.h"

/* Private to the plan room. */

/** Finds the straight line that is printed by two places, where following it cannot: broken into dashes, with another line as dark a few
 *  pixels beside it. All straight lines between what a hand may have clicked at either end are tried, also beyond the ends, where a centre
 *  line goes on and its neighbours do not.
 *  ends         ink px; moved onto the line, across it only
 *  click_sigma  ink px: how far off the line a click is, one standard deviation; none further off than three of them is looked at
 *  px_per_mm    of the ink, about: how wide a centre line is
 *  returns      whether there is one: printed half of the way at least
 *  method       the greatest mean strength along the line (line_strength) less the squares of how far its ends are from the clicks; by
 *               steps of half a pixel, then halved to a thirtieth */
bool straight_search (const Ink *ink, Point ends[2], double px_per_mm, double click_sigma);
