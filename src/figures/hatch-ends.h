#pragma once
#include "document/units.h"
#include "figures/hatch-figures.h"

/** How near to a former, ahead of it or behind, an edge of the opening is moved to it, mm: a builder would rather let the lid end on the former
 *  than cut through it for so little or leave a strip; the room for a hand and for the bend of leads has so much to spare. Common practice, no
 *  source. */
#define HATCH_NEAR_FORMER_MM 3.0

/** Moves the forward edge aft to where a firewall ahead of the floor ends, and says by how much: that is not cut, so the room for the bend of leads
 *  has so much less. A firewall stands where a motor says (nose_firewall_face). */
void hatch_end_behind_firewalls (HatchFigures *hatch, const Aeroplane *aeroplane, const RoomProfiles *bodies);

/** Moves each edge of the opening to the nearest former where one is so near, and says by how much. No further in than to the floor that the
 *  packs need. Any other edge is put on the nearest whole millimetre, so that every length read from it agrees with every other. */
void hatch_end_at_formers (HatchFigures *hatch, const Aeroplane *aeroplane);

/** That they are moved, in a sentence or two. A new string, translated; NULL where none is. */
char *hatch_moved_text (const HatchFigures *hatch, Units units);
