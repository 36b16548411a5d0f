#pragma once
#include "drawing/wall-sheet-pen.h"

/** Two lines whose lengths are stated, so that a rule laid on the paper shows whether it was printed true to size: 100 mm and 4 in. */
typedef enum { CONTROL_LINES_WIDE, CONTROL_LINES_NARROW, CONTROL_LINES_ALONG } ControlLinesWay;

/** Wide: 165 × 9 mm, the words beside the lines; narrow: 116 × 15 mm, the words below; along: the narrow ones turned to be read from the
 *  right. `at` is the upper left corner. */
void control_lines_draw (const SheetPen *pen, Point at, ControlLinesWay way);
/** The third, 100 mm down the page from `at`, its ticks at its left and its words read from the right: 5 mm wide. Printers stretch paper
 *  otherwise along its way than across it. */
void control_line_draw_down (const SheetPen *pen, Point at);
