#pragma once
#include "document/aeroplane.h"
#include "drawing/selection.h"

/** What Tab selects next on the sheet: surfaces and bodies, each followed by its nodes as seen from above, then the parts; at the end
 *  it begins again. `back` walks the other way. Nothing when there is nothing. The caller's. */
Selection selection_walk_next (const Aeroplane *aeroplane, const Selection *from, bool back);
