#pragma once
#include "figures/lead-route.h"

/** What a lead is called in lists: "Lead Battery – Controller", a two-into-one lead's own name. A new string. */
char *lead_title (const Aeroplane *aeroplane, const Lead *lead);
/** The same of one leg: "Two-into-one lead, to Servo, left". A new string. */
char *lead_leg_title (const Aeroplane *aeroplane, const Lead *lead, LeadLeg leg);
/** What the part at a leg's end is called. Lent. */
const char *lead_end_name (const Aeroplane *aeroplane, const char *id);
/** A lead that weighs something itself, or is a two-into-one lead, as the part that lists show: with its id, its name, its mass, and where
 *  that is; aboard when its ends are. A new piece; NULL for every other lead, and where an end is not there. */
Part *lead_as_part (const Aeroplane *aeroplane, const Lead *lead);
/** The part that a piece is in lists: a part itself, or what lead_as_part makes of a lead; NULL for all else. A reference, the caller's. */
Part *piece_as_part (const Aeroplane *aeroplane, const Piece *piece);
