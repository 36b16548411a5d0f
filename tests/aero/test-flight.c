#include <check.h>
#include <math.h>
#include <stdlib.h>
#include "aero/flight.h"
#include "support/run-suite.h"

/* ISO 2533:1975 (below 20 km the US Standard Atmosphere 1976), geopotential height; viscosity by its Sutherland law.
 * Tables are printed to five or six digits. */
static const struct { double height, temperature, pressure, density, viscosity, kinematic; } standard[] = {
  { .height = 0,    .temperature = 288.150, .pressure = 101325.00, .density = 1.225000, .viscosity = 1.78938e-5, .kinematic = 1.46072e-5 },
  { .height = 1000, .temperature = 281.650, .pressure = 89874.56,  .density = 1.111643, .viscosity = 1.75785e-5, .kinematic = 1.58130e-5 },
  { .height = 2000, .temperature = 275.150, .pressure = 79495.20,  .density = 1.006490, .viscosity = 1.72596e-5, .kinematic = 1.71483e-5 },
};

START_TEST (air_is_the_standard_atmospheres)
{
  const Air air = air_at (standard[_i].height);

  ck_assert_double_eq_tol (air.temperature, standard[_i].temperature, 1e-5 * air.temperature);
  ck_assert_double_eq_tol (air.pressure, standard[_i].pressure, 1e-5 * air.pressure);
  ck_assert_double_eq_tol (air.density, standard[_i].density, 1e-5 * air.density);
  ck_assert_double_eq_tol (air.viscosity, standard[_i].viscosity, 1e-5 * air.viscosity);
}
END_TEST

/* At geometric 1000 m the air is denser, 1.111660 kg/m³ at 281.651 K: the height here is the geopotential one, r h / (r + h) with the
 * standard's radius r = 6356766 m. */
START_TEST (height_is_geopotential)
{
  const double geometric = 1000, radius = 6356766;
  const Air air = air_at (radius * geometric / (radius + geometric));

  ck_assert_double_eq_tol (air.density, 1.111660, 1e-6);
  ck_assert_double_eq_tol (air.temperature, 281.651, 5e-4);
  ck_assert_double_lt (air_at (geometric).density, 1.111650);
}
END_TEST

/* Lift equals weight at the greatest lift coefficient; an ellipse of 640 by 120 mm, 250 g. */
START_TEST (a_quarter_kilogram_on_an_elliptical_wing_stalls_at_8_146_metres_a_second)
{
  const double area = M_PI * 0.32 * 0.06, speed = flight_stall_speed (0.25, area, 1.225, 1.0);

  ck_assert_double_eq_tol (speed, 8.14613766, 1e-8);
  ck_assert_double_eq_tol (0.5 * 1.225 * speed * speed * area * 1.0, 0.25 * 9.80665, 1e-12);
  ck_assert_double_eq_tol (flight_stall_speed (4 * 0.25, area, 1.225, 1.0), 2 * speed, 1e-12);
}
END_TEST

/* With the kinematic viscosities that ISO 2533:1975 prints, 1.46072e-5 m²/s at sea level. */
START_TEST (reynolds_number_is_speed_times_chord_over_kinematic_viscosity)
{
  const Air air = air_at (standard[_i].height);
  const double reynolds = 11.3 * 0.1019 / standard[_i].kinematic;

  ck_assert_double_eq_tol (flight_reynolds (&air, 11.3, 0.1019), reynolds, 1e-5 * reynolds);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("flight");

  tcase_add_loop_test (tests, air_is_the_standard_atmospheres, 0, sizeof standard / sizeof *standard);
  tcase_add_test (tests, height_is_geopotential);
  tcase_add_test (tests, a_quarter_kilogram_on_an_elliptical_wing_stalls_at_8_146_metres_a_second);
  tcase_add_loop_test (tests, reynolds_number_is_speed_times_chord_over_kinematic_viscosity, 0, sizeof standard / sizeof *standard);
  return run_suite (suite_create ("flight"), tests);
}
