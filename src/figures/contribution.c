#include "figures/contribution.h"

#include <math.h>

void
contribution_add (Contributions *list, ContributionKind kind, const Piece *piece, double by)
{
  const double sigma = fabs (by);
  size_t at;

  if (!(sigma > 0))
    return;
  list->variance += sigma * sigma;
  if (list->count == CONTRIBUTIONS_KEPT && !(sigma > list->of[list->count - 1].sigma))
    return;
  at = list->count < CONTRIBUTIONS_KEPT ? list->count++ : list->count - 1;
  for (; at > 0 && list->of[at - 1].sigma < sigma; at--)
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
    [CONTRIBUTION_SHAPE] = "shape", [CONTRIBUTION_LATTICE] = "lattice", [CONTRIBUTION_OUTLINE] = "outline",
    [CONTRIBUTION_GREATEST_LIFT] = "greatest_lift", [CONTRIBUTION_BALANCE_POINT] = "balance_point",
  };

  return words[kind];
}

Contributions
contributions_joined (const Contributions *one, const Contributions *other)
{
  Contributions all = *one;

  for (size_t i = 0; i < other->count; i++)
    contribution_add (&all, other->of[i].kind, other->of[i].piece, other->of[i].sigma);
  all.variance = one->variance + other->variance;
  return all;
}

Contributions
contributions_scaled (const Contributions *list, double factor)
{
  Contributions scaled = *list;

  for (size_t i = 0; i < list->count; i++)
    scaled.of[i].sigma *= fabs (factor);
  scaled.variance *= factor * factor;
  return scaled;
}

double
contribution_sigma (const Contributions *list)
{
  return sqrt (list->variance);
}
