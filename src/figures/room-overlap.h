#pragma once
#include "figures/room-faults.h"

/** Adds a fault (ROOM_OVERLAP) for each two of these parts, lent, whose boxes stand more than `tolerance` mm in each other's place, in x, y and
 *  z. Of ever so many that stand in one heap the first ROOM_OVERLAPS_MOST are told: nobody reads further.
 *  cost  parts along the body are passed once: n log n, and a look at each two that share a station */
void room_overlaps_find (GArray *faults, GPtrArray *parts, double tolerance);
enum { ROOM_OVERLAPS_MOST = 1000 };
