#pragma once
#include "drawing/wall-sheet-pen.h"

/** The aeroplane from its port side, nose at the top, its top to the right, in line with the plan. The view's origin_x is where z = 0
 *  stands. */

/** Whether there is anything that only this view shows: a body's side outline or a fin. */
bool wall_side_exists (const WallSheet *sheet);
/** With its length. */
void wall_side_draw   (const SheetPen *pen, const SheetView *view);
/** The shapes filled, for a free_space. */
void wall_side_fill   (cairo_t *cr, const SheetView *view, const WallSheet *sheet);
