#pragma once
#include "document/aeroplane.h"
#include "drawing/selection.h"

/** What is cut, copied and pasted: a small aeroplane of its own that holds the chosen pieces and what hangs on them. Knows nothing of
 *  clipboards. */

/** The selected surfaces, bodies and parts with their structures, and the leads between two selected parts, in the document's order.
 *  NULL when none is selected (nodes, controls and marks do not travel alone). */
Aeroplane *fragment_of (const Aeroplane *self, const Selection *selection);

/** Adds a fragment's pieces under fresh ids. Where a piece of that kind stands at the very same place already, the whole fragment
 *  goes 10 mm aft (parts also 10 mm to starboard), and again, until nothing lies hidden beneath.
 *  pasted   set to the new surfaces, bodies and parts; the caller's
 *  returns  the next aeroplane; NULL, with `pasted` untouched, when the fragment holds nothing that can be pasted */
Aeroplane *fragment_pasted (const Aeroplane *into, const Aeroplane *fragment, Selection *pasted);

/** What the structures in it weigh together, in grams, and how many there are. */
double fragment_structures (const Aeroplane *fragment, size_t *count);

/** How many surfaces, bodies and parts are selected. */
size_t fragment_count (const Aeroplane *self, const Selection *selection);

/** Everything that can be selected. */
Selection fragment_all (const Aeroplane *self);
