#pragma once
#include "plan/ink.h"

/** The crossing, corner or end of a printed line near a place.
 *  near      px of the file
 *  reach     px of the file, > 0: how far from it one is looked for
 *  found     set on success, px of the file; within `reach` of `near`
 *  returns   false where there is none: on bare paper, along a line that goes on straight, in even grey
 *  accuracy  about a tenth of a pixel where sharp lines cross, within half a line's width at a corner or end
 *  cost      about 50 ns for each pixel within reach
 *  source    W. Förstner and E. Gülch, A fast operator for detection and precise location of distinct points, corners and centres of
 *            circular features, ISPRS Intercommission Workshop, Interlaken, 1987: the place nearest all edge lines of a window, by least
 *            squares weighed by their gradients; a window is one where the smaller eigenvalue of their sum stands out */
bool ink_corner (const Ink *ink, Point near, double reach, Point *found);
