#pragma once
#include "drawing/flat-piece.h"
#include "drawing/wall-sheet-pen.h"

/** Words on a flat piece, as paper shows them. mm. */

/** The box around them, in the piece's own mm. */
Box  template_word_box  (const SheetPen *pen, const FlatWord *word);
/** Paints them; cr stands as the piece lies. Words that a turned piece would stand on their heads are turned round in their own place. */
void template_word_draw (const SheetPen *pen, const FlatWord *word, bool piece_is_turned);
