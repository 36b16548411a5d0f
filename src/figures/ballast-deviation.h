#pragma once
#include "figures/figures.h"

/** Ballast that brings the balance to a target: what its deviation is made of. Millimetres, grams. */
typedef struct {
  const LoadFigures *loads;  size_t count;     /* all aboard */
  const Part *part;             /* stands at part_x_mm instead, as if aboard; NULL when nothing moves */
  double part_x_mm;
  double target_x_mm, ballast_x_mm, ballast_g;
  const Contributions *target_owed;            /* what the target's deviation is made of */
} BallastCase;

/** Shares in grams, to the first order: of a mass (x − x_t) σ_m / (x_t − x_b), of its place m σ_x / (x_t − x_b), of the target
 *  (W + ballast) / (x_t − x_b), W all that is aboard with the part. */
Contributions ballast_owed (const BallastCase *wanted);
