#include <check.h>
#include <math.h>
#include <stdlib.h>
#include "aero/thrust.h"
#include "support/run-suite.h"

static const double DENSITY = 1.225, INCH = 0.0254;

/* From memory, wind-tunnel data of small propellers, C_T 0.11 and C_P 0.05: 6 × 4 in at 11,500 turns a minute pulls 270 g and takes 36 W. */
START_TEST (six_by_four_inches_at_11500_rpm_pulls_270_grams_for_36_watts)
{
  const double rev_s = 11500.0 / 60, diameter = 6 * INCH;

  ck_assert_double_eq_tol (thrust_of (0.11, DENSITY, rev_s, diameter) / 9.80665e-3, 270, 4);
  ck_assert_double_eq_tol (shaft_power_of (0.05, DENSITY, rev_s, diameter), 36, 0.6);
}
END_TEST

/* The same: 7 × 4 in at 9,500. */
START_TEST (seven_by_four_inches_at_9500_rpm_pulls_340_grams_for_43_watts)
{
  const double rev_s = 9500.0 / 60, diameter = 7 * INCH;

  ck_assert_double_eq_tol (thrust_of (0.11, DENSITY, rev_s, diameter) / 9.80665e-3, 340, 5);
  ck_assert_double_eq_tol (shaft_power_of (0.05, DENSITY, rev_s, diameter), 43, 0.6);
}
END_TEST

/* Momentum theory (Rankine 1865, Froude 1889; in Glauert, Airplane Propellers, 1935): standing, T³ is at most 2 ρ A P². */
START_TEST (no_pitch_gives_more_thrust_than_an_ideal_disc_would)
{
  const double diameter = 7 * INCH, rev_s = 160, area = M_PI / 4 * diameter * diameter;

  for (double ratio = 0.3; ratio < 1.3; ratio += 0.1)
    {
      const double power = shaft_power_of (power_coefficient (ratio).value, DENSITY, rev_s, diameter);
      const double thrust = thrust_of (thrust_coefficient ().value, DENSITY, rev_s, diameter), ideal = cbrt (2 * DENSITY * area * power * power);

      ck_assert_double_lt (thrust, ideal);
      ck_assert_double_gt (thrust, 0.5 * ideal);
    }
}
END_TEST

START_TEST (a_coarser_pitch_takes_more_power_within_what_was_measured)
{
  ck_assert_double_lt (power_coefficient (0.5).value, power_coefficient (0.8).value);
  ck_assert_double_eq_tol (power_coefficient (0.62).value, 0.05, 1e-12);
  ck_assert_double_eq (power_coefficient (0.2).value, 0.04);
  ck_assert_double_eq (power_coefficient (2).value, 0.07);
}
END_TEST

START_TEST (a_pitch_that_nobody_knows_leaves_the_power_less_certain)
{
  ck_assert_double_eq (power_coefficient (NAN).value, 0.05);
  ck_assert_double_eq (power_coefficient (0).value, 0.05);
  ck_assert_double_gt (power_coefficient (NAN).sigma, power_coefficient (0.62).sigma);
}
END_TEST

START_TEST (revolutions_follow_from_the_power_that_they_take)
{
  const double power = shaft_power_of (0.05, DENSITY, 160, 0.18);

  ck_assert_double_eq_tol (thrust_speed_of (0.05, DENSITY, power, 0.18), 160, 1e-9);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("thrust");

  tcase_add_test (tests, six_by_four_inches_at_11500_rpm_pulls_270_grams_for_36_watts);
  tcase_add_test (tests, seven_by_four_inches_at_9500_rpm_pulls_340_grams_for_43_watts);
  tcase_add_test (tests, no_pitch_gives_more_thrust_than_an_ideal_disc_would);
  tcase_add_test (tests, a_coarser_pitch_takes_more_power_within_what_was_measured);
  tcase_add_test (tests, a_pitch_that_nobody_knows_leaves_the_power_less_certain);
  tcase_add_test (tests, revolutions_follow_from_the_power_that_they_take);
  return run_suite (suite_create ("thrust"), tests);
}
