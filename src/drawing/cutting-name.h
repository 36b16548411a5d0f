#pragma once
#include "drawing/flat-piece.h"

/** A piece's name, to be engraved on it or written beside it. */

/** The room that a word takes in whatever lettering another program shows it, in the piece's mm: as long as in one whose letters are all as wide as capitals,
 *  for what a program uses is not known here. Turned by quarters alone. */
Box  cutting_word_box    (const FlatWord *word);
/** The height of a word's capitals, mm: smaller than wanted where it would take more room than it may. */
double cutting_word_caps (const FlatWord *word);
/** Adds the piece's name as a word FLAT_NAME: within its edge, clear of its lines, openings and words, in capitals 5 to 3 mm high, as near to its middle
 *  as there is room; read from below, or else from the right; where there is none, above it. Of a piece without a line, nothing. */
void cutting_name_add    (FlatPiece *piece);
/** The box of its lines and of its name; empty without a line. */
Box  cutting_name_bounds (const FlatPiece *piece);
