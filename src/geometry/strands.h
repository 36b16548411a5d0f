#pragma once
#include "geometry/outline-private.h"

/* Private to the geometry room. */

/** A place on the closed outline. */
typedef struct {
  size_t stretch;
  double t;
} Station;

/** Whether the outline, which comes to the same place at `a` and later at `b` (within rounding), changes sides there: on a
 *  circle around the place the four ends of the two strands take turns. Circles from 1e-6 of `size` upwards are tried until
 *  the ends stand clear of one another; a touch, a cusp, or strands that lie upon one another do not change sides.
 *  size     of the outline, > 0, in its unit (mm in a document)
 *  settled  the radius of the last circle tried, the same unit: when the sides are kept, no other meeting inside it need be asked about */
bool strands_change_sides (const Outline *outline, Station a, Station b, double size, double *settled);
