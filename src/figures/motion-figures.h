#pragma once
#include "figures/aerodynamics.h"
#include "figures/figures.h"

/** The solve's answer to being turned: each surface's share of the dampings times what its section leaves of a thin plate's lift. In pitch
 *  the aeroplane turns about its balance point, without one about the neutral point. NAN throughout without a neutral point.
 *
 *  Deviations, the squares' sum of: each section's slope and each pressure ratio on its own share; 5 % of a damping for what linear theory
 *  does not know (common practice, no source); what the panels leave; in pitch, where the balance point lies. The span efficiency has
 *  what the panels leave and the outline's tolerance, which is more than it can change by.
 *
 *  surfaces  the figures', stability_of() called before
 *  returns   one reference to the loading, the caller's */
MotionFigures motion_figures_of (const Aerodynamics *aerodynamics, const SurfaceFigures surfaces[], const NeutralPointFigures *point,
                                 const MassFigures *mass);
