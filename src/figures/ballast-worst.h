#pragma once
#include "figures/ballast-told.h"

/** Nose weight in the worst case: balance point and neutral point together off by two standard deviations, the tail heavier than reckoned. */
typedef struct {
  double further_mm;            /* so much further aft than reckoned the balance point is, by the neutral point, then; NAN: not known */
  const Part *slider;           /* stands at the fore end of its rail; NULL: nothing slides */
  BallastTold told;             /* mass_g 0 where none is needed; no deviation */
} BallastWorst;

/** By n = W (x + 2σ − x_t) / (x_t − x_n), σ the static margin's deviation as a length: 39 times out of 40 it is less.
 *  cost     as ballast_told_of
 *  source   FAA-H-8083-1, Weight and Balance Handbook, chapter on adding or removing weight; two deviations: textbook statistics */
BallastWorst ballast_worst_of   (const Figures *figures);
/** One sentence. A new string; NULL where it is not known. */
char        *ballast_worst_text (const BallastWorst *self, Units units);
