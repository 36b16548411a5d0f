#pragma once
#include "drawing/flat-piece.h"

/** How far pieces lie from one another and from the sheet's edge, mm. Common practice, no source. */
#define CUTTING_GAP 5.0

/** The pieces laid side by side in rows, in their order, from the upper left corner of a sheet whose size, whole mm, goes to
 *  *width and *height. A row is as wide as the widest piece, or fills a sheet of 600 mm where
 *  none is wider; beside a piece's lines its name counts, where that stands outside. FlatPiece, new ones, freed with the array; a piece without a line
 *  is left out. The same pieces always come to lie alike. */
GPtrArray *cutting_place (const GPtrArray *pieces, double *width, double *height);
