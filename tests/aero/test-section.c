#include <check.h>
#include <math.h>
#include "aero/propeller.h"
#include "aero/section.h"
#include "support/run-suite.h"

/* Pelletier and Mueller, J. Aircraft 37 (2000): a thin flat plate of aspect ratio 2 at 140 000 reaches 0.75 (read off a figure, ±10 %). */
START_TEST (a_flat_plates_greatest_lift_is_near_the_measured)
{
  const Spreading lift = section_greatest_lift (SECTION_FLAT_PLATE, 140e3);

  ck_assert_double_le (lift.value - lift.sigma, 0.75 * 1.1);
  ck_assert_double_ge (lift.value + lift.sigma, 0.75 * 0.9);
}
END_TEST

/* The same: 0.30 at 6° and 0.50 at 10°, the slope per radian of aspect ratio 2. Polhamus' formula with the section's ratio must lie
 * within the reading. */
START_TEST (a_flat_plates_slope_is_near_the_measured)
{
  const double measured = (0.50 - 0.30) / (4 * M_PI / 180);
  const Spreading ratio = section_slope_ratio (SECTION_FLAT_PLATE, 140e3);
  const double a = 2 / ratio.value, slope = 2 * M_PI * 2 / (2 + sqrt (a * a + 4));

  ck_assert_double_eq_tol (slope, measured, 0.2 * measured);
}
END_TEST

/* A thin section gains on a thick one as the Reynolds number falls (Winslow et al., J. Aircraft 55 (2018)). */
START_TEST (thick_sections_lose_most_as_the_reynolds_number_falls)
{
  const double thick = section_slope_ratio (SECTION_SYMMETRICAL, 30e3).value / section_slope_ratio (SECTION_SYMMETRICAL, 150e3).value;
  const double plate = section_slope_ratio (SECTION_FLAT_PLATE, 30e3).value / section_slope_ratio (SECTION_FLAT_PLATE, 150e3).value;

  ck_assert_double_lt (thick, 0.9);
  ck_assert_double_eq_tol (plate, 1, 0.01);
  ck_assert_double_gt (section_slope_ratio (SECTION_SYMMETRICAL, 30e3).sigma, section_slope_ratio (SECTION_SYMMETRICAL, 150e3).sigma);
}
END_TEST

START_TEST (no_section_does_better_at_a_lower_reynolds_number)
{
  for (int class = 0; class < SECTION_CLASSES; class++)
    for (double reynolds = 10e3; reynolds < 300e3; reynolds *= 1.1)
      {
        ck_assert_double_le (section_slope_ratio (class, reynolds).value, section_slope_ratio (class, 1.1 * reynolds).value);
        ck_assert_double_le (section_greatest_lift (class, reynolds).value, section_greatest_lift (class, 1.1 * reynolds).value);
        ck_assert_double_gt (section_greatest_lift (class, reynolds).sigma, 0);
      }
}
END_TEST

/* Whoever states no class knows less than whoever states any. */
START_TEST (no_class_is_known_less_well_than_none)
{
  for (int class = SECTION_UNSTATED + 1; class < SECTION_CLASSES; class++)
    for (double reynolds = 10e3; reynolds < 300e3; reynolds *= 1.1)
      {
        ck_assert_double_le (section_slope_ratio (class, reynolds).sigma, section_slope_ratio (SECTION_UNSTATED, reynolds).sigma);
        ck_assert_double_le (section_greatest_lift (class, reynolds).sigma, section_greatest_lift (SECTION_UNSTATED, reynolds).sigma);
      }
}
END_TEST

START_TEST (between_two_rows_a_figure_lies_between_theirs)
{
  ck_assert_double_eq_tol (section_greatest_lift (SECTION_FLAT_BOTTOMED, 45e3).value, (0.775 + 0.925) / 2, 1e-12);
  ck_assert_double_eq_tol (section_greatest_lift (SECTION_FLAT_BOTTOMED, 1e9).value, 1.075, 1e-12);
  ck_assert_double_eq_tol (section_greatest_lift (SECTION_FLAT_BOTTOMED, 1).value, 0.775, 1e-12);
}
END_TEST

/* Ribner's rule worked by hand: tan β = 0.5 / (0.75 π), area 2 · 0.1 D · 0.4 D · sin β, slope 2π · 8/10. */
START_TEST (a_propeller_is_a_fin_of_its_blades_side_area)
{
  const PropellerBound bound = propeller_cross_force (180);

  ck_assert_double_eq_tol (bound.least, 5.026548 * 0.08 * 0.2075648 * 32400, 1);
  ck_assert_double_gt (bound.greatest, 2 * bound.least);
  ck_assert_double_eq_tol (propeller_cross_force (360).greatest, 4 * bound.greatest, 1e-9 * bound.greatest);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("section");

  tcase_add_test (tests, a_flat_plates_greatest_lift_is_near_the_measured);
  tcase_add_test (tests, a_flat_plates_slope_is_near_the_measured);
  tcase_add_test (tests, thick_sections_lose_most_as_the_reynolds_number_falls);
  tcase_add_test (tests, no_section_does_better_at_a_lower_reynolds_number);
  tcase_add_test (tests, no_class_is_known_less_well_than_none);
  tcase_add_test (tests, between_two_rows_a_figure_lies_between_theirs);
  tcase_add_test (tests, a_propeller_is_a_fin_of_its_blades_side_area);
  return run_suite (suite_create ("section"), tests);
}
