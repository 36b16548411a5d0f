#pragma once
#include "document/units.h"
#include "figures/part-places.h"

/** Why a part cannot be in a bay or a surface, in a few words that stand under its name: "too short: 20 mm, the part is 55 mm long". A new
 *  string; NULL where it can. Whether its rail leads there counts, other parts do not.
 *  room     the id of a bay or a surface
 *  cost     looks into the body: not for each frame of a drag */
char *room_refusal (const Aeroplane *aeroplane, const Part *part, const char *room, Units units);
