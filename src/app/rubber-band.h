#pragma once
#include "document/aeroplane.h"
#include "drawing/selection.h"

/** What a rubber band holds: nodes of the outline that is selected now, if any lie inside (also on its port half); otherwise the parts whose
 *  middles do. `add`: together with what was selected. The caller's. */
Selection rubber_band_selection (const Aeroplane *aeroplane, const Selection *before, Box band, bool add);
