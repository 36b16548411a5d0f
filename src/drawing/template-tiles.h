#pragma once
#include "drawing/template-place.h"

/** Which tiles are needed for what lies there: rows and columns reach as far as the area. The caller frees `drawn`. */
TemplateTiles template_tiles    (const SheetPen *pen, const TemplatePlaces *places, Point step);
/** What tile `index`, counted row by row, holds, mm of the area; what neighbours overlap by is left out. */
Box           template_tile_box (const TemplateTiles *self, size_t index);
/** Whether something reaches from tile `index` over to the one so many columns to the right and rows down. */
bool          template_tiles_join (const TemplatePlaces *places, size_t index, int right, int down);
/** "B2": the second of the second row. */
void          template_tile_name (size_t column, size_t row, char name[8]);
