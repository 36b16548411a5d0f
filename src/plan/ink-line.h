#pragma once
#include "plan/ink.h"

/** The middle of the printed line nearest a place.
 *  near      px of the file
 *  reach     px of the file, > 0: how far from it one is looked for
 *  found     set on success, px of the file: beside `near`, within `reach` of it and two line's widths
 *  returns   false where there is none: on bare paper, in even grey
 *  accuracy  about a quarter of a pixel on a line that stands alone and runs straight for a few
 *  cost      about 20 ns for each pixel within reach
 *  method    the nearest pixel whose ridge is at least a third of the strongest within reach; from there to the middle of the ink across
 *            it */
bool ink_line (const Ink *ink, Point near, double reach, Point *found);

/** The share of the straight way between two places along which something is printed: a quick look before a line is followed.
 *  a, b     px of the file
 *  beside   px of the file: so far beside the way counts, too
 *  returns  0 to 1; 0 where a place is not finite
 *  cost     about a microsecond for 10 px of the way by 10 across */
double ink_share_between (const Ink *ink, Point a, Point b, double beside);
