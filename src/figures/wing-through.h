#pragma once
#include "document/aeroplane.h"
#include "figures/body-profile.h"

/** The matter of a wing that passes through a body, or lies against it: what else stands in the body stands above it or beneath it. */
typedef struct {
  const Surface *surface;       /* lent; of several that which was found last */
  double bottom, top;           /* z, mm: the lowest and the highest of it over the place asked for */
} WingThrough;

/** Whether that surface is over or under a box seen from above: its middle, mm, and size along x and y, mm; and from where to where it reaches there.
 *  false: it is a fin, has no thickness, ends at the body's sides (root_open), or lies elsewhere.
 *  method  section_half_thickness about the chord line, turned by the incidence about the leading edge, raised by the dihedral; six places along
 *          the chord, at the box's nearest and farthest station */
bool wing_through (const Surface *surface, Point middle, double length, double width, WingThrough *through);

/** The same of all surfaces together that a part must keep clear of: only what is moved about to balance (motor, speed controller, battery, receiver,
 *  servo, switch) must, and not of the surface it is fixed to. Ballast, magnets and screws are let into a wing. */
bool wings_through (const Aeroplane *aeroplane, const Part *part, Point middle, double length, double width, WingThrough *through);

/** What a wing leaves of what is clear in a body, in mm: above it, and beneath it. */
BodyClear body_clear_above   (BodyClear clear, const WingThrough *through);
BodyClear body_clear_beneath (BodyClear clear, const WingThrough *through);
