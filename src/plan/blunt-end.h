#pragma once
#include "plan/trace.h"

/* Private to the plan room. */

/** A click at one end of a body from the side, alone there, and the clicks before and behind it; the file's px. */
typedef struct { Point at, neighbours[2]; } EndClick;

/** Looks whether that end is cut straight across there: a firewall, a stern post. Few clicks leave out its corners, and a path by them
 *  goes straight to the next click.
 *  mm_a_px   of the file's px, about
 *  corners   the file's px: where the printed line of each neighbour meets the cut; set where `found` says so
 *  found     whether there is such a corner; neither where the end is round
 *  method    the longest straight line by the click, at most 36 degrees off square to the axis; the outermost place of it where a line
 *            leaves that runs to the neighbour (stretch_follow): a cut may go on, as a stern post does into a fin
 *  cost      about 10 ms, and that of a stretch for each corner
 *  source    common practice, no source */
void blunt_end_find (const Ink *ink, const TraceRequest *request, double mm_a_px, const EndClick *click, Point corners[2], bool found[2]);
