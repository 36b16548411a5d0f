#pragma once
#include "figures/figures.h"

/** Adds one share to a list that keeps the greatest, in falling order. `by` may have either sign; nought, NAN and what is too
 *  small for the list are left out. In the unit of the figure that the list is of (mm, grams, a ratio …). */
void contribution_add (Contributions *list, ContributionKind kind, const Piece *piece, double by);
/** Both together. */
Contributions contributions_joined (const Contributions *one, const Contributions *other);
/** The same deviation in another unit, or of a figure that goes with it: every share times the factor.
 *  The factor is the new unit over the old (no unit where that stays). */
Contributions contributions_scaled (const Contributions *list, double factor);
/** What it is, for programs: "downwash". */
const char *contribution_word (ContributionKind kind);

/** The root of the sum of squares of all that was added, also of what fell out of the list. In the unit of what was added (mm, grams …), >= 0. */
double contribution_sigma (const Contributions *list);
