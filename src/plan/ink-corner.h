#pragma once
#include "plan/ink.h"

/** The crossing, corner or end of a printed line near a place.
 *  near      px of the file
 *  reach     px of the file, > 0: how far from it one is looked for
 *  found     set on success, px of the file; within `reach` of `near`
 *  returns   false where there is none: on bare paper, along a line that goes on straight, in even grey
 *  accuracy  about a sixth of a pixel where sharp lines cross, a third where one ends on another, half a line's width at an end
 *  cost      about a microsecond for each pixel within reach
 *  source    W. Förstner and E. Gülch, A fast operator for detection and precise location of distinct points, corners and centres of
 *            circular features, ISPRS Intercommission Workshop, Interlaken, 1987: the place nearest all lines of a window, by least squares;
 *            a window is one where the smaller eigenvalue of their sum stands out. Lines here are ridges of the ink, so that they meet
 *            where their middles do; where only one line is, and ends, they are edges, as there */
bool ink_corner (const Ink *ink, Point near, double reach, Point *found);
/** The same where a line ends, turns or crosses that runs on from there at least so far: no stroke of a letter or numeral.
 *  least  px of the file: the strokes of lettering are shorter
 *  all lengths and places in pixels of the file */
bool ink_line_corner (const Ink *ink, Point near, double reach, double least, Point *found);
