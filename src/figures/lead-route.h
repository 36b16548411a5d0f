#pragma once
#include "document/aeroplane.h"

/** Which way a lead runs. Where nobody has put places on a leg's way it runs as usual: from a part that is fixed to a wing or tail along
 *  that at the part's own share of the chord inboard to the centre line, then along the body; between all other things straight. Lengths
 *  mm, x aft of the datum, y to starboard, z up.
 *  source  common practice, no source */

/** A place that a hand can take hold of. */
typedef struct {
  Point place;
  LeadLeg leg;
  size_t via;             /* its number in the file; LEAD_NO_VIA for the joint and for a place of the usual way */
  bool joint;
} LeadPoint;
#define LEAD_NO_VIA ((size_t) -1)

/** All places on its way, the parts at its ends left out: the joint of a two-into-one lead first, then leg after leg those given, or those
 *  of the usual way. A new array of LeadPoint; empty where an end is not there. */
GArray *lead_points      (const Aeroplane *aeroplane, const Lead *lead);
/** Whether that leg runs as usual by way of places that nobody has put there. */
bool    lead_runs_as_usual (const Aeroplane *aeroplane, const Lead *lead, LeadLeg leg);
/** How many legs it has: 1, or 3. */
int     lead_leg_count   (const Lead *lead);
/** The way of one leg with both its ends, from the part on, of LEG_TO from the joint on. A new array of Point; NULL where an end is not
 *  there. */
GArray *lead_route       (const Aeroplane *aeroplane, const Lead *lead, LeadLeg leg);
/** The same way seen from the side, x aft and z up in a Point's x and y. A place in the wing or tail that one end is fixed to is in its plane, at
 *  the dihedral's height; between that and the ends heights go by the way's length seen from above. */
GArray *lead_route_from_side (const Aeroplane *aeroplane, const Lead *lead, LeadLeg leg);
/** How much higher the end of that way is than its beginning, mm; NAN where an end is not there. The joint is at the mean height of the two
 *  parts that it joins. */
double  lead_rise        (const Aeroplane *aeroplane, const Lead *lead, LeadLeg leg);
/** How long that way is, straight from one place to the next, that rise counted, mm; NAN likewise. */
double  lead_way         (const Aeroplane *aeroplane, const Lead *lead, LeadLeg leg);
/** The same of a route that is known already (lead_route of that leg). In mm. */
double  lead_way_along   (const Aeroplane *aeroplane, const Lead *lead, LeadLeg leg, const GArray *route);
/** Where the legs meet: as given, else where the ways of the two that are joined reach the centre line, or half-way between them. NAN where
 *  one of the two is not there. */
Point   lead_joint       (const Aeroplane *aeroplane, const Lead *lead);
/** Where its own mass is, x, y and z: at the joint, of a plain lead half-way. False where an end is not there. In mm. */
bool    lead_mass_place  (const Aeroplane *aeroplane, const Lead *lead, double place[3]);
