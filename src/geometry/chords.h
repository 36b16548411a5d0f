#pragma once
#include "geometry/point.h"

/* Private to the geometry room. */

/** The shortest distance between straight lines a0-a1 and b0-b1, >= 0, in their unit (mm in a document); 0 where they cross. Where
 *  it is reached goes to *s and *u, fractions 0..1 of each (the middle, where they lie beside one another). */
double chords_distance (const Point a[2], const Point b[2], double *s, double *u);
