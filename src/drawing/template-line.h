#pragma once
#include "drawing/flat-piece.h"
#include "drawing/wall-sheet-pen.h"

/** How a flat piece's lines look on paper, in black: each kind is told from the others without a word. */

/** Sets width and dashes for what is stroked next: edges 0.5 mm, hinges 0.35, bevels dotted, stations thin, centre lines chained, rooms
 *  broken, the mark thick. */
void template_line_set     (const SheetPen *pen, FlatPurpose purpose);
/** Whether no word may break it: all but what stands or runs there, stations and centre lines. */
bool template_line_is_firm (FlatPurpose purpose);
/** What a line of that kind says: "hinge line: the control comes off here"; translated, lent. */
const char *template_line_words (FlatPurpose purpose);
