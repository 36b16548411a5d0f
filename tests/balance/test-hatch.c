#include <check.h>
#include <math.h>
#include "balance/hatch.h"
#include "balance/slide.h"
#include "support/run-suite.h"

/* The opening to cut, worked out by hand. Allowances are common practice, no source. */

static const HatchPack small = { .band_from = 0.100, .band_to = 0.120, .length = 0.055, .width = 0.030, .spread_from = 0.002, .spread_to = 0.003 };
static const HatchPack large = { .band_from = 0.090, .band_to = 0.125, .length = 0.060, .width = 0.031, .leads_aft = true };

START_TEST (one_pack_needs_its_band_its_length_the_bend_the_hand_and_the_spread)
{
  Hatch hatch;

  ck_assert_int_eq (hatch_opening (&small, 1, &hatch), CORE_OK);
  ck_assert_double_eq_tol (hatch.floor_from, 0.0705, 1e-12);
  ck_assert_double_eq_tol (hatch.floor_to, 0.1505, 1e-12);
  ck_assert_double_eq_tol (hatch.from, 0.0555, 1e-12);
  ck_assert_double_eq_tol (hatch.to, 0.1605, 1e-12);
  ck_assert_double_eq_tol (hatch.width, 0.034, 1e-12);
}
END_TEST

START_TEST (several_packs_share_one_opening_that_serves_each)
{
  Hatch hatch;

  ck_assert_int_eq (hatch_opening ((HatchPack[]) { small, large }, 2, &hatch), CORE_OK);
  ck_assert_double_eq_tol (hatch.floor_from, 0.060, 1e-12);
  ck_assert_double_eq_tol (hatch.floor_to, 0.155, 1e-12);
  ck_assert_double_eq_tol (hatch.from, 0.050, 1e-12);
  ck_assert_double_eq_tol (hatch.to, 0.170, 1e-12);
  ck_assert_double_eq_tol (hatch.width, 0.035, 1e-12);
}
END_TEST

START_TEST (without_a_pack_or_with_a_place_that_is_not_known_there_is_no_opening)
{
  HatchPack odd[] = { small, small, small, small };
  Hatch hatch = { .from = 7 };

  odd[0].band_from = NAN;
  odd[1].band_from = 0.2;
  odd[2].length = -1;
  odd[3].spread_to = -1;
  ck_assert_int_eq (hatch_opening (odd, 0, &hatch), CORE_OUT_OF_RANGE);
  for (int i = 0; i < 4; i++)
    ck_assert_int_eq (hatch_opening (&odd[i], 1, &hatch), CORE_OUT_OF_RANGE);
  ck_assert_double_eq (hatch.from, 7);
}
END_TEST

START_TEST (an_edge_goes_outward_to_the_next_line)
{
  const double formers[] = { 0.020, 0.140, 0.048, 0.112 };

  ck_assert_uint_eq (hatch_line_outward (formers, 4, 0.0555, false), 2);
  ck_assert_uint_eq (hatch_line_outward (formers, 4, 0.048, false), 2);
  ck_assert_uint_eq (hatch_line_outward (formers, 4, 0.113, true), 1);
  ck_assert_uint_eq (hatch_line_outward (formers, 4, 0.010, false), 4);
  ck_assert_uint_eq (hatch_line_outward (formers, 4, 0.150, true), 4);
}
END_TEST

/* A mass Δm more at x asks the pack m to move by Δm (x wanted − x) / m: the moments about the wanted place, exactly. Source: FAA-H-8083-1. */
START_TEST (what_weighs_more_moves_the_pack_by_its_own_moment_over_the_pack_s_mass)
{
  const double more = 0.004, at = 0.42, pack = 0.0272, wanted = 0.1488;
  SlideCase before = { .part_mass = pack, .part_x = 0.12, .rail_from = 0.05, .rail_to = 0.18, .total_mass = 0.1507, .total_x = 0.1522,
                       .target_x = wanted, .forward_limit_x = 0.1454, .aft_limit_x = 0.1565, .nose_x = 0, .tail_x = 0.46 };
  SlideCase after = before;
  SlideAnswer first, second;

  after.total_mass += more;
  after.total_x = (before.total_mass * before.total_x + more * at) / after.total_mass;
  ck_assert_int_eq (slide_solve (&before, &first), CORE_OK);
  ck_assert_int_eq (slide_solve (&after, &second), CORE_OK);
  ck_assert_double_eq_tol (second.x - first.x, more * (wanted - at) / pack, 1e-12);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("hatch");

  tcase_add_test (tests, one_pack_needs_its_band_its_length_the_bend_the_hand_and_the_spread);
  tcase_add_test (tests, several_packs_share_one_opening_that_serves_each);
  tcase_add_test (tests, without_a_pack_or_with_a_place_that_is_not_known_there_is_no_opening);
  tcase_add_test (tests, an_edge_goes_outward_to_the_next_line);
  tcase_add_test (tests, what_weighs_more_moves_the_pack_by_its_own_moment_over_the_pack_s_mass);
  return run_suite (suite_create ("hatch"), tests);
}
