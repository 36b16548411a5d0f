#pragma once
#include "figures/aerodynamics.h"
#include "figures/figures.h"
#include "figures/loads.h"

/** Margin, target, limits and marks from the neutral point and the balance point. Percents of the reference wing's MAC.
 *  marks is a new array; none without a target. */
BalanceFigures balance_figures_of (const Aeroplane *aeroplane, const Aerodynamics *aerodynamics, const Loads *loads,
                                   const NeutralPointFigures *point);

/** The place of each part with a rail, in the document's order, as many as *count tells; a new array. A part left out is reckoned as
 *  if it came aboard besides the rest. NAN throughout without a target or a balance point.
 *  figures  with masses, neutral point and balance figures filled in */
Solution *solutions_of (const Figures *figures, const Aerodynamics *aerodynamics, const Loads *loads, size_t *count);

/** Says in notes what margin, marks and rails lack or should be looked at. */
void balance_figures_note (const Figures *figures, GPtrArray *notes);
