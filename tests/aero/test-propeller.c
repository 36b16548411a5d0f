#include <check.h>
#include <math.h>
#include <stdlib.h>
#include "aero/propeller.h"
#include "support/run-suite.h"

/* Ribner, NACA Report 819 (1945), summary: a propeller in yaw is a fin of its projected side area, of aspect ratio about 8, in the dynamic
 * pressure at the disc. By hand for 200 mm across, two blades of 20 by 80 mm; a fin of aspect ratio 8 has 2π · 8 / 10 = 5.0265 per radian.
 * Pitch 100 mm: 100 / (0.75 π 200) = tan 11.98°, sine 0.2076; 2 · 20 · 80 · 0.2076 = 664.2 mm²; times 5.0265: 3339 mm².
 * Pitch 160 mm: tan 18.76°, sine 0.3215; 1028.9 mm²; times 5.0265 and twice the pressure: 10343 mm². */
START_TEST (a_propeller_across_the_flow_is_a_fin_of_its_blades_side_area)
{
  const PropellerBound force = propeller_cross_force (200);

  ck_assert_double_eq_tol (force.least, 3339, 5);
  ck_assert_double_eq_tol (force.greatest, 10343, 10);
}
END_TEST

/* Area goes with the square of the diameter. */
START_TEST (twice_the_diameter_is_four_times_the_force)
{
  const PropellerBound small = propeller_cross_force (150), large = propeller_cross_force (300);

  ck_assert_double_eq_tol (large.least, 4 * small.least, 1e-9 * large.least);
  ck_assert_double_eq_tol (large.greatest, 4 * small.greatest, 1e-9 * large.greatest);
}
END_TEST

/* The same report's equation for the side force over the disc's area without power, given from memory: 4.25 σ / (1 + 2 σ) sin (β + 3°),
 * with σ = 4 B b / (3 π D) at three quarters of the radius; times 1.14 with a spinner. B = 2 and b = D / 10: σ = 0.0849, 0.3084; for
 * β = 12.0° sin 15.0° = 0.2585. The fin is the rougher of the two, and may be above it by a third but not below it. */
START_TEST (the_fin_bounds_the_reports_equation_from_above)
{
  const double disc = M_PI / 4 * 200 * 200, equation = 0.3084 * 0.2585 * disc;
  const PropellerBound force = propeller_cross_force (200);

  ck_assert_double_gt (force.least, equation);
  ck_assert_double_lt (force.least, 1.35 * equation);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("propeller");

  tcase_add_test (tests, a_propeller_across_the_flow_is_a_fin_of_its_blades_side_area);
  tcase_add_test (tests, twice_the_diameter_is_four_times_the_force);
  tcase_add_test (tests, the_fin_bounds_the_reports_equation_from_above);
  return run_suite (suite_create ("propeller"), tests);
}
