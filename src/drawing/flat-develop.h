#pragma once
#include "document/piece.h"
#include "drawing/flat-piece.h"

/** From the plan of a surface to its panels laid flat. Dihedral lifts the outline and does not shorten it in plan, so each panel is longer
 *  along the span, from its break on, by 1 / cos of its angle. Places are the surface's own, mm: x aft of the datum, y the station on one
 *  half (less than nought: on the other); of a fin the height above its root.
 *
 *  Between two breaks that is an affine map along one axis: it keeps lines, cubic curves and axis-parallel ellipses what they are, so
 *  that what is laid flat is exact.
 *  source  elementary geometry */

/** How far from the centre line a station is along the surface, mm. Of a fin the same height. */
double flat_station (const Surface *surface, double station);
/** Where a place of the surface's own lies on its piece. */
Point  flat_place (const Surface *surface, Point own);

/** Adds a run of segments, cut exactly where the dihedral breaks. Segments are lent, count >= 1. */
void   flat_add_run (FlatPiece *piece, const Surface *surface, FlatPurpose purpose, bool closed, Point start, const Segment own[], size_t count);
/** Adds what is straight in plan. */
void   flat_add_way (FlatPiece *piece, const Surface *surface, FlatPurpose purpose, Point from, Point to);
