#pragma once
#include "document/aeroplane.h"

/** Where a new part finds room on the centre line, mm aft of the datum, to the whole mm: at `usual` or as near to it as boxes
 *  do not overlap, seen from above, aft before forward; within the first body where its box fits there. What goes round or over other
 *  parts (propeller, spinner, cowl, canopy), hangs outside or runs along (wheels, undercarriage, pushrod) only keeps clear of its own
 *  class. `usual` itself where there is no room at all. */
double part_room_x (const Aeroplane *aeroplane, const Part *wanted, double usual);
