#pragma once
#include "figures/figures.h"

/** The surface or body of that number, from 0 in the document's order, that was traced in a view of the plan which stands only where such
 *  a thing usually does: a body in its view from above, the one that is reckoned with. NULL: no more. Lent. */
const Piece *place_guessed (const Aeroplane *aeroplane, size_t number);

/** A note for each of them. */
void place_note (const Figures *figures, GPtrArray *notes);
