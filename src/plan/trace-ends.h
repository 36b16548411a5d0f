#pragma once
#include <stdbool.h>
#include <stddef.h>
#include "geometry/point.h"

/* Private to the plan room. */

/** Carries both ends of a half-outline, mm, to a station, y = root, 0 being the axis: what lies within a line's width of it or beyond is left
 *  out, since the axis' own line and its ribs are printed there, and the rest goes on as it comes. There is room for two places more.
 *  returns  how many places there are then */
size_t carry_ends_to_station (Point places[], double weights[], size_t count, double root);

/** A body's after end, carried to the axis as above, where it is cut straight across: with that cut left out, and the corner where it begins
 *  for a last place. One that is clicked short of a point, with nothing printed across, goes on to its point instead.
 *  is_cut   set: whether it ends at such a corner now; the axis lies straight across from there
 *  returns  how many places there are then
 *  places   mm, x along the axis; root mm off it; weights have no unit */
size_t leave_out_cut (Point places[], double weights[], size_t count, double root, bool *is_cut);
