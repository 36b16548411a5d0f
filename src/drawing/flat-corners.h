#pragma once
#include "drawing/flat-piece.h"

/** A line as a run of straight sides, for what knows no curves: none lies further than `within` > 0 mm from the line. Its corners, Point,
 *  are added to `corners`; those of a closed line without its start again at the end. Places nearer than a millionth of a mm are one. */
void flat_line_corners (const FlatLine *line, double within, GArray *corners);
/** Whether it goes round something: told so, or back where it began. */
bool flat_line_is_closed (const FlatLine *line);
