#include <check.h>
#include <stdlib.h>
#include <string.h>
#include "arrange-stage.h"
#include "balance/slide.h"
#include "support/run-suite.h"

/* A small racer's fuselage: 151 g in all, a pack of 27 g that goes anywhere from 82 mm to 134 mm. */
static const ArrangeRange pack_rail = { 0.0823, 0.1338, 0, 0, -0.004, -0.004, 1 };
static const ArrangePart pack = { .mass = 0.0272, .length = 0.052, .width = 0.031, .height = 0.017, .ranges = &pack_rail, .range_count = 1,
                                  .now = { 0.1241, 0, -0.004 } };

static ArrangeCase
racer (double others_x)
{
  return (ArrangeCase) { .parts = &pack, .part_count = 1, .other_mass = 0.1235, .other_x = others_x, .forward_limit_x = 0.1454,
                         .aft_limit_x = 0.1565, .aim_x = 0.1488, .nose_x = 0.0021, .tail_x = 0.4631, .clearance = 0.002, .seconds = 60 };
}

/* The same by the closed form of one part that slides. */
static SlideAnswer
slid (const ArrangeCase *wanted, double target_x)
{
  const double mass = wanted->other_mass + pack.mass;
  const SlideCase one = { .part_mass = pack.mass, .part_x = pack.now.x, .rail_from = pack_rail.x_from, .rail_to = pack_rail.x_to,
                          .total_mass = mass, .total_x = (wanted->other_mass * wanted->other_x + pack.mass * pack.now.x) / mass,
                          .target_x = target_x, .forward_limit_x = wanted->forward_limit_x, .aft_limit_x = wanted->aft_limit_x,
                          .nose_x = wanted->nose_x, .tail_x = wanted->tail_x };
  SlideAnswer answer;

  ck_assert_int_eq (slide_solve (&one, &answer), CORE_OK);
  return answer;
}

START_TEST (one_part_that_slides_stands_where_the_closed_form_puts_it)
{
  const ArrangeCase wanted = racer (0.1582);
  const SlideAnswer answer = slid (&wanted, wanted.aim_x);
  Arrangements made;

  ck_assert_int_eq (arrange (&wanted, 1, &made), CORE_OK);
  ck_assert_int_eq (made.status, ARRANGE_PROVED);
  ck_assert_uint_eq (made.count, 1);
  ck_assert (answer.reachable);
  ck_assert_double_eq_tol (made.found[0].places[0].x, answer.x, 1e-6);
  ck_assert_double_eq (made.found[0].ballast, 0);
  ck_assert_double_nan (made.found[0].ballast_x);
  ck_assert_double_eq_tol (made.found[0].x, wanted.aim_x, 2e-7);
  arrangements_clear (&made);
}
END_TEST

/* FAA-H-8083-1: W (x − x_t) / (x_t − x_b), with the pack at the rail's end and the target the limit. */
static const struct { const char *because; double others_x, end_x, limit_x, ballast_x; } unbalanced[] = {
  { "tail-heavy: the pack goes to the front, the ballast to the nose",  0.1873, 0.0823, 0.1565, 0.0021 },
  { "nose-heavy: the pack goes to the rear, the ballast to the tail",   0.1217, 0.1338, 0.1454, 0.4631 },
};

START_TEST (what_the_part_cannot_do_the_handbooks_ballast_does)
{
  const ArrangeCase wanted = racer (unbalanced[_i].others_x);
  const double mass = wanted.other_mass + pack.mass;
  const double x = (wanted.other_mass * wanted.other_x + pack.mass * unbalanced[_i].end_x) / mass;
  const double ballast = mass * (x - unbalanced[_i].limit_x) / (unbalanced[_i].limit_x - unbalanced[_i].ballast_x);
  Arrangements made;

  ck_assert_int_eq (arrange (&wanted, 1, &made), CORE_OK);
  ck_assert_int_eq (made.status, ARRANGE_PROVED);
  ck_assert_msg (fabs (made.found[0].ballast - ballast) < 1e-7, "%s: %.9f kg, not %.9f", unbalanced[_i].because,
                 made.found[0].ballast, ballast);
  ck_assert_double_eq (made.found[0].ballast_x, unbalanced[_i].ballast_x);
  ck_assert_double_eq_tol (made.found[0].places[0].x, unbalanced[_i].end_x, 1e-6);
  ck_assert (arrangement_holds (&wanted, &made.found[0]));
  ck_assert_double_eq_tol (slid (&wanted, unbalanced[_i].limit_x).ballast, ballast, 1e-12);
  arrangements_clear (&made);
}
END_TEST

/* A canard's body may be named from the other end. */
START_TEST (ballast_goes_to_whichever_of_its_two_places_helps)
{
  ArrangeCase wanted = racer (0.1873);
  Arrangements made, turned;

  ck_assert_int_eq (arrange (&wanted, 1, &made), CORE_OK);
  wanted.nose_x = 0.4631;
  wanted.tail_x = 0.0021;
  ck_assert_int_eq (arrange (&wanted, 1, &turned), CORE_OK);
  ck_assert_double_gt (made.found[0].ballast, 0.001);
  ck_assert_double_eq_tol (turned.found[0].ballast, made.found[0].ballast, 1e-9);
  ck_assert_double_eq (turned.found[0].ballast_x, 0.0021);
  arrangements_clear (&made);
  arrangements_clear (&turned);
}
END_TEST

/* A tail-heavy aeroplane, so that both want to be in front. */
static ArrangeCase
two_in_a_bay (const Bay *bay, ArrangePart parts[2], ArrangeRange ranges[2])
{
  parts[0] = (ArrangePart) { .mass = 0.031, .length = 0.040, .width = 0.020, .height = 0.010 };
  parts[1] = (ArrangePart) { .mass = 0.017, .length = 0.030, .width = 0.018, .height = 0.012 };
  for (size_t i = 0; i < 2; i++)
    {
      ranges[i] = range_in_bay (bay, parts[i].length, parts[i].width, parts[i].height);
      parts[i].ranges = &ranges[i];
      parts[i].range_count = 1;
    }
  return (ArrangeCase) { .parts = parts, .part_count = 2, .other_mass = 0.150, .other_x = 0.190, .forward_limit_x = 0.100,
                         .aft_limit_x = 0.110, .aim_x = 0.105, .nose_x = 0.010, .tail_x = 0.5, .clearance = 0.002, .seconds = 60 };
}

/* In a row the denser goes first: 31 g on 42 mm before 17 g on 32 mm, clearance counted (Smith's rule for one machine, 1956). */
static const struct { const char *because; double half_width, top, x[2]; size_t apart_along; } bays[] = {
  { "no room beside or above: one behind the other",  0.0109, 0.013, { 0.060, 0.097 }, 0 },
  { "wide enough for both beside each other",         0.0201, 0.013, { 0.060, 0.055 }, 1 },
  { "high enough for one above the other",            0.0109, 0.025, { 0.060, 0.055 }, 2 },
};

START_TEST (parts_stand_beside_or_above_each_other_where_there_is_no_room_in_a_row)
{
  const Bay bay = { 0.040, 0.114, bays[_i].half_width, 0, bays[_i].top, 1 };
  ArrangePart parts[2];
  ArrangeRange ranges[2];
  const ArrangeCase wanted = two_in_a_bay (&bay, parts, ranges);
  Arrangements made;

  ck_assert_int_eq (arrange (&wanted, 1, &made), CORE_OK);
  ck_assert_int_eq (made.status, ARRANGE_PROVED);
  ck_assert (arrangement_holds (&wanted, &made.found[0]));
  for (size_t i = 0; i < 2; i++)
    ck_assert_msg (fabs (made.found[0].places[i].x - bays[_i].x[i]) < 1e-6, "%s: %g", bays[_i].because, made.found[0].places[i].x);
  if (bays[_i].apart_along == 1)
    ck_assert (fabs (made.found[0].places[0].y - made.found[0].places[1].y) >= 0.021 - 1e-6);
  if (bays[_i].apart_along == 2)
    ck_assert (fabs (made.found[0].places[0].z - made.found[0].places[1].z) >= 0.013 - 1e-6);
  arrangements_clear (&made);
}
END_TEST

/* The lead goes over a clip: √(30² + 40²) = 50 mm from the motor to it, then aft. Of 117 mm with 5 mm slack 62 mm are left. */
START_TEST (a_lead_that_is_short_binds_the_place_to_a_tenth_of_a_millimetre)
{
  const ArrangePlace clip = { 0.050, 0.040, 0 };
  const ArrangeRange motor_at = range_at (0.020, 0, 0), rail = { 0.060, 0.300, 0.040, 0.040, 0, 0, 1 };
  const ArrangePart parts[] = {
    { .mass = 0.030, .length = 0.020, .width = 0.020, .height = 0.020, .ranges = &motor_at, .range_count = 1 },
    { .mass = 0.040, .length = 0.030, .width = 0.020, .height = 0.010, .ranges = &rail, .range_count = 1 },
  };
  const ArrangeLead lead = { .from = 0, .to = 1, .via = &clip, .via_count = 1, .length = 0.117, .slack = 0.005 };
  const ArrangeCase wanted = { .parts = parts, .part_count = 2, .leads = &lead, .lead_count = 1, .other_mass = 0.100, .other_x = 0.120,
                               .forward_limit_x = 0.150, .aft_limit_x = 0.170, .aim_x = 0.160, .nose_x = 0, .tail_x = 0.6, .seconds = 60 };
  const double x = (0.030 * 0.020 + 0.040 * 0.112 + 0.100 * 0.120) / 0.170;
  Arrangements made;

  ck_assert_int_eq (arrange (&wanted, 1, &made), CORE_OK);
  ck_assert_int_eq (made.status, ARRANGE_PROVED);
  ck_assert_double_eq_tol (made.found[0].places[1].x, 0.112, 1e-6);
  ck_assert_double_eq_tol (made.found[0].needed[0], 0.117, 1e-6);
  ck_assert_double_eq_tol (made.found[0].ballast, 0.170 * (0.150 - x) / (0.6 - 0.150), 1e-6);
  arrangements_clear (&made);
}
END_TEST

static bool
never (double done, void *data)
{
  ++*(int *) data;
  return false;
}

START_TEST (what_is_cancelled_leaves_the_answer_alone)
{
  ArrangeCase wanted = racer (0.1582);
  Arrangements made = { .status = ARRANGE_PROVED, .count = 42 };
  ArrangeLimit limit;
  size_t count = 42;
  int asked = 0;

  wanted.goes_on = never;
  wanted.data = &asked;
  ck_assert_int_eq (arrange (&wanted, 1, &made), CORE_CANCELLED);
  ck_assert_uint_eq (made.count, 42);
  ck_assert_int_eq (arrange_limits (&wanted, &limit, 1, &count), CORE_CANCELLED);
  ck_assert_uint_eq (count, 42);
  ck_assert_int_eq (asked, 2);
}
END_TEST

static const struct { const char *because; size_t place; double value; CoreStatus expected; } odd[] = {
  { "a mass that is no number",           offsetof (ArrangePart, mass),     NAN,       CORE_NOT_FINITE },
  { "a mass below nothing",               offsetof (ArrangePart, mass),     -0.001,    CORE_OUT_OF_RANGE },
  { "an endless box",                     offsetof (ArrangePart, length),   INFINITY,  CORE_NOT_FINITE },
  { "a width below nothing",              offsetof (ArrangePart, width),    -0.01,     CORE_OUT_OF_RANGE },
  { "a place that is no number",          offsetof (ArrangePart, now.z),    NAN,       CORE_NOT_FINITE },
  { "a part beyond the horizon",          offsetof (ArrangePart, now.x),    1e9,       CORE_OUT_OF_RANGE },
};

START_TEST (a_part_with_odd_numbers_is_refused)
{
  ArrangePart part = pack;
  ArrangeCase wanted = racer (0.1582);
  Arrangements made = { .count = 42 };

  memcpy ((char *) &part + odd[_i].place, &odd[_i].value, sizeof odd[_i].value);
  wanted.parts = &part;
  ck_assert_msg (arrange (&wanted, 1, &made) == odd[_i].expected, "%s", odd[_i].because);
  ck_assert_uint_eq (made.count, 42);
}
END_TEST

static const struct { const char *because; size_t place; double value; CoreStatus expected; } odd_cases[] = {
  { "a limit that is no number",          offsetof (ArrangeCase, aft_limit_x),      NAN,        CORE_NOT_FINITE },
  { "limits crossed",                     offsetof (ArrangeCase, forward_limit_x),  0.2,        CORE_OUT_OF_RANGE },
  { "the rest weighs less than nothing",  offsetof (ArrangeCase, other_mass),       -0.1,       CORE_OUT_OF_RANGE },
  { "boxes that may overlap",             offsetof (ArrangeCase, clearance),        -0.001,     CORE_OUT_OF_RANGE },
  { "no time",                            offsetof (ArrangeCase, seconds),          0,          CORE_OUT_OF_RANGE },
  { "a nose at infinity",                 offsetof (ArrangeCase, nose_x),           -INFINITY,  CORE_NOT_FINITE },
};

START_TEST (a_case_with_odd_numbers_is_refused)
{
  ArrangeCase wanted = racer (0.1582);
  Arrangements made = { .count = 42 };
  ArrangeLimit limit;
  size_t count = 42;

  memcpy ((char *) &wanted + odd_cases[_i].place, &odd_cases[_i].value, sizeof odd_cases[_i].value);
  ck_assert_msg (arrange (&wanted, 1, &made) == odd_cases[_i].expected, "%s", odd_cases[_i].because);
  ck_assert_msg (arrange_limits (&wanted, &limit, 1, &count) == odd_cases[_i].expected, "%s", odd_cases[_i].because);
  ck_assert_uint_eq (made.count + count, 84);
}
END_TEST

START_TEST (a_lead_to_no_part_and_too_much_of_anything_are_refused)
{
  const ArrangeLead nowhere = { .from = 0, .to = 1, .length = 0.1 }, itself = { .from = 0, .to = 0, .length = 0.1 };
  ArrangeCase wanted = racer (0.1582);
  Arrangements made;

  ck_assert_int_eq (arrange (&wanted, 0, &made), CORE_OUT_OF_RANGE);
  ck_assert_int_eq (arrange (&wanted, ARRANGE_MOST + 1, &made), CORE_OUT_OF_RANGE);
  wanted.part_count = 49;
  ck_assert_int_eq (arrange (&wanted, 1, &made), CORE_TOO_MANY);
  wanted.part_count = 1;
  wanted.lead_count = 97;
  ck_assert_int_eq (arrange (&wanted, 1, &made), CORE_TOO_MANY);
  wanted.lead_count = 1;
  wanted.leads = &nowhere;
  ck_assert_int_eq (arrange (&wanted, 1, &made), CORE_OUT_OF_RANGE);
  wanted.leads = &itself;
  ck_assert_int_eq (arrange (&wanted, 1, &made), CORE_OUT_OF_RANGE);
}
END_TEST

START_TEST (with_no_parts_there_is_only_the_ballast_to_tell)
{
  ArrangeCase wanted = racer (0.1700);
  Arrangements made;

  wanted.part_count = 0;
  ck_assert_int_eq (arrange (&wanted, 3, &made), CORE_OK);
  ck_assert_int_eq (made.status, ARRANGE_PROVED);
  ck_assert_uint_eq (made.count, 1);
  ck_assert_double_eq_tol (made.found[0].ballast, 0.1235 * (0.1700 - 0.1565) / (0.1565 - 0.0021), 1e-8);
  arrangements_clear (&made);
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("balance arrange");
  TCase *tests = tcase_create ("arrange");

  tcase_add_test (tests, one_part_that_slides_stands_where_the_closed_form_puts_it);
  tcase_add_loop_test (tests, what_the_part_cannot_do_the_handbooks_ballast_does, 0, sizeof unbalanced / sizeof *unbalanced);
  tcase_add_test (tests, ballast_goes_to_whichever_of_its_two_places_helps);
  tcase_add_loop_test (tests, parts_stand_beside_or_above_each_other_where_there_is_no_room_in_a_row, 0, sizeof bays / sizeof *bays);
  tcase_add_test (tests, a_lead_that_is_short_binds_the_place_to_a_tenth_of_a_millimetre);
  tcase_add_test (tests, what_is_cancelled_leaves_the_answer_alone);
  tcase_add_loop_test (tests, a_part_with_odd_numbers_is_refused, 0, sizeof odd / sizeof *odd);
  tcase_add_loop_test (tests, a_case_with_odd_numbers_is_refused, 0, sizeof odd_cases / sizeof *odd_cases);
  tcase_add_test (tests, a_lead_to_no_part_and_too_much_of_anything_are_refused);
  tcase_add_test (tests, with_no_parts_there_is_only_the_ballast_to_tell);
  return run_suite (suite, tests);
}
