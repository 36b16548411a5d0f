#pragma once
#include "figures/figures.h"

/** Fills in the Reynolds number of the surface's MAC at the stalling speed (m/s) and its section's lift slope, both with deviation: the
 *  slope as given (then known to 0.03), else by its class, its deviation as given all the same; without a speed (NAN) as at 60 000 and the
 *  Reynolds number NAN. The Reynolds number is as well known as the speed: the chord's part is nothing beside it. */
void section_figures_fill (SurfaceFigures *figures, double stall_speed, double stall_sigma);

/** One standard deviation of the pressure ratio at a surface: as given; else for a tailplane 0.05, or 0.03 where its ratio is given, and 0
 *  for any other, which stands in free flow. Common practice, no source: 0.85 to 0.95 is usual behind a wing. */
double section_figures_pressure_sigma (const Surface *surface);

/** What the surface's lift is multiplied by when its section has this slope in place of thin-plate theory's.
 *  section_slope  over 2π, > 0
 *  source  the ratio of Polhamus' formula (USAF DATCOM, section 4.1.3.2) with and without it, unswept */
double section_figures_factor (const SurfaceFigures *figures, double section_slope);
