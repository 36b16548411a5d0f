#pragma once
#include "drawing/template-place.h"

/** How the pages lie side by side, as large as the box allows, at its right end: those that are needed in outline, this one filled. */
void template_map_draw (const SheetPen *pen, const TemplateTiles *tiles, size_t index, Box box);
