#pragma once
#include "plan/corridor.h"

/* Private to the plan room. */

/** Moves a path onto the middle of the line it follows, to a fraction of a pixel, and says how much of a line there is.
 *  strength   columns × rows, 1 being a line as usual
 *  sigma      half the line's width, px: it is looked for no further off than that and a half
 *  reach      columns on each side that are averaged along the path
 *  rows       columns values, where the path is; moved
 *  weights    columns values, set: 1 for a line as usual, 0 for none
 *  returns    CORE_OK, CORE_NO_MEMORY
 *  method     the parabola through the greatest of the averaged strengths and its neighbours */
CoreStatus line_centre (const Corridor *corridor, const float *strength, double sigma, int reach, double *rows, double *weights);
