#include <check.h>
#include <math.h>
#include <stdlib.h>
#include "balance/weighed.h"
#include "support/run-suite.h"

/* Least squares weighted by the deviations (Gauss 1809; by hand where it is said). Kilograms and metres. */

static const bool all[] = { true, true, true, true };
static const double SURE = 1e-9;

/* 40 ± 4 g at 100 mm and 20 ± 2 g at 400 mm. */
static void
set_two (MassItem items[2])
{
  items[0] = (MassItem) { .mass = 0.040, .mass_sigma = 0.004, .x = 0.1 };
  items[1] = (MassItem) { .mass = 0.020, .mass_sigma = 0.002, .x = 0.4 };
}

/* 6 g too much, shared as 16 to 4: 4.8 and 1.2 g. */
START_TEST (what_the_scale_shows_more_is_shared_by_how_little_each_mass_is_known)
{
  const Weighed weighed = { 0.066, SURE, NAN, NAN };
  MassItem items[2];

  set_two (items);
  ck_assert_int_eq (weighed_correct (items, all, 2, &weighed), CORE_OK);
  ck_assert_double_eq_tol (items[0].mass, 0.0448, 1e-8);
  ck_assert_double_eq_tol (items[1].mass, 0.0212, 1e-8);
  ck_assert_double_eq (items[0].x, 0.1);
}
END_TEST

/* Two masses in known places: 66 g at 190 mm can only be 46.2 and 19.8 g. */
START_TEST (mass_and_balance_together_find_two_masses)
{
  const Weighed weighed = { 0.066, SURE, 0.19, SURE };
  MassItem items[2];

  set_two (items);
  ck_assert_int_eq (weighed_correct (items, all, 2, &weighed), CORE_OK);
  ck_assert_double_eq_tol (items[0].mass, 0.0462, 1e-8);
  ck_assert_double_eq_tol (items[1].mass, 0.0198, 1e-8);
}
END_TEST

/* 30 g each, 100 ± 3 and 300 ± 6 mm; it balances at 205, not 200: 60 g × 5 mm, shared as 9 to 36 over 30 g each: 2 and 8 mm. */
START_TEST (what_is_weighed_already_moves_in_the_place_that_is_known_least)
{
  const Weighed weighed = { 0.060, SURE, 0.205, SURE };
  MassItem items[] = { { .mass = 0.030, .x = 0.1, .x_sigma = 0.003 }, { .mass = 0.030, .x = 0.3, .x_sigma = 0.006 } };

  ck_assert_int_eq (weighed_correct (items, all, 2, &weighed), CORE_OK);
  ck_assert_double_eq_tol (items[0].x, 0.102, 1e-8);
  ck_assert_double_eq_tol (items[1].x, 0.308, 1e-8);
  ck_assert_double_eq_tol (items[0].mass, 0.030, 1e-12);
}
END_TEST

/* A scale as uncertain as the sum takes it half the way, and leaves 1/√2 of the deviation. */
START_TEST (a_poor_scale_is_believed_by_half_and_halves_the_variance)
{
  const double known = hypot (0.004, 0.002);
  const Weighed weighed = { 0.066, known, NAN, NAN };
  MassItem items[2];

  set_two (items);
  ck_assert_int_eq (weighed_correct (items, all, 2, &weighed), CORE_OK);
  ck_assert_double_eq_tol (items[0].mass + items[1].mass, 0.063, 1e-12);
  ck_assert_double_eq_tol (hypot (items[0].mass_sigma, items[1].mass_sigma), known / sqrt (2), 1e-12);
}
END_TEST

START_TEST (what_was_not_on_the_scale_is_left_as_it_is)
{
  static const bool first[] = { true, false };
  const Weighed weighed = { 0.050, SURE, 0.11, 0.001 };
  MassItem items[2];

  set_two (items);
  ck_assert_int_eq (weighed_correct (items, first, 2, &weighed), CORE_OK);
  ck_assert_double_eq_tol (items[0].mass, 0.050, 1e-7);
  ck_assert_double_eq (items[1].mass, 0.020);
  ck_assert_double_eq (items[1].x, 0.4);
  ck_assert_double_eq (items[1].mass_sigma, 0.002);
}
END_TEST

static double
drawn (double least, double most)
{
  return least + (most - least) * rand () / RAND_MAX;
}

/* Twice what is against a correction: squares over variances; moments to the first order about where it balances. */
static double
cost (const MassItem before[], const double change[][2], size_t count, const Weighed *weighed)
{
  double sum = 0, mass = 0, moment = 0;

  for (size_t i = 0; i < count; i++)
    {
      const double arm = before[i].x - weighed->x;
      sum += pow (change[i][0] / before[i].mass_sigma, 2) + pow (change[i][1] / before[i].x_sigma, 2);
      mass += before[i].mass + change[i][0];
      moment += before[i].mass * arm + change[i][0] * arm + before[i].mass * change[i][1];
    }
  return sum + pow ((weighed->mass - mass) / weighed->mass_sigma, 2) + pow (moment / (weighed->mass * weighed->x_sigma), 2);
}

START_TEST (no_other_correction_is_likelier)
{
  enum { COUNT = 4, OTHERS = 200 };
  MassItem before[COUNT], after[COUNT];
  double change[COUNT][2], other[COUNT][2], mass = 0, moment = 0;

  srand ((unsigned) _i + 1);
  for (int i = 0; i < COUNT; i++)
    {
      before[i] = after[i] = (MassItem) { .mass = drawn (0.02, 0.05), .mass_sigma = drawn (0.001, 0.004), .x = drawn (0, 0.5),
                                          .x_sigma = drawn (0.002, 0.01) };
      mass += before[i].mass;
      moment += before[i].mass * before[i].x;
    }
  const Weighed weighed = { mass * drawn (0.95, 1.05), drawn (0.0005, 0.003), moment / mass + drawn (-0.01, 0.01), drawn (0.001, 0.005) };
  ck_assert_int_eq (weighed_correct (after, all, COUNT, &weighed), CORE_OK);
  for (int i = 0; i < COUNT; i++)
    {
      change[i][0] = after[i].mass - before[i].mass;
      change[i][1] = after[i].x - before[i].x;
    }
  const double least = cost (before, (const double (*)[2]) change, COUNT, &weighed);
  for (int k = 0; k < OTHERS; k++)
    {
      for (int i = 0; i < COUNT; i++)
        {
          other[i][0] = change[i][0] + drawn (-0.1, 0.1) * before[i].mass_sigma;
          other[i][1] = change[i][1] + drawn (-0.1, 0.1) * before[i].x_sigma;
        }
      ck_assert_double_ge (cost (before, (const double (*)[2]) other, COUNT, &weighed), least);
    }
}
END_TEST

/* 10 g where 60 were reckoned, far behind: some mass would have to be less than nothing. */
START_TEST (what_cannot_be_leaves_no_mass_negative_and_still_weighs_and_balances_so)
{
  const Weighed weighed = { 0.010, SURE, 0.5, SURE };
  MassItem items[2];

  set_two (items);
  ck_assert_int_eq (weighed_correct (items, all, 2, &weighed), CORE_OK);
  ck_assert (items[0].mass > 0 && items[1].mass > 0);
  ck_assert_double_eq_tol (items[0].mass + items[1].mass, 0.010, 1e-12);
  ck_assert_double_eq_tol (items[0].mass * items[0].x + items[1].mass * items[1].x, 0.010 * 0.5, 1e-12);
}
END_TEST

START_TEST (nothing_on_the_scale_is_refused_and_changes_nothing)
{
  static const bool none[] = { false, false };
  const Weighed weighed = { 0.066, 0.001, 0.19, 0.001 };
  MassItem items[2];

  set_two (items);
  ck_assert_int_eq (weighed_correct (items, none, 2, &weighed), CORE_OUT_OF_RANGE);
  ck_assert_int_eq (weighed_correct (items, all, 2, &(Weighed) { 0, 0.001, NAN, NAN }), CORE_OUT_OF_RANGE);
  ck_assert_double_eq (items[0].mass, 0.040);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("weighed");

  tcase_add_test (tests, what_the_scale_shows_more_is_shared_by_how_little_each_mass_is_known);
  tcase_add_test (tests, mass_and_balance_together_find_two_masses);
  tcase_add_test (tests, what_is_weighed_already_moves_in_the_place_that_is_known_least);
  tcase_add_test (tests, a_poor_scale_is_believed_by_half_and_halves_the_variance);
  tcase_add_test (tests, what_was_not_on_the_scale_is_left_as_it_is);
  tcase_add_loop_test (tests, no_other_correction_is_likelier, 0, 10);
  tcase_add_test (tests, what_cannot_be_leaves_no_mass_negative_and_still_weighs_and_balances_so);
  tcase_add_test (tests, nothing_on_the_scale_is_refused_and_changes_nothing);
  return run_suite (suite_create ("weighed"), tests);
}
