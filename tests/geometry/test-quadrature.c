#include <check.h>
#include <math.h>
#include "geometry/quadrature.h"
#include "support/run-suite.h"

typedef struct { int first; int calls; } Powers;

static void
powers (double at, const void *data, double values[])
{
  Powers *self = (Powers *) data;

  self->calls++;
  for (int k = 0; k < QUADRATURE_MOST; k++)
    values[k] = pow (at, self->first + k);
}

/* Kronrod's extension of 10 places to 21 takes polynomials up to the degree 31 exactly; the interval is lopsided, so that odd
 * powers count too. ∫ x^n from a to b = (b^(n+1) - a^(n+1)) / (n + 1). */
START_TEST (polynomials_to_degree_31_are_integrated_to_rounding)
{
  Powers data = { .first = _i };
  const Quadrature quadrature = { .values = powers, .data = &data, .count = QUADRATURE_MOST, .accuracy = { 1, 1, 1, 1, 1 } };
  double sums[QUADRATURE_MOST] = { 0 };

  quadrature_add (&quadrature, -0.75, 1, sums);
  ck_assert_int_eq (data.calls, 21);
  for (int k = 0; k < QUADRATURE_MOST; k++)
    {
      const int n = _i + k;
      ck_assert_double_eq_tol (sums[k], (1 - pow (-0.75, n + 1)) / (n + 1), 3e-15);
    }
}
END_TEST

static void
root (double at, const void *data, double values[])
{
  values[0] = sqrt (at);
}

START_TEST (a_panel_that_is_not_accurate_is_halved)
{
  const Quadrature quadrature = { .values = root, .count = 1, .accuracy = { 1e-9 } };
  double sum = 5;       /* sums are added to */

  quadrature_add (&quadrature, 0, 2.25, &sum);
  ck_assert_double_eq_tol (sum, 5 + 2.25, 1e-9);      /* (2/3) · 1.5³ */
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("integrals");

  tcase_add_loop_test (tests, polynomials_to_degree_31_are_integrated_to_rounding, 0, 32 - QUADRATURE_MOST);
  tcase_add_test (tests, a_panel_that_is_not_accurate_is_halved);
  return run_suite (suite_create ("quadrature"), tests);
}
