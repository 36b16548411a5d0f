#pragma once
#include "drawing/wall-sheet-pen.h"

/** Two lines whose lengths are stated, so that a rule laid on the paper shows whether it was printed true to size: 100 mm and 4 in. */
typedef enum { CONTROL_LINES_WIDE, CONTROL_LINES_NARROW, CONTROL_LINES_ALONG } ControlLinesWay;

/** Wide: 165 × 9 mm, the words beside the lines; narrow: 116 × 15 mm, the words below; along: the narrow ones turned to be read from the
 *  right. `at` is the upper left corner. */
void control_lines_draw (const SheetPen *pen, Point at, ControlLinesWay way);
