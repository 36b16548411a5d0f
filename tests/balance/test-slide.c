#include <check.h>
#include <math.h>
#include <stdlib.h>
#include "balance/slide.h"
#include "support/run-suite.h"

/* A small racer: 151 g, the pack 27 g on a rail of 52 mm. */
static SlideCase
racer (void)
{
  return (SlideCase) { .part_mass = 0.0272, .part_x = 0.1241, .rail_from = 0.0823, .rail_to = 0.1338,
                       .total_mass = 0.1507, .total_x = 0.1522, .target_x = 0.1488,
                       .forward_limit_x = 0.1454, .aft_limit_x = 0.1565, .nose_x = 0, .tail_x = 0.4631 };
}

static double
balance_with_part_at (const SlideCase *wanted, double x)
{
  return wanted->total_x + wanted->part_mass * (x - wanted->part_x) / wanted->total_mass;
}

/* FAA-H-8083-25, shifting cargo: 65 lb from station 150 to 30 brings 7800 lb from 81.5 to its limit 80.5. */
START_TEST (the_handbooks_cargo_must_go_to_station_30)
{
  const SlideCase cargo = { .part_mass = 65, .part_x = 150, .rail_from = 20, .rail_to = 180, .total_mass = 7800, .total_x = 81.5,
                            .target_x = 80.5, .forward_limit_x = 70, .aft_limit_x = 80.5, .nose_x = 0, .tail_x = 300 };
  SlideAnswer answer;

  ck_assert_int_eq (slide_solve (&cargo, &answer), CORE_OK);
  ck_assert_double_eq_tol (answer.x, 30, 1e-9);
  ck_assert (answer.reachable);
}
END_TEST

/* FAA-H-8083-1, permanent ballast: 1876 lb at +32.2, wanted +33.0, bolted in at +228: 7.7 lb. */
START_TEST (the_handbooks_permanent_ballast_is_7_7_pounds)
{
  const SlideCase wanted = { .target_x = 33.0, .nose_x = 0, .tail_x = 228 };
  double ballast, place;

  ck_assert_int_eq (ballast_solve (&wanted, 1876, 32.2, &ballast, &place), CORE_OK);
  ck_assert_double_eq_tol (ballast, 7.7, 0.05);
  ck_assert_double_eq (place, 228);
  ck_assert_double_eq_tol ((1876 * 32.2 + ballast * 228) / (1876 + ballast), 33.0, 1e-12);
}
END_TEST

START_TEST (the_part_put_where_it_is_told_balances_on_the_target)
{
  SlideCase wanted = racer ();
  SlideAnswer answer;

  ck_assert_int_eq (slide_solve (&wanted, &answer), CORE_OK);
  ck_assert (answer.reachable);
  ck_assert_double_eq_tol (balance_with_part_at (&wanted, answer.x), wanted.target_x, 1e-15);
  ck_assert_double_eq (answer.ballast, 0);
  ck_assert_double_nan (answer.ballast_x);
}
END_TEST

START_TEST (the_ends_of_the_band_balance_on_the_limits_or_are_the_rails)
{
  SlideCase wanted = racer ();
  SlideAnswer answer;

  ck_assert_int_eq (slide_solve (&wanted, &answer), CORE_OK);
  ck_assert_double_eq_tol (balance_with_part_at (&wanted, answer.band_from), wanted.forward_limit_x, 1e-15);
  ck_assert_double_eq (answer.band_to, wanted.rail_to);        /* the aft limit asks for 148 mm, beyond the rail */
}
END_TEST

START_TEST (a_rail_that_misses_the_band_has_no_places)
{
  SlideCase wanted = racer ();
  SlideAnswer answer;

  wanted.total_x += 0.030;
  ck_assert_int_eq (slide_solve (&wanted, &answer), CORE_OK);
  ck_assert_double_nan (answer.band_from);
  ck_assert_double_nan (answer.band_to);
}
END_TEST

/* The part is nearest the nose already, so lead goes to the nose. */
START_TEST (a_tail_heavy_aeroplane_gets_ballast_at_the_nose_that_just_does)
{
  SlideCase wanted = racer ();
  SlideAnswer answer;

  wanted.total_x += 0.0213;
  ck_assert_int_eq (slide_solve (&wanted, &answer), CORE_OK);
  ck_assert (!answer.reachable);
  ck_assert_double_lt (answer.x, wanted.rail_from);           /* told as it is, not clamped */
  ck_assert_double_eq (answer.ballast_x, wanted.nose_x);
  ck_assert_double_gt (answer.ballast, 0);
  ck_assert_double_eq_tol ((wanted.total_mass * balance_with_part_at (&wanted, wanted.rail_from) + answer.ballast * answer.ballast_x)
                           / (wanted.total_mass + answer.ballast), wanted.target_x, 1e-15);
}
END_TEST

START_TEST (a_nose_heavy_aeroplane_gets_ballast_at_the_tail_that_just_does)
{
  SlideCase wanted = racer ();
  SlideAnswer answer;

  wanted.total_x -= 0.0187;
  ck_assert_int_eq (slide_solve (&wanted, &answer), CORE_OK);
  ck_assert (!answer.reachable);
  ck_assert_double_gt (answer.x, wanted.rail_to);
  ck_assert_double_eq (answer.ballast_x, wanted.tail_x);
  ck_assert_double_eq_tol ((wanted.total_mass * balance_with_part_at (&wanted, wanted.rail_to) + answer.ballast * answer.ballast_x)
                           / (wanted.total_mass + answer.ballast), wanted.target_x, 1e-15);
}
END_TEST

static SlideCase
mirrored (const SlideCase *wanted)
{
  SlideCase made = *wanted;

  made.part_x = -wanted->part_x, made.total_x = -wanted->total_x, made.target_x = -wanted->target_x;
  made.rail_from = -wanted->rail_to, made.rail_to = -wanted->rail_from;
  made.forward_limit_x = -wanted->aft_limit_x, made.aft_limit_x = -wanted->forward_limit_x;
  made.nose_x = -wanted->tail_x, made.tail_x = -wanted->nose_x;
  return made;
}

/* Both directions are one rule: turned end for end the answer is the same, turned end for end. */
START_TEST (an_aeroplane_turned_end_for_end_gets_the_answer_turned_end_for_end)
{
  SlideCase wanted = racer ();
  SlideAnswer there, back;

  wanted.total_x += -0.030 + 0.002 * _i;
  const SlideCase turned = mirrored (&wanted);
  ck_assert_int_eq (slide_solve (&wanted, &there), CORE_OK);
  ck_assert_int_eq (slide_solve (&turned, &back), CORE_OK);
  ck_assert_double_eq_tol (back.x, -there.x, 1e-15);
  ck_assert_int_eq (back.reachable, there.reachable);
  ck_assert_double_eq_tol (back.ballast, there.ballast, 1e-15);
  ck_assert (isnan (there.ballast_x) == isnan (back.ballast_x));
  ck_assert (isnan (there.band_from) == isnan (back.band_to));
  if (!isnan (there.band_from))
    ck_assert_double_eq_tol (back.band_to, -there.band_from, 1e-15);
}
END_TEST

START_TEST (where_the_part_stands_now_does_not_change_where_it_must_be)
{
  SlideCase wanted = racer ();
  SlideAnswer here, there;

  ck_assert_int_eq (slide_solve (&wanted, &here), CORE_OK);
  wanted.total_x = balance_with_part_at (&wanted, wanted.part_x - 0.0371);
  wanted.part_x -= 0.0371;
  ck_assert_int_eq (slide_solve (&wanted, &there), CORE_OK);
  ck_assert_double_eq_tol (there.x, here.x, 1e-14);
  ck_assert_double_eq_tol (there.band_from, here.band_from, 1e-14);
}
END_TEST

START_TEST (a_target_ahead_of_the_nose_has_a_place_but_no_ballast)
{
  SlideCase wanted = racer ();
  SlideAnswer answer;

  wanted.nose_x = 0.150;
  wanted.total_x += 0.0213;
  ck_assert_int_eq (slide_solve (&wanted, &answer), CORE_OUT_OF_RANGE);
  ck_assert_double_eq_tol (balance_with_part_at (&wanted, answer.x), wanted.target_x, 1e-15);
  ck_assert (!answer.reachable);
  ck_assert_double_nan (answer.ballast);
  ck_assert_double_nan (answer.ballast_x);
}
END_TEST

START_TEST (a_part_without_mass_moves_nothing_and_has_no_place)
{
  SlideCase wanted = racer ();
  SlideAnswer answer;

  wanted.part_mass = 0;
  ck_assert_int_eq (slide_solve (&wanted, &answer), CORE_OUT_OF_RANGE);
  ck_assert_double_nan (answer.x);
  ck_assert (!answer.reachable);
  ck_assert_double_nan (answer.band_from);
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("balance slide");
  TCase *tests = tcase_create ("slide");

  tcase_add_test (tests, the_handbooks_cargo_must_go_to_station_30);
  tcase_add_test (tests, the_handbooks_permanent_ballast_is_7_7_pounds);
  tcase_add_test (tests, the_part_put_where_it_is_told_balances_on_the_target);
  tcase_add_test (tests, the_ends_of_the_band_balance_on_the_limits_or_are_the_rails);
  tcase_add_test (tests, a_rail_that_misses_the_band_has_no_places);
  tcase_add_test (tests, a_tail_heavy_aeroplane_gets_ballast_at_the_nose_that_just_does);
  tcase_add_test (tests, a_nose_heavy_aeroplane_gets_ballast_at_the_tail_that_just_does);
  tcase_add_loop_test (tests, an_aeroplane_turned_end_for_end_gets_the_answer_turned_end_for_end, 0, 31);
  tcase_add_test (tests, where_the_part_stands_now_does_not_change_where_it_must_be);
  tcase_add_test (tests, a_target_ahead_of_the_nose_has_a_place_but_no_ballast);
  tcase_add_test (tests, a_part_without_mass_moves_nothing_and_has_no_place);
  return run_suite (suite, tests);
}
