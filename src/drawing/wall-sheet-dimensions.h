#pragma once
#include "drawing/wall-sheet-pen.h"

/** The dimensions round the plan: span, the root's leading edge from the datum, the root's chord (of an ellipse: ahead of and behind its
 *  widest line), the tail's span, the ailerons; where no section shows it, the mark. Those without room for their place are left out. */
void wall_dimensions_draw (const SheetPen *pen, const SheetView *view, bool mark_on_plan);
