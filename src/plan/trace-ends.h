#pragma once
#include <stddef.h>
#include "geometry/point.h"

/* Private to the plan room. */

/** Carries both ends of a half-outline, mm, to a station, y = root, 0 being the axis: what lies within a line's width of it or beyond is left out, since the
 *  axis' own line and its ribs are printed there, and the rest goes on as it comes. There is room for two places more.
 *  returns  how many places there are then */
size_t carry_ends_to_station (Point places[], double weights[], size_t count, double root);
