#pragma once
#include "drawing/selection.h"
#include "figures/lead-route.h"

/** What a hand does to a lead's way. A place is told by its number in lead_points(). Each makes the next aeroplane, or NULL when it does not
 *  apply. A leg that ran as usual keeps the places that it ran over as given ones as soon as one of them is touched. */

/** The place of that number; false when there is none. */
bool       lead_edit_point   (const Aeroplane *aeroplane, const char *id, size_t index, LeadPoint *point);
/** It moved there, mm. */
Aeroplane *lead_edit_moved   (const Aeroplane *aeroplane, const char *id, size_t index, Point place);
/** One more place on its way, in the stretch that is nearest.
 *  index  set to its number */
Aeroplane *lead_edit_added   (const Aeroplane *aeroplane, const char *id, Point place, size_t *index);
/** It taken out; a joint goes back to the usual place. NULL for a place of the usual way: nobody has put it there. */
Aeroplane *lead_edit_removed (const Aeroplane *aeroplane, const char *id, size_t index);
/** All that are selected taken out, which are places of one lead. */
Aeroplane *lead_edit_all_removed (const Aeroplane *aeroplane, const Selection *selection);
/** The middle of the longest stretch of the lead; of those that begin or end at place `index` if it is one. Not finite without the lead. */
Point      lead_edit_middle  (const Aeroplane *aeroplane, const char *id, size_t index);
