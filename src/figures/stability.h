#pragma once
#include "figures/aerodynamics.h"

/** The neutral point with everything counted, its deviation and what that is made of. Solves nothing, so that it may follow every moved
 *  part.
 *
 *  x = Σ Lᵢ xᵢ / Σ Lᵢ + body, xᵢ where the lattice has a surface's lift act, Lᵢ = κᵢ Lᵢ₀ (1 − κ_f εᵢ) / (1 − εᵢ): its lift in the lattice
 *  Lᵢ₀, what its section's slope leaves of it κᵢ (section_figures_factor), its downwash gradient εᵢ, and κ_f of what stands ahead, by
 *  lift, for downwash goes with the lift that makes it; the body's shift goes with 1 / Σ Lᵢ.
 *
 *  σ² is the sum of the squares of what each of these moves the neutral point by at one standard deviation of its own:
 *    sections          each surface's slope by its class (aero/section.h), its own lift and the downwash it makes reckoned again
 *    pressure at tails 0.05 of the ratio; 0.03 where it is given. Common practice, no source: 0.85 to 0.95 is usual behind a wing
 *    downwash          0.04 of the free stream at each surface behind another: between a flat and a rolled-up wake (Glauert, Elements of
 *                      Aerofoil and Airscrew Theory, chapter XII) and between published formulas lies about twice that
 *    body              a quarter of its shift, and half of what the shift changes between the wing's plane and the body's axis; not
 *                      drawn from above, 2.5 % of the MAC, unless the aeroplane has no tail either. Common practice, no source
 *    propellers        half the greatest shift of each (aero/propeller.h), which itself is not counted in x
 *    methods           half the difference of lattice and handbook
 *    rest              gaps, thick edges, warped wood: 1.5 % of the MAC, or as much as brings the whole to 2.5 %, which is what builders
 *                      find on a plain model. Common practice, no source
 *
 *  surfaces     the figures' own copy: gets reynolds, section_slope, section_factor and, times κ, lift_slope_per_rad and its lift in
 *               company
 *  stall_speed  m/s, for the Reynolds numbers; NAN without masses
 *  returns      NAN throughout and `status` where there is no neutral point */
NeutralPointFigures stability_of (const Aerodynamics *aerodynamics, const Aeroplane *aeroplane, SurfaceFigures surfaces[],
                                  double stall_speed);

/** Says in notes where the two methods part, and what usually causes it; what the propeller does; and what else the neutral point
 *  rests on. */
void stability_note (const Figures *figures, GPtrArray *notes);

/** The same solve's answer to being turned; axis_x, mm aft of the datum, is what the aeroplane turns about in pitch (NAN: the
 *  damping in pitch is NAN). NAN throughout without a neutral point. One reference to the loading, the caller's. */
MotionFigures motion_figures_of (const Aerodynamics *aerodynamics, const NeutralPointFigures *point, double axis_x);

/** The cross flow that a propeller at x_mm is reckoned with, over that of free flow: ahead of the neutral point the wing's upwash at the
 *  nose, behind it 1, for there the downwash only lessens its pull. */
double stability_propeller_flow (const NeutralPointFigures *point, double x_mm);
