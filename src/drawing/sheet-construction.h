#pragma once
#include "drawing/sheet-places.h"

/** The draughtsman's way to the mean aerodynamic chord of a straight taper: the line through the middles of root and tip chord, and the
 *  diagonal from the tip chord laid on aft of the root to the root chord laid on ahead of the tip. They cross at its station.
 *  mm, to starboard.
 *  source  common drafting practice, no source */
typedef struct { Point middle_root, middle_tip, aft_of_root, ahead_of_tip; } TaperConstruction;
/** That of the reference wing; false, and nothing set, when it is no straight taper from the centre line. */
bool sheet_taper_construction (const Figures *figures, TaperConstruction *construction);
