#pragma once
#include "geometry/outline.h"

/** Half-outlines from numbers: what a person knows who has no plan. x_root is the root leading edge's x. Lengths in any one unit. */

/** A straight or cranked taper: `count` stations from root (y[0]) to tip, the leading edge's x and the chord at each, in one unit (mm
 *  in a document). *made set on success, one reference, the caller's. CORE_NOT_FINITE; CORE_OUT_OF_RANGE unless there are two stations,
 *  they rise and chords are > 0 (the tip's may be 0); else what outline_new returns. */
CoreStatus shape_taper (const double station[], const double leading_x[], const double chord[], size_t count, Outline **made);

/** Two quarter ellipses that share the widest line at x = x_root + ahead: semi-axes `ahead` and `behind` of it, tip at
 *  `semispan` > 0, in one unit (mm in a document). Either may be 0 (a straight edge), not both; never negative. Returns and *made as
 *  for shape_taper. */
CoreStatus shape_ellipse (double x_root, double semispan, double ahead, double behind, Outline **made);
