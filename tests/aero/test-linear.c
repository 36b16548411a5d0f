#include <check.h>
#include <math.h>
#include <stdlib.h>
#include "aero/linear.h"
#include "support/run-suite.h"

enum { size = 7 };

/* Hilbert's matrix moved away from singular: full, unsymmetric after the twist, nothing round. */
static void
fill_matrix (double a[size * size])
{
  for (int j = 0; j < size; j++)
    for (int i = 0; i < size; i++)
      a[j * size + i] = 1.37 / (1 + i + j) + (i == j ? 0.61 : 0) + 0.013 * i;
}

static void
multiply (const double a[size * size], const double x[size], double b[size])
{
  for (int i = 0; i < size; i++)
    {
      b[i] = 0;
      for (int j = 0; j < size; j++)
        b[i] += a[j * size + i] * x[j];
    }
}

START_TEST (what_is_solved_gives_the_right_side_back)
{
  const double wanted[size] = { 0.31, -1.7, 2.23, 0.049, -5.1, 3.3, 0.77 };
  double a[size * size], b[size];
  int pivots[size];

  fill_matrix (a);
  multiply (a, wanted, b);
  ck_assert_int_eq (linear_solve (size, 1, a, pivots, b), CORE_OK);
  for (int i = 0; i < size; i++)
    ck_assert_double_eq_tol (b[i], wanted[i], 1e-12);   /* condition about 10, rounding 1e-16 */
}
END_TEST

START_TEST (the_factors_serve_again_for_several_right_sides)
{
  const double first[size] = { 1.3, 0.2, -0.7, 4.1, 0.01, -2.2, 0.9 }, second[size] = { -0.3, 7.7, 0.6, -1.1, 2.9, 0.4, 8.8 };
  double a[size * size], unused[size] = { 1 }, b[2 * size];
  int pivots[size];

  fill_matrix (a);
  multiply (a, first, b);
  multiply (a, second, b + size);
  ck_assert_int_eq (linear_solve (size, 1, a, pivots, unused), CORE_OK);
  ck_assert_int_eq (linear_solve_again (size, 2, a, pivots, b), CORE_OK);
  for (int i = 0; i < size; i++)
    {
      ck_assert_double_eq_tol (b[i], first[i], 1e-12);
      ck_assert_double_eq_tol (b[size + i], second[i], 1e-12);
    }
}
END_TEST

START_TEST (two_equal_equations_are_singular_and_leave_the_right_side)
{
  double a[size * size], b[size];
  int pivots[size];

  fill_matrix (a);
  for (int j = 0; j < size; j++)
    a[j * size + 5] = a[j * size + 2];
  for (int i = 0; i < size; i++)
    b[i] = 0.25 * i;
  ck_assert_int_eq (linear_solve (size, 1, a, pivots, b), CORE_SINGULAR);
  for (int i = 0; i < size; i++)
    ck_assert_double_eq (b[i], 0.25 * i);
}
END_TEST

START_TEST (not_a_number_in_the_matrix_is_singular)
{
  double a[size * size], b[size] = { 1 };
  int pivots[size];

  fill_matrix (a);
  a[3 * size + 4] = NAN;
  ck_assert_int_eq (linear_solve (size, 1, a, pivots, b), CORE_SINGULAR);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("linear");

  tcase_add_test (tests, what_is_solved_gives_the_right_side_back);
  tcase_add_test (tests, the_factors_serve_again_for_several_right_sides);
  tcase_add_test (tests, two_equal_equations_are_singular_and_leave_the_right_side);
  tcase_add_test (tests, not_a_number_in_the_matrix_is_singular);
  return run_suite (suite_create ("linear"), tests);
}
