#pragma once
#include "drawing/flat-piece.h"
#include "drawing/wall-sheet-pen.h"

/** How a flat piece's lines look on paper, in black: each kind is told from the others without a word. */

/** Sets width and dashes for what is stroked next: edges 0.5 mm, openings so in long dashes, hinges 0.35 with dots, limits so in short
 *  dashes, bevels dotted, stations thin, centre lines chained, rooms broken, the mark thickest. */
void template_line_set     (const SheetPen *pen, FlatPurpose purpose);
/** Whether no word may break it: all but what stands or runs there, stations and centre lines. */
bool template_line_is_firm (FlatPurpose purpose);
/** What a line of that kind says: how it looks and what it is for, "thick: edge, cut here"; translated, lent. */
const char *template_line_words (FlatPurpose purpose);
