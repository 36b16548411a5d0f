#include <check.h>
#include <math.h>
#include <stdlib.h>
#include "geometry/ascending.h"
#include "support/run-suite.h"

START_TEST (numbers_are_sorted_the_smallest_first)
{
  double doubles[] = { 3, -1e300, 0.5, INFINITY, 0.5, -2, 1e-300 };
  float floats[] = { 3, -1e30f, 0.5f, INFINITY, 0.5f, -2, 1e-30f };

  qsort (doubles, 7, sizeof *doubles, ascending_doubles);
  qsort (floats, 7, sizeof *floats, ascending_floats);
  for (int i = 1; i < 7; i++)
    {
      ck_assert (doubles[i - 1] <= doubles[i]);
      ck_assert (floats[i - 1] <= floats[i]);
    }
}
END_TEST

/* Cutting the difference down to an integer would call these equal. */
START_TEST (numbers_less_than_one_apart_are_not_equal)
{
  ck_assert_int_lt (ascending_doubles (&(double) { 0.25 }, &(double) { 0.5 }), 0);
  ck_assert_int_gt (ascending_floats (&(float) { 0.5f }, &(float) { 0.25f }), 0);
  ck_assert_int_eq (ascending_doubles (&(double) { 0.5 }, &(double) { 0.5 }), 0);
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("ascending");
  TCase *tests = tcase_create ("numbers");

  tcase_add_test (tests, numbers_are_sorted_the_smallest_first);
  tcase_add_test (tests, numbers_less_than_one_apart_are_not_equal);
  return run_suite (suite, tests);
}
