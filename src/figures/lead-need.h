#pragma once
#include "figures/lead-route.h"

/** How long a lead must be, or one leg of a two-into-one lead. Millimetres. */
typedef struct {
  double route;           /* its way (lead-route.h), straight from one place to the next, height counted; NAN where an end is not there */
  double needed;          /* with slack */
  double left;            /* how much of its length is left over; 0 when it does not reach, NAN when its length is not given */
  double missing;         /* how much longer it would have to be; 0 when it reaches, NAN likewise */
  double extension;       /* the shortest extension sold that makes up for it; 0 when none is needed, NAN when one is not enough */
} LeadNeed;

/** What a leg needs: its way times the lead's slack (1.12 unless given); on the leg that reaches LEG_TO's part 10 mm for the loop there, and
 *  where the wing comes off what the hand needs between wing and body (40 mm unless given). It comes off, unless the lead says otherwise,
 *  where one end is fixed to a surface and the other is not. Places on its way lie at the height between its ends.
 *  extensions  100, 150, 200, 300, 450, 600 mm
 *  source      common practice, no source */
LeadNeed lead_need_of (const Aeroplane *aeroplane, const Lead *lead, LeadLeg leg);

/** The same for a way that is known already, mm. */
LeadNeed lead_need_along (const Aeroplane *aeroplane, const Lead *lead, LeadLeg leg, double route);
/** What share of its way the leg's length serves; INFINITY where it reaches, to within half a millimetre, or its length is not given. */
double   lead_share_served (const Aeroplane *aeroplane, const Lead *lead, LeadLeg leg, const LeadNeed *need);

/** The same reckoning the other way round: the longest way that a leg of that length serves, mm. */
double   lead_longest_route (const Aeroplane *aeroplane, const Lead *lead, LeadLeg leg, double length);
/** What a leg with a way so long needs, mm. */
double   lead_needed_for (const Aeroplane *aeroplane, const Lead *lead, LeadLeg leg, double route);

double   lead_slack     (const Lead *lead);                                   /* as given, or as usual; a ratio, its length over its way's */
double   lead_allowance (const Lead *lead);                                   /* mm, likewise */
bool     lead_unplugs   (const Aeroplane *aeroplane, const Lead *lead);       /* with the wing; likewise */
/** The shortest extension sold that makes up for what is missing, mm: 0 when nothing is, NAN when one is not enough. */
double   lead_extension_for (double missing);
/** The longest extension sold, mm. */
double   lead_extension_longest (void);
