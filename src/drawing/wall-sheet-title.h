#pragma once
#include "drawing/wall-sheet-pen.h"

/** The title block, 180 × 40 mm, in the lower right corner of the border: name, the mark, the battery's place, scale, sheet, units, date,
 *  projection. Its width after ISO 7200 (from memory). */
Box  wall_title_box  (const WallSheet *sheet);
/** scale   of the plan, a ratio (0.4 for 1 : 2.5), 0 when none is drawn;  section  whether something stands at full size besides */
void wall_title_draw (const SheetPen *pen, double scale, bool section);
/** One of its cells: the border, its field's name above, its words on its foot, smaller or cut where they have no room. 11 mm high or more. */
void wall_title_cell (const SheetPen *pen, Box cell, const char *field, const char *words);
/** The one of the date; left open, it is a line to write on. */
void wall_title_date (const SheetPen *pen, Box cell);
/** "1 : 2.5" for the ratio 0.4; > 0. A new string. */
char *wall_scale_text (double scale);
