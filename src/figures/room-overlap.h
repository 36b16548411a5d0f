#pragma once
#include "figures/room-faults.h"

/** Adds a fault (ROOM_OVERLAP) for each two of these parts, lent, whose boxes stand more than `tolerance` mm in each other's place, in x, y and z.
 *  cost  parts along the body are passed once: n log n, and a look at each two that share a station */
void room_overlaps_find (GArray *faults, GPtrArray *parts, double tolerance);
