#pragma once
#include "document/material-class.h"
#include "figures/spread.h"

/** A structure with another covering. */

/** Whether a line is of a covering: its material is one, or it has a mass an area of its own on the traced skin. */
bool structure_item_covers (const StructureItem *item);

/** What those lines weigh, with the usual excess, in grams, >= 0. */
double structure_covering_g (const StructureFigures *figures);

/** A structure of `of`, covered so: its lines of covering have that material, or there is one more line. A typed mass changes by what
 *  the lines do; one without any lines becomes a weighed line beside the covering's.
 *  old     NULL: there is none yet
 *  spread  of what it is of
 *  A fresh piece, the caller's, with the old one's id; without one its id is NULL. */
Structure *structure_covered (const Structure *old, const Piece *of, const Spread *spread, const MaterialClass *covering);
