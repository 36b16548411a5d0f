#pragma once
#include "document/aeroplane.h"

/** How long a lead must be. Millimetres. */
typedef struct {
  double route;           /* from part to part by way of its places, straight from one to the next, height counted; NAN where an end is not there */
  double needed;          /* with slack */
  double missing;         /* how much longer it would have to be; 0 when it reaches, NAN when its length is not given */
  double extension;       /* the shortest extension sold that makes up for it; 0 when none is needed, NAN when one is not enough */
} LeadNeed;

/** What a lead needs: 1.12 times its route, 10 mm for the loop at the receiver, and 40 mm more where a wing comes off: one end is fixed to a
 *  surface and the other is not. Places on its way lie at the height between its ends.
 *  extensions  100, 150, 200, 300 mm
 *  source      common practice, no source */
LeadNeed lead_need_of (const Aeroplane *aeroplane, const Lead *lead);

/** The same reckoning the other way round: the longest route that a lead of that length serves, mm. */
double   lead_longest_route (const Aeroplane *aeroplane, const Lead *lead, double length);
/** What a lead with a route so long needs, mm. */
double   lead_needed_for (const Aeroplane *aeroplane, const Lead *lead, double route);
