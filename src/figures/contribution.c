#include "figures/contribution.h"

#include <math.h>

void
contribution_add (Contributions *list, ContributionKind kind, const Piece *piece, double sigma_mm)
{
  const double sigma = fabs (sigma_mm);
  size_t at;

  if (!(sigma > 0))
    return;
  list->variance_mm2 += sigma * sigma;
  if (list->count == CONTRIBUTIONS_KEPT && !(sigma > list->of[list->count - 1].sigma_mm))
    return;
  at = list->count < CONTRIBUTIONS_KEPT ? list->count++ : list->count - 1;
  for (; at > 0 && list->of[at - 1].sigma_mm < sigma; at--)
    list->of[at] = list->of[at - 1];
  list->of[at] = (Contribution) { kind, piece, sigma };
}

const char *
contribution_word (ContributionKind kind)
{
  static const char *const words[] = {
    [CONTRIBUTION_SECTION] = "section", [CONTRIBUTION_PRESSURE] = "pressure_ratio", [CONTRIBUTION_DOWNWASH] = "downwash",
    [CONTRIBUTION_BODY] = "body", [CONTRIBUTION_PROPELLER] = "propeller", [CONTRIBUTION_METHODS] = "methods",
    [CONTRIBUTION_REST] = "rest", [CONTRIBUTION_MASS] = "mass", [CONTRIBUTION_PLACE] = "place",
  };

  return words[kind];
}

Contributions
contributions_joined (const Contributions *one, const Contributions *other)
{
  Contributions all = *one;

  for (size_t i = 0; i < other->count; i++)
    contribution_add (&all, other->of[i].kind, other->of[i].piece, other->of[i].sigma_mm);
  all.variance_mm2 = one->variance_mm2 + other->variance_mm2;
  return all;
}

double
contribution_sigma (const Contributions *list)
{
  return sqrt (list->variance_mm2);
}
