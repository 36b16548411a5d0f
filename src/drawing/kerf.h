#pragma once
#include "drawing/flat-piece.h"

/** What a beam or a cutter takes away beside its path: half the cut on each side. A piece that shall come out at its size is cut that much
 *  outside of its edge, and an opening that much inside of its own. */

/** A closed polygon of `count` corners, run round either way, grown by `by` mm on all sides, or shrunk where `by` < 0. Each side moves
 *  straight out; a corner stays a corner, but one so sharp (below about 29 degrees) that it would reach out further than four times `by` is
 *  cut off square there. Sides that shrink to nothing go, so that an inner corner does not cross itself; a slot narrower than twice `by`
 *  cannot be kept and is not looked for. Points, the caller's; NULL where nothing is left, or there was no area. */
GArray *kerf_polygon (const Point corners[], size_t count, double by);

/** The piece as it is to be cut with a kerf of `kerf` >= 0 mm: closed lines FLAT_CUT half of it further out, FLAT_OPENING half of it further
 *  in, both as polygons within two thousandths of a mm; all else as it is, and so an opening smaller than the kerf. 0: a copy. */
FlatPiece *kerf_piece (const FlatPiece *piece, double kerf);
