#pragma once
#include "drawing/flat-piece.h"
#include "figures/figures.h"

/** Bodies at full size as they are seen, for templates: of each from above, and from the side, where its outline is drawn and sound; with
 *  the stations of its formers, of the first the hatch to cut and the battery's floor. Added to `pieces`, freed with the array.
 *
 *  The nose is at the left, x mm aft of the datum; from above starboard is upward, from the side (seen from port) up is upward: y is
 *  -mm to starboard, or -mm above the thrust line. */
void flat_body_add (GPtrArray *pieces, const Figures *figures);
