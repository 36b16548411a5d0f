#pragma once
#include <cairo.h>
#include "drawing/sheet-places.h"

/** Paths of which, much enlarged, most lies far outside of what is painted: to flatten it there would take longer than to paint the rest.
 *  What lies wholly on one side of that is left out of the curve, a straight line in its place; what is seen stays exactly as it is. */

/** What is painted, in cr's present units, and a margin for wide lines. */
Box  sight_of (cairo_t *cr);
/** Goes on from cr's present place p[0] along the cubic curve p. */
void curve_in_sight (cairo_t *cr, const Point p[4], const Box *sight);

/** Axis-aligned, from the angle `begin` to `end`, radians in the circle that it is stretched from; `end` may be the smaller. */
typedef struct { Point centre; double rx, ry, begin, end; } PathArc;
/** Goes on from cr's present place, the arc's first, along it. */
void arc_in_sight (cairo_t *cr, const PathArc *arc, const Box *sight);
