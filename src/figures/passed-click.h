#pragma once
#include "document/units.h"
#include "figures/figures.h"

/** An outline that was traced past a click or goes aside over bare paper, may have taken another line, and all figures with it:
 *  said until somebody looks. */

/** One sentence, translated: what passes the click or goes aside, where, by how much, and what to do. A new string.
 *  passed  of the piece, its own: `by` > 0 */
char *passed_click_words (const Piece *piece, const PassedClick *passed, Units units);
/** All that is to be said so of a surface or body, a line each; NULL: nothing. A new string. */
char *passed_clicks_of   (const Piece *piece, Units units);
/** A note for each such outline, in the document's order. */
void  passed_click_note  (const Figures *figures, GPtrArray *notes);

/** The note's sentence with its lengths and loadings in the reader's units. A new string. */
char *note_words (const Note *note, Units units);
