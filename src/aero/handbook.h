#pragma once
#include "geometry/status.h"
#include "geometry/outline.h"
#include "geometry/planform.h"

/** Published closed formulas, the second opinion beside the lattice. Angles in radians, slopes per radian. */

/** Lift slope of a straight-tapered wing: 2πA / (2 + √(A²/k² (1 + tan²Λ_c/2) + 4)), incompressible.
 *  A > 0 aspect ratio; half_chord_sweep Λ at half chord; k section slope / 2π, 1 for a thin plate.
 *  source  Polhamus; USAF DATCOM, section 4.1.3.2 */
double handbook_lift_slope (double aspect_ratio, double half_chord_sweep, double section_ratio);

/** Downwash gradient, radians per radian: dε/dα = 4.44 (K_A K_λ K_H √cos Λ_c/4)^1.19
 *  with K_A = 1/A − 1/(1 + A^1.7), K_λ = (10 − 3λ)/7, K_H = (1 − |h/b|)/∛(2 l/b).
 *  arm l from the wing's quarter MAC to the tail's, height h between their planes, over the span b; l > 0.
 *  Aspect ratio A > 0, taper λ a ratio, sweep in radians (less than a right angle); both places are ratios.
 *  source  USAF DATCOM; Etkin and Reid, Dynamics of Flight, 3rd ed., appendix B */
double handbook_downwash (double aspect_ratio, double taper, double quarter_chord_sweep, double arm_over_span, double height_over_span);

/** S_t l_t / (S c), no unit; the arm is signed, positive aft. Lengths in any one unit, areas in its square. */
double handbook_tail_volume (double tail_area, double arm, double area, double chord);

/** One surface as the handbook sees it. */
typedef struct {
  const Outline *outline;      /* lent */
  PlanformSides sides;
  double z;
  double pressure_ratio;
} HandbookSurface;

/** Neutral point of several horizontal surfaces, the first of which is the reference wing: each by its lift slope at its
 *  quarter MAC; surfaces behind the wing in its downwash, those ahead in free flow (and the wing then in theirs).
 *  Sweep at the half and quarter chord and taper are those of the straight-tapered wing of the same area, MAC and MAC station.
 *  neutral_point_x  set on success, in the outlines' unit, aft of the datum
 *  lift_slope       likewise, per radian on the wing's area; may be NULL
 *  returns  CORE_OK; what planform_measure and planform_cut give; CORE_OUT_OF_RANGE where the downwash formula does not hold (planes a
 *           span apart, a gradient of 1) or there is no lift */
CoreStatus handbook_neutral_point (const HandbookSurface surfaces[], size_t count, double *neutral_point_x, double *lift_slope);
