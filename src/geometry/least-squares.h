#pragma once
#include <stdbool.h>

/* Private to the geometry room and those below it. */

enum { LEAST_SQUARES_MOST = 9 };

/** Weighted least squares with few unknowns, added up equation by equation, so that nothing but the sums is kept. */
typedef struct {
  int unknowns;                                             /* 1 to LEAST_SQUARES_MOST */
  double normal[LEAST_SQUARES_MOST][LEAST_SQUARES_MOST], right[LEAST_SQUARES_MOST];
  double weight, square;                                    /* sums of w and of w × value² */
} LeastSquares;

void least_squares_begin (LeastSquares *self, int unknowns);      /* no equation yet; unknowns 1 to LEAST_SQUARES_MOST */
/** One more equation: factors · x = value, counted `weight` times (>= 0); no unit is presumed. */
void least_squares_add (LeastSquares *self, const double factors[], double value, double weight);
/** The unknowns. false where the equations leave one open. *rest (may be NULL) is the mean square of what is left over; no unit is presumed. */
bool least_squares_solve (const LeastSquares *self, double x[], double *rest);
