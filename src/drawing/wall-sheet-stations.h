#pragma once
#include "drawing/wall-sheet-layout.h"

/** Adds the names of formers and ribs to an arrangement's notes, small, where nothing else stands: whatever is on the sheet has its place
 *  already, and gives none of it up. A former's at the side view, a rib's at an edge of one half; where even that is taken it has none. */
void station_names_put (const WallSheet *sheet, const Look *look, SheetArrangement *arrangement);
