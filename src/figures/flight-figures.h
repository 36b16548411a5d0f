#pragma once
#include "figures/aerodynamics.h"
#include "document/units.h"
#include "figures/loads.h"

/** Loadings and stall. Level, at sea level in the standard atmosphere, on the area of all wings. The greatest lift coefficient is the
 *  reference wing's: as given (then known to 0.05, unless that is given too), else by its section's class (section_greatest_lift) at
 *  the Reynolds number of its mean chord at the stall, iterated. All NAN without a reference wing or a mass. Pitch speed NAN: it is the
 *  propeller's (power_figures_of). */
FlightFigures flight_figures_of (const Aerodynamics *aerodynamics, const Loads *loads);

/** Says in notes what the flight figures rest on. */
void flight_figures_note (const Figures *figures, GPtrArray *notes);

/** What is said of a wing loading, grams to the dm², above the most for its span: one sentence, translated, in the reader's units. A new string. */
char *flight_loading_words (double loading_g_dm2, double most_g_dm2, Units units);
