#pragma once
#include "figures/figures.h"

/** Adds one share to a list that keeps the greatest, in falling order. `sigma_mm` may have either sign; nought, NAN and what is too
 *  small for the list are left out. */
void contribution_add (Contributions *list, ContributionKind kind, const Piece *piece, double sigma_mm);
/** Both together. */
Contributions contributions_joined (const Contributions *one, const Contributions *other);
/** What it is, for programs: "downwash". */
const char *contribution_word (ContributionKind kind);

/** The root of the sum of squares of all that was added, also of what fell out of the list, mm. */
double contribution_sigma (const Contributions *list);
