#pragma once
#include "geometry/stretch.h"

/* Private to the geometry room. */

/** One segment in the place of two that follow each other: a line for two lines, the arc or the curve they were cut from
 *  where they were, else the curve that keeps the outer tangents and lies closest to them.
 *  source  Schneider, An Algorithm for Automatically Fitting Digitized Curves, Graphics Gems, 1990 */
Segment segment_fitted (const Stretch *first, const Stretch *second);
