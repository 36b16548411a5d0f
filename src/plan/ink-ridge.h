#pragma once
#include "plan/ink.h"

/* Private to the plan room. */

/** What a pixel says of a printed line along whose middle it lies: a vector across the line, as long as the line is plain there, in the
 *  ink's unit (0 to about 500); nothing on bare paper and at the picture's edge.
 *  method  the ink's second differences 3 px to each side, where a line of a drawing, 2 to 5 px wide as scanned, is past; the way in which
 *          they bend down most */
Point ink_ridge (const Ink *ink, int x, int y);
