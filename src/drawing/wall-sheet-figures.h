#pragma once
#include "drawing/wall-sheet-pen.h"

/** The table of figures, its upper left corner at `at`, capitals `caps` high, mm. What cannot be had says "not yet". */
void figure_table_draw (const SheetPen *pen, Point at, double caps);
