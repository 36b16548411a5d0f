#include <check.h>
#include <math.h>
#include <stdlib.h>
#include "balance/centre.h"
#include "support/run-suite.h"

/* The sums know no units, so published examples stand in theirs: pounds and inches. */

typedef struct { double mass, x; } Load;

static const struct {
  const char *because;
  Load loads[6];
  size_t count;
  double mass, x, tolerance;
} published[] = {
  { .because = "FAA-H-8083-1, nose-wheel aeroplane: 340 lb on a nose wheel 78 in ahead of the mains, of 2006 lb, balances 13.2 in ahead of them",
    .loads = { { 340, -78 }, { 1666, 0 } }, .count = 2, .mass = 2006, .x = -13.2, .tolerance = 0.05 },
  { .because = "the same with the datum 128 in ahead of the mains: 114.8 in aft of it",
    .loads = { { 340, 50 }, { 1666, 128 } }, .count = 2, .mass = 2006, .x = 114.8, .tolerance = 0.05 },
  { .because = "FAA-H-8083-1, three scales with tare: 2006 lb at 32.8 in",
    .loads = { { 846 - 16, 46 }, { 852 - 16, 46 }, { 348 - 8, -32 } }, .count = 3, .mass = 2006, .x = 32.8, .tolerance = 0.05 },
  { .because = "three scales, an examination question; 108.7587 recomputed by (475·55 + 2086·121) / 2561",
    .loads = { { 475, 55 }, { 1046, 121 }, { 1040, 121 } }, .count = 3, .mass = 2561, .x = 278531.0 / 2561, .tolerance = 1e-9 },
  { .because = "FAA-H-8083-25, chapter 10, loaded aeroplane: 3320 lb at 84.8 in",
    .loads = { { 2100, 78.3 }, { 340, 85 }, { 350, 121 }, { 450, 75 }, { 80, 150 } }, .count = 5,
    .mass = 3320, .x = 84.8, .tolerance = 0.05 },
  { .because = "FAA-H-8083-1, chapter 2, three weights on a plank: 110 in exactly",
    .loads = { { 100, 50 }, { 100, 90 }, { 200, 150 } }, .count = 3, .mass = 400, .x = 110, .tolerance = 1e-9 },
  { .because = "a mechanic's test question, equipment taken out and put in: 1559 lb at 30.30 in",
    .loads = { { 1500, 28.4 }, { -24, 68.5 }, { 28, 73 }, { 30, 70.5 }, { 25, 85 } }, .count = 5,
    .mass = 1559, .x = 30.30, .tolerance = 0.005 },
};

START_TEST (the_handbooks_loadings_balance_where_they_are_printed_to)
{
  MassItem items[6] = { 0 };
  MassSum sum;

  for (size_t i = 0; i < published[_i].count; i++)
    items[i] = (MassItem) { .mass = published[_i].loads[i].mass, .x = published[_i].loads[i].x };
  ck_assert_int_eq (mass_sum (items, published[_i].count, &sum), CORE_OK);
  ck_assert_msg (fabs (sum.mass - published[_i].mass) < 1e-9, "%s: mass %g", published[_i].because, sum.mass);
  ck_assert_msg (fabs (sum.x - published[_i].x) <= published[_i].tolerance, "%s: got %.6f", published[_i].because, sum.x);
}
END_TEST

/* Textbook mechanics: m (b² + c²) / 12. */
START_TEST (a_cuboid_has_the_textbooks_moments_of_inertia)
{
  MassItem pack = { .mass = 0.060 };

  mass_item_as_box (&pack, 0.070, 0.035, 0.018);
  ck_assert_double_eq_tol (pack.own_roll, 7.745e-6, 1e-15);
  ck_assert_double_eq_tol (pack.own_pitch, 2.612e-5, 1e-15);
  ck_assert_double_eq_tol (pack.own_yaw, 3.0625e-5, 1e-15);
}
END_TEST

/* m l² / 12 about both axes across it, nothing about its own. */
START_TEST (a_box_without_length_and_height_is_a_thin_rod)
{
  MassItem rod = { .mass = 0.012 };

  mass_item_as_box (&rod, 0, 0.640, 0);
  ck_assert_double_eq_tol (rod.own_roll, 4.096e-4, 1e-15);
  ck_assert_double_eq_tol (rod.own_yaw, 4.096e-4, 1e-15);
  ck_assert_double_eq (rod.own_pitch, 0);
}
END_TEST

/* Steiner's theorem, twice the published single figure: the two stand on either side of the point. */
START_TEST (two_cuboids_pitch_about_the_point_between_them_by_steiners_theorem)
{
  MassItem pack = { .mass = 0.060 };
  MassSum sum;

  mass_item_as_box (&pack, 0.070, 0.035, 0.018);
  MassItem items[] = { pack, pack };
  items[0].x = 0.3217 + 0.120, items[0].z = -0.0113 + 0.015;
  items[1].x = 0.3217 - 0.120, items[1].z = -0.0113 - 0.015;
  ck_assert_int_eq (mass_sum (items, 2, &sum), CORE_OK);
  ck_assert_double_eq_tol (sum.pitch, 2 * 9.0362e-4, 2e-12);   /* half of the last printed digit, doubled by hand from 120² + 15² */
  ck_assert_double_eq_tol (sum.x, 0.3217, 1e-15);
}
END_TEST

/* σ² = Σ((xᵢ − x̄)² σ_mᵢ² + mᵢ² σ_xᵢ²) / M², worked by hand for two masses: x̄ 0.1, arms ∓0.05 and 0.1. */
START_TEST (the_deviation_of_the_balance_point_follows_from_masses_and_places)
{
  const MassItem items[] = {
    { .mass = 0.2, .mass_sigma = 0.010, .x = 0.05, .x_sigma = 0.001 },
    { .mass = 0.1, .mass_sigma = 0.004, .x = 0.20, .x_sigma = 0.003 },
  };
  const double variance = (0.05 * 0.05 * 0.010 * 0.010 + 0.2 * 0.2 * 0.001 * 0.001
                         + 0.10 * 0.10 * 0.004 * 0.004 + 0.1 * 0.1 * 0.003 * 0.003) / (0.3 * 0.3);
  MassSum sum;

  ck_assert_int_eq (mass_sum (items, 2, &sum), CORE_OK);
  ck_assert_double_eq_tol (sum.x_sigma, sqrt (variance), 1e-15);
  ck_assert_double_eq_tol (mass_item_x_variance (&items[0], sum.x) + mass_item_x_variance (&items[1], sum.x),
                           variance * 0.3 * 0.3, 1e-18);
}
END_TEST

/* A difference of the balance point by each input, times its deviation: the same σ, found the long way. */
START_TEST (the_deviation_is_what_small_changes_of_every_input_add_up_to)
{
  MassItem items[] = {
    { .mass = 0.0271, .mass_sigma = 0.0025, .x = 0.1043, .x_sigma = 0.0011 },
    { .mass = 0.0313, .mass_sigma = 0.0056, .x = 0.1688, .x_sigma = 0.0033 },
    { .mass = 0.0047, .mass_sigma = 0.0008, .x = 0.4219, .x_sigma = 0.0033 },
  };
  const double step = 1e-6;
  MassSum sum, moved;
  double variance = 0;

  ck_assert_int_eq (mass_sum (items, 3, &sum), CORE_OK);
  for (size_t i = 0; i < 6; i++)
    {
      double *input = i < 3 ? &items[i].mass : &items[i - 3].x;
      const double was = *input, sigma = i < 3 ? items[i].mass_sigma : items[i - 3].x_sigma;

      *input = was + step * sigma;
      ck_assert_int_eq (mass_sum (items, 3, &moved), CORE_OK);
      *input = was;
      variance += pow ((moved.x - sum.x) / step, 2);
    }
  ck_assert_double_eq_tol (sum.x_sigma, sqrt (variance), 1e-5 * sum.x_sigma);   /* one-sided differences: relative 1e-6 */
}
END_TEST

static double
random_between (double from, double to)
{
  return from + (to - from) * (double) rand () / RAND_MAX;
}

static void
random_items (MassItem items[], size_t count)
{
  for (size_t i = 0; i < count; i++)
    {
      items[i] = (MassItem) { .mass = random_between (0.001, 0.08), .mass_sigma = random_between (0, 0.005),
                              .x = random_between (-0.1, 0.5), .y = random_between (-0.3, 0.3),
                              .z = random_between (-0.05, 0.05), .x_sigma = random_between (0, 0.004) };
      mass_item_as_box (&items[i], random_between (0, 0.08), random_between (0, 0.04), random_between (0, 0.03));
    }
}

START_TEST (moving_the_datum_moves_the_centre_and_nothing_else)
{
  MassItem items[12];
  MassSum before, after;

  srand (4711 + (unsigned) _i);
  random_items (items, 12);
  ck_assert_int_eq (mass_sum (items, 12, &before), CORE_OK);
  for (size_t i = 0; i < 12; i++)
    items[i].x += 0.731, items[i].y -= 0.117, items[i].z += 0.059;
  ck_assert_int_eq (mass_sum (items, 12, &after), CORE_OK);
  ck_assert_double_eq_tol (after.x - before.x, 0.731, 1e-14);
  ck_assert_double_eq_tol (after.y - before.y, -0.117, 1e-14);
  ck_assert_double_eq_tol (after.z - before.z, 0.059, 1e-14);
  ck_assert_double_eq_tol (after.x_sigma, before.x_sigma, 1e-14);
  ck_assert_double_eq_tol (after.roll, before.roll, 1e-14);
  ck_assert_double_eq_tol (after.pitch, before.pitch, 1e-14);
  ck_assert_double_eq_tol (after.yaw, before.yaw, 1e-14);
}
END_TEST

START_TEST (a_group_summed_to_one_item_gives_the_same_whole)
{
  MassItem items[9], grouped[5];
  MassSum group, apart, together;

  srand (815 + (unsigned) _i);
  random_items (items, 9);
  ck_assert_int_eq (mass_sum (items, 9, &apart), CORE_OK);
  ck_assert_int_eq (mass_sum (items, 5, &group), CORE_OK);
  grouped[0] = (MassItem) { .mass = group.mass, .x = group.x, .y = group.y, .z = group.z,
                            .own_roll = group.roll, .own_pitch = group.pitch, .own_yaw = group.yaw };
  for (size_t i = 0; i < 4; i++)
    grouped[i + 1] = items[i + 5];
  ck_assert_int_eq (mass_sum (grouped, 5, &together), CORE_OK);
  ck_assert_double_eq_tol (together.x, apart.x, 1e-14);
  ck_assert_double_eq_tol (together.pitch, apart.pitch, 1e-14);
  ck_assert_double_eq_tol (together.roll, apart.roll, 1e-14);
  ck_assert_double_eq_tol (together.yaw, apart.yaw, 1e-14);
}
END_TEST

static const struct { const char *because; MassItem item; CoreStatus expected; } refused[] = {
  { .because = "nothing balances nowhere",  .item = { .x = 0.1 },                             .expected = CORE_OUT_OF_RANGE },
  { .because = "less than a microgram",     .item = { .mass = 0.9e-9, .x = 0.1 },             .expected = CORE_OUT_OF_RANGE },
  { .because = "a mass that is no number",  .item = { .mass = NAN },                          .expected = CORE_NOT_FINITE },
  { .because = "a place at infinity",       .item = { .mass = 0.1, .x = INFINITY },           .expected = CORE_NOT_FINITE },
  { .because = "a deviation that is none",  .item = { .mass = 0.1, .x_sigma = NAN },          .expected = CORE_NOT_FINITE },
};

START_TEST (masses_that_cannot_be_summed_are_refused_and_the_sum_left_alone)
{
  MassSum sum = { .mass = 42, .x = 7 };

  ck_assert_msg (mass_sum (&refused[_i].item, 1, &sum) == refused[_i].expected, "%s", refused[_i].because);
  ck_assert_double_eq (sum.mass, 42);
  ck_assert_double_eq (sum.x, 7);
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("balance centre");
  TCase *tests = tcase_create ("centre");

  tcase_add_loop_test (tests, the_handbooks_loadings_balance_where_they_are_printed_to, 0, sizeof published / sizeof *published);
  tcase_add_test (tests, a_cuboid_has_the_textbooks_moments_of_inertia);
  tcase_add_test (tests, a_box_without_length_and_height_is_a_thin_rod);
  tcase_add_test (tests, two_cuboids_pitch_about_the_point_between_them_by_steiners_theorem);
  tcase_add_test (tests, the_deviation_of_the_balance_point_follows_from_masses_and_places);
  tcase_add_test (tests, the_deviation_is_what_small_changes_of_every_input_add_up_to);
  tcase_add_loop_test (tests, moving_the_datum_moves_the_centre_and_nothing_else, 0, 20);
  tcase_add_loop_test (tests, a_group_summed_to_one_item_gives_the_same_whole, 0, 20);
  tcase_add_loop_test (tests, masses_that_cannot_be_summed_are_refused_and_the_sum_left_alone, 0, sizeof refused / sizeof *refused);
  return run_suite (suite, tests);
}
