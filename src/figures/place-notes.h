#pragma once
#include "figures/figures.h"

/** The first surface or body, in the document's order, that was traced in a view of the plan which stands only where such a thing usually
 *  does, and whose place the balance mark follows: no fin; a body in its view from above, the one that is reckoned with. NULL: none. Lent. */
const Piece *place_guessed_of_mark (const Aeroplane *aeroplane);

/** A note for each piece traced in such a view, fins too. */
void place_note (const Figures *figures, GPtrArray *notes);
