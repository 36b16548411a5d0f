#pragma once
#include "figures/aerodynamics.h"
#include "figures/figures.h"

/** One standard deviation of what the lattice's panels leave, of a place as a share of the MAC and of a lift of itself: the widest promise
 *  of lattice_solve(). */
static const double stability_lattice_place = 0.004, stability_lattice_lift = 0.006;

/** The neutral point with everything counted, its deviation and what that is made of. Solves nothing, so that it may follow every moved
 *  part.
 *
 *  x = Σ Lᵢ xᵢ / Σ Lᵢ + body, xᵢ where the lattice has a surface's lift act, Lᵢ = κᵢ Lᵢ₀ (1 − κ_f εᵢ) / (1 − εᵢ): its lift in the lattice
 *  Lᵢ₀, what its section's slope leaves of it κᵢ (section_figures_factor), its downwash gradient εᵢ, and κ_f of what stands ahead, by
 *  lift, for downwash goes with the lift that makes it; the body's shift goes with 1 / Σ Lᵢ.
 *
 *  σ² is the sum of the squares of what each of these moves the neutral point by at one standard deviation of its own:
 *    sections          each surface's slope by its class (aero/section.h), its own lift and the downwash it makes reckoned again
 *    pressure at tails section_figures_pressure_sigma
 *    downwash          0.04 of the free stream at each surface behind another: between a flat and a rolled-up wake (Glauert, Elements of
 *                      Aerofoil and Airscrew Theory, chapter XII) and between published formulas lies about twice that
 *    body              a quarter of its shift, and half of what the shift changes between the wing's plane and the body's axis; not
 *                      drawn from above, 2.5 % of the MAC, unless the aeroplane has no tail either. Common practice, no source
 *    propellers        half the greatest shift of each (aero/propeller.h), which itself is not counted in x
 *    methods           half the difference of lattice and handbook
 *    rest              gaps, thick edges, warped wood: 1.5 % of the MAC, or as much as brings the whole to 2.5 %, which is what builders
 *                      find on a plain model. Common practice, no source
 *
 *  The other figures' deviations are of the same kind. lift slope: sections, pressure, downwash, and what the panels leave; by the
 *  lattice, without body: likewise, and methods; the handbook's: as the neutral point's, but all of the difference of the methods;
 *  downwash: its own and what the sections ahead leave of it; body's shift: its own, and the lift slope that it is divided by. How well
 *  outlines are traced changes these by less than the panels do.
 *
 *  surfaces     the figures' own copy: gets reynolds, section_slope, section_factor and, times κ, lift_slope_per_rad and its lift in
 *               company
 *  flight       its stalling speed, for the Reynolds numbers; NAN without masses
 *  returns      NAN throughout and `status` where there is no neutral point */
NeutralPointFigures stability_of (const Aerodynamics *aerodynamics, const Aeroplane *aeroplane, SurfaceFigures surfaces[],
                                  const FlightFigures *flight);

/** What the deviations of the handbook's neutral point and of the body's shift are made of; not without the figure itself. */
Contributions stability_handbook_owed (const NeutralPointFigures *point);
Contributions stability_body_owed     (const NeutralPointFigures *point);      /* of the body's shift, mm */

/** Says in notes where the two methods part, and what usually causes it; what the propeller does; and what else the neutral point
 *  rests on. */
void stability_note (const Figures *figures, GPtrArray *notes);

/** The cross flow that a propeller at x_mm is reckoned with, over that of free flow: ahead of the neutral point the wing's upwash at the
 *  nose, behind it 1, for there the downwash only lessens its pull. */
double stability_propeller_flow (const NeutralPointFigures *point, double x_mm);
