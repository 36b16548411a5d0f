#pragma once
#include "document/changes.h"

/* What the files of changes share. */

/** `takes` in the place of `old`; the same aeroplane where they are equal: the caller's history then adds no step. */
Aeroplane *changed_to (const Aeroplane *self, const Piece *old, Piece *takes);
/** `takes` with the places, where they are given, of the structures of that surface or body and of their items moved by dx and dz, mm. NULL
 *  stays NULL. */
Aeroplane *structures_moved_with (Aeroplane *takes, const char *id, double dx, double dz);
/** `takes` with those places moved by dx, mm, that lie in the surface or body of that id, which has been moved already, on the way of leads
 *  of which an end is fixed to it; the joints too. What lies in a wing that an end is fixed to goes with that wing alone. NULL stays NULL. */
Aeroplane *leads_moved_with (Aeroplane *takes, const char *id, double dx);
/** A copy of the surface or body with all moved that was traced in the move's view; NULL when a place cannot be moved or order is lost.
 *  The copy is equal to the piece where nothing was. */
Piece *piece_carried (const Piece *piece, const TracedMove *move);
