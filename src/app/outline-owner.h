#pragma once
#include "document/aeroplane.h"

/** The outline of a piece: a surface's, or a body's as seen from above or (side) from the side. Lent; NULL when there is none. */
const Outline *outline_owner_outline (const Aeroplane *aeroplane, const char *id, bool side);
/** The next aeroplane with that outline in the place of the old one; takes it. NULL when the piece is not there. */
Aeroplane     *outline_owner_with    (const Aeroplane *aeroplane, const char *id, bool side, Outline *takes);
/** How high the outline's second axis begins: a fin's outline counts its height from the fin's own z; 0 for all others. mm */
double         outline_owner_lift    (const Aeroplane *aeroplane, const char *id);
