#pragma once
#include "figures/figures.h"

/** Fills in the Reynolds number of the surface's MAC at the stalling speed (m/s) and its section's lift slope with deviation: as given
 *  (then known to 0.03), else by its class; without a speed (NAN) as at 60 000 and the Reynolds number NAN. */
void section_figures_fill (SurfaceFigures *figures, double stall_speed);

/** What the surface's lift is multiplied by when its section has this slope in place of thin-plate theory's.
 *  section_slope  over 2π, > 0
 *  source  the ratio of Polhamus' formula (USAF DATCOM, section 4.1.3.2) with and without it, unswept */
double section_figures_factor (const SurfaceFigures *figures, double section_slope);
