#pragma once
#include <stddef.h>

/* Private to the geometry room. */

enum { QUADRATURE_MOST = 5 };

/** Several integrals over one variable, taken together.
 *  values    writes `count` values of the integrand at `at`
 *  accuracy  for each, the absolute error that a panel's Gauss sum may have against its Kronrod sum; the latter, which is
 *            kept, is then better by far */
typedef struct {
  void (*values) (double at, const void *data, double values[]);
  const void *data;
  size_t count;
  double accuracy[QUADRATURE_MOST];
} Quadrature;

/** Adds the integrals from `from` to `to` to sums[]. Gauss–Legendre with 10 places and Kronrod's extension to 21; a panel
 *  that is not accurate enough is halved, at most 24 times.
 *  from, to  radians where the variable is an angle, a fraction 0..1 of a run otherwise;  sums  the integrand's unit times that
 *  source  Kronrod, Nodes and Weights of Quadrature Formulas, 1965; the digits as in Piessens et al., QUADPACK, 1983 */
void quadrature_add (const Quadrature *self, double from, double to, double sums[]);
