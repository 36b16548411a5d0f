#include <check.h>
#include <math.h>
#include "geometry/least-squares.h"
#include "support/run-suite.h"

/* The normal equations of weighted least squares: Björck, Numerical Methods for Least Squares Problems, 1996, section 1.1. */
START_TEST (a_polynomial_is_given_back_exactly)
{
  const double wanted[LEAST_SQUARES_MOST] = { 1.5, -2, 0.25, 3, -0.5, 0.125, 2, -1, 0.75 };
  const int unknowns = _i;
  LeastSquares sums;
  double x[LEAST_SQUARES_MOST], rest;

  least_squares_begin (&sums, unknowns);
  for (int i = 0; i < 40; i++)
    {
      const double t = -1 + i / 19.5;
      double factors[LEAST_SQUARES_MOST], value = 0;
      for (int k = 0; k < unknowns; k++)
        value += wanted[k] * (factors[k] = cos (k * acos (fmax (-1, fmin (1, t)))));
      least_squares_add (&sums, factors, value, 1 + i % 3);
    }
  ck_assert (least_squares_solve (&sums, x, &rest));
  for (int k = 0; k < unknowns; k++)
    ck_assert_double_eq_tol (x[k], wanted[k], 1e-10);
  ck_assert_double_lt (rest, 1e-10);
}
END_TEST

/* Of one unknown it is the weighted mean, and what is left is the weighted variance. */
START_TEST (weights_count)
{
  const double values[] = { 1, 2, 4, 100 }, weights[] = { 1, 3, 4, 0 }, one = 1;
  LeastSquares sums;
  double mean, rest;

  least_squares_begin (&sums, 1);
  for (int i = 0; i < 4; i++)
    least_squares_add (&sums, &one, values[i], weights[i]);
  ck_assert (least_squares_solve (&sums, &mean, &rest));
  ck_assert_double_eq_tol (mean, 23 / 8.0, 1e-12);
  ck_assert_double_eq_tol (rest, (pow (1 - 2.875, 2) + 3 * pow (2 - 2.875, 2) + 4 * pow (4 - 2.875, 2)) / 8, 1e-12);
  ck_assert (least_squares_solve (&sums, &mean, NULL));
}
END_TEST

START_TEST (an_unknown_left_open_is_said_and_nothing_is_made_up)
{
  LeastSquares sums;
  double x[2] = { 4711, 4711 };

  least_squares_begin (&sums, 2);
  ck_assert (!least_squares_solve (&sums, x, NULL));
  least_squares_add (&sums, (double[]) { 1, 2 }, 5, 1);
  ck_assert (!least_squares_solve (&sums, x, NULL));
  least_squares_add (&sums, (double[]) { 2, 4 }, 10, 1);
  ck_assert (!least_squares_solve (&sums, x, NULL));
  least_squares_add (&sums, (double[]) { 1, -1 }, 2, 1);
  ck_assert (least_squares_solve (&sums, x, NULL));
  ck_assert_double_eq_tol (x[0], 3, 1e-9);
  ck_assert_double_eq_tol (x[1], 1, 1e-9);
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("least squares");
  TCase *tests = tcase_create ("few unknowns");

  tcase_add_loop_test (tests, a_polynomial_is_given_back_exactly, 1, LEAST_SQUARES_MOST + 1);
  tcase_add_test (tests, weights_count);
  tcase_add_test (tests, an_unknown_left_open_is_said_and_nothing_is_made_up);
  return run_suite (suite, tests);
}
