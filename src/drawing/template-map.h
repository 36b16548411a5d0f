#pragma once
#include "drawing/wall-sheet-pen.h"

/** Which tiles of a rectangle of them have something drawn on them. Tile `column`, `row` reaches from column × step.x to the next. */
typedef struct {
  Point step;                    /* from tile to tile, mm */
  size_t columns, rows;
  bool *drawn;                   /* row by row */
} TemplateTiles;

/** How the pages lie side by side, as large as the box allows, at its right end: those that are needed in outline, this one filled. */
void template_map_draw (const SheetPen *pen, const TemplateTiles *tiles, size_t index, Box box);
/** The same at the box's left end, each with its name where that can be read, none filled. */
void template_map_draw_named (const SheetPen *pen, const TemplateTiles *tiles, Box box);
