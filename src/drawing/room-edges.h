#pragma once
#include <cairo.h>
#include "drawing/look.h"
#include "drawing/view.h"
#include "figures/figures.h"

/** Strokes the edges of parts that reach where they must not (Figures.room) in the colour of warnings, wider than a part's own line.
 *  side  seen from the side, in the side view's own view; else from above */
void draw_room_edges (cairo_t *cr, const Look *look, const SheetView *view, const Figures *figures, bool side);
