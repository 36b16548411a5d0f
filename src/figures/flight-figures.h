#pragma once
#include "figures/aerodynamics.h"
#include "figures/loads.h"

/** Loadings and stall. Level, at sea level in the standard atmosphere, on the area of all wings. The greatest lift coefficient is that of
 *  flat-bottomed sections of 8–11 % at the Reynolds number of the reference's mean chord at the stall, iterated (common practice, no
 *  source: 0.78 at 30,000, 0.93 at 60,000, 1.03 at 100,000, 1.08 at 150,000, between these in proportion, the end values beyond).
 *  Pitch speed NAN: no motor's figures are held. */
FlightFigures flight_figures_of (const Aerodynamics *aerodynamics, const Loads *loads);

/** Says in notes what the flight figures rest on. */
void flight_figures_note (const Figures *figures, GPtrArray *notes);
