#include <check.h>
#include <math.h>
#include <string.h>
#include "figures/report.h"
#include "support/aeroplanes.h"
#include "support/figures-once.h"
#include "support/run-suite.h"

/* What drives it. Shares, bands and what motors bear are common practice, no source; a propeller of 7 × 4 in and 58 W are from memory,
 * wind-tunnel data of small propellers: 9,500 rpm, 340 g, 43 W at the shaft. */

static const Units metric = { LENGTH_MM, MASS_G };
static const double INCH_MM = 25.4;

typedef struct { double rpm_per_volt, power, input, cells, capacity, current, pitch, diameter; } Rating;
static const Rating usual = { .rpm_per_volt = 1800, .power = 70, .cells = 2, .capacity = 450, .current = 12, .pitch = 4, .diameter = 7 };

static Part *
part_at (const char *class_name, double x, double grams)
{
  Part *part = part_new (class_name, class_name);

  part->x = x;
  part->mass = grams;
  part->length = 10;
  return part;
}

/* 600 by 100 mm of wing and 200 g, with a motor in front. */
static Aeroplane *
driven (Rating rating)
{
  Aeroplane *made = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (100, 600, 100));
  Part *motor = part_at ("motor", 20, 24), *propeller = part_at ("propeller", 0, 6), *battery = part_at ("battery", 60, 30);
  Part *controller = part_at ("controller", 40, 9);

  motor->rpm_per_volt = rating.rpm_per_volt, motor->power = rating.power, motor->input = rating.input;
  propeller->width = rating.diameter * INCH_MM, propeller->pitch = rating.pitch * INCH_MM;
  battery->cells = rating.cells, battery->capacity = rating.capacity;
  controller->current = rating.current;
  made = with_piece (with_piece (with_piece (with_piece (made, motor), propeller), battery), controller);
  return with_part (made, "rest", 131, 150);
}

static Figures *
figures_with (Rating rating)
{
  g_autoptr (Aeroplane) aeroplane = driven (rating);

  return figures_once (aeroplane);
}

START_TEST (a_meter_s_watts_tell_how_fast_it_turns_and_how_hard_it_pulls)
{
  Rating rating = usual;
  rating.input = 58;
  g_autoptr (Figures) figures = figures_with (rating);
  const PowerFigures *power = &figures->power;

  ck_assert_int_eq (power->by, POWER_MEASURED);
  ck_assert_double_eq (power->input_w, 58);
  ck_assert_double_eq_tol (power->rpm, 9500, 0.03 * 9500);
  ck_assert_double_eq_tol (power->thrust_g, 340, 0.06 * 340);
  ck_assert_double_eq_tol (power->input_w_kg, 58 / 0.2, 1e-9);
  ck_assert_double_eq_tol (power->thrust_ratio, power->thrust_g / 200, 1e-12);
}
END_TEST

/* 1,800 × 7.2 V × 0.75. In inches and miles an hour pitch speed is pitch × rpm / 1056, a mile having 63,360 inches. */
START_TEST (without_a_meter_the_volts_tell_it)
{
  g_autoptr (Figures) figures = figures_with (usual);
  const PowerFigures *power = &figures->power;

  ck_assert_int_eq (power->by, POWER_BY_VOLTS);
  ck_assert_double_eq_tol (power->rpm, 9720, 1e-9);
  ck_assert_double_eq_tol (power->pitch_speed_m_s / 0.44704, 4 * 9720 / 1056.0, 1e-9);
  ck_assert_double_eq (figures->flight.pitch_speed_m_s, power->pitch_speed_m_s);
  ck_assert_double_eq_tol (power->pitch_ratio, power->pitch_speed_m_s / figures->flight.stall_speed_m_s, 1e-12);
}
END_TEST

/* Amperes × 7.2 V; 450 mAh, of which four fifths last 60 × 0.36 / (half of the amperes) minutes. */
START_TEST (watts_over_the_pack_s_volts_are_amperes_and_its_capacity_over_half_of_them_is_time)
{
  Rating rating = usual;
  rating.input = 57.6;
  g_autoptr (Figures) figures = figures_with (rating);

  ck_assert_double_eq_tol (figures->power.current_a, 8, 1e-9);
  ck_assert_double_eq_tol (figures->power.minutes, 5.4, 1e-9);
  /* A fifth for how it is flown, 3 % for the meter. */
  ck_assert_double_eq_tol (figures->power.minutes_sigma, 5.4 * hypot (0.2, 0.03), 1e-9);
}
END_TEST

START_TEST (where_only_the_motor_s_class_is_known_it_takes_what_such_motors_take_and_that_is_less_certain)
{
  Rating rating = usual;
  rating.rpm_per_volt = 0;
  g_autoptr (Figures) by_class = figures_with (rating);
  rating.input = 56;
  g_autoptr (Figures) by_meter = figures_with (rating);

  ck_assert_int_eq (by_class->power.by, POWER_USUAL);
  ck_assert_double_eq_tol (by_class->power.input_w, 56, 1e-9);
  ck_assert_double_eq_tol (by_class->power.rpm, by_meter->power.rpm, 1e-9);
  ck_assert_double_gt (by_class->power.thrust_sigma_g, by_meter->power.thrust_sigma_g);
}
END_TEST

START_TEST (two_motors_pull_twice_and_take_twice)
{
  g_autoptr (Aeroplane) one = driven (usual);
  g_autoptr (Figures) single = figures_once (one);
  Aeroplane *two = driven (usual);
  Part *motor = (Part *) piece_dup (aeroplane_find (two, "motor")), *propeller = (Part *) piece_dup (aeroplane_find (two, "propeller"));

  g_free (motor->piece.id), motor->piece.id = g_strdup ("motor-2"), motor->y = 120;
  g_free (propeller->piece.id), propeller->piece.id = g_strdup ("propeller-2"), propeller->y = 120;
  two = with_piece (with_piece (two, motor), propeller);
  g_autoptr (Figures) twin = figures_once (two);

  ck_assert_double_eq_tol (twin->power.thrust_g, 2 * single->power.thrust_g, 1e-9);
  ck_assert_double_eq_tol (twin->power.current_a, 2 * single->power.current_a, 1e-9);
  ck_assert_double_eq (twin->power.pitch_speed_m_s, single->power.pitch_speed_m_s);
  aeroplane_unref (two);
}
END_TEST

static const struct { Rating rating; const char *said; } lacks[] = {
  { { .diameter = 7, .pitch = 4 }, "how fast “Motor” turns" },
  { { .rpm_per_volt = 1800, .diameter = 7, .pitch = 4 }, "how fast “Motor” turns" },
  { { .input = 50, .diameter = 7 }, "the pitch of “Propeller”" },
  { { .input = 50 }, "a propeller on the shaft" },
};

START_TEST (what_the_pitch_speed_lacks_is_said)
{
  Rating rating = lacks[_i].rating;
  g_autoptr (Figures) figures = figures_with (rating);

  ck_assert_double_nan (figures->flight.pitch_speed_m_s);
  ck_assert_msg (note_with (figures, lacks[_i].said) != NULL, "nobody says “%s”", lacks[_i].said);
}
END_TEST

static const struct { Rating rating; const char *said; } faults[] = {
  { { .power = 40, .input = 58, .pitch = 4, .diameter = 7 }, "would take about 58 W with its propeller, and bears 40 W" },
  { { .power = 70, .input = 58, .cells = 1, .current = 12, .pitch = 4, .diameter = 7 }, "would carry about 16.1 A and bears 12 A" },
  { { .power = 70, .input = 10, .cells = 2, .pitch = 2, .diameter = 7 }, "times the stalling speed, and 2 to 3.2 is usual" },
  { { .power = 70, .input = 4, .cells = 2, .pitch = 4, .diameter = 5 }, "pulls with only" },
};

START_TEST (what_is_overloaded_or_too_weak_is_said_and_what_is_usual_is_not)
{
  g_autoptr (Figures) figures = figures_with (faults[_i].rating), sound = figures_with (usual);

  ck_assert_msg (note_with (figures, faults[_i].said) != NULL, "nobody says “%s”", faults[_i].said);
  ck_assert_ptr_null (note_with (sound, faults[_i].said));
}
END_TEST

/* The propeller's middle is 60 mm above the ground, its radius 88.9 or 50.8. */
START_TEST (a_propeller_that_meets_the_ground_is_told_and_one_with_room_is_not)
{
  static const struct { double diameter, clear; const char *said; } cases[] = {
    { 7, -28.9, "reaches into the ground" }, { 4, 9.2, "has little room above the ground" }, { 3, 21.9, NULL },
  };
  Rating rating = usual;
  Part *wheels = part_at ("wheels", 80, 10);

  rating.diameter = cases[_i].diameter;
  wheels->z = -40;
  wheels->height = 40;
  g_autoptr (Aeroplane) aeroplane = with_piece (driven (rating), wheels);
  g_autoptr (Figures) figures = figures_once (aeroplane);

  ck_assert_double_eq_tol (figures->power.clearance_mm, cases[_i].clear, 1e-9);
  if (cases[_i].said)
    ck_assert_msg (note_with (figures, cases[_i].said) != NULL, "nobody says “%s”", cases[_i].said);
  else
    ck_assert (!note_with (figures, "the ground"));
}
END_TEST

START_TEST (what_is_left_out_drives_nothing)
{
  g_autoptr (Aeroplane) with = driven (usual);
  Part *motor = (Part *) piece_dup (aeroplane_find (with, "motor"));

  motor->aboard = false;
  g_autoptr (Aeroplane) without = aeroplane_with_replaced (with, aeroplane_find (with, "motor"), &motor->piece);
  g_autoptr (Figures) figures = figures_once (without);

  ck_assert_double_nan (figures->power.thrust_g);
  ck_assert_ptr_nonnull (note_with (figures, "a motor and its propeller aboard"));
}
END_TEST

START_TEST (report_and_json_tell_it_and_a_glider_s_do_not)
{
  g_autoptr (Figures) figures = figures_with (usual);
  g_autoptr (Aeroplane) bare = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (100, 600, 100));
  g_autoptr (Figures) glider = figures_once (bare);
  g_autofree char *text = report_text (figures, metric), *json = report_json (figures), *silent = report_json (glider);

  ck_assert_ptr_nonnull (strstr (text, "Thrust, standing"));
  ck_assert_ptr_nonnull (strstr (text, "by rpm per volt and cells"));
  ck_assert_ptr_nonnull (strstr (json, "\"by\": \"volts\""));
  ck_assert_ptr_null (strstr (silent, "thrust_g"));
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("power");

  tcase_add_test (tests, a_meter_s_watts_tell_how_fast_it_turns_and_how_hard_it_pulls);
  tcase_add_test (tests, without_a_meter_the_volts_tell_it);
  tcase_add_test (tests, watts_over_the_pack_s_volts_are_amperes_and_its_capacity_over_half_of_them_is_time);
  tcase_add_test (tests, where_only_the_motor_s_class_is_known_it_takes_what_such_motors_take_and_that_is_less_certain);
  tcase_add_test (tests, two_motors_pull_twice_and_take_twice);
  tcase_add_loop_test (tests, what_the_pitch_speed_lacks_is_said, 0, G_N_ELEMENTS (lacks));
  tcase_add_loop_test (tests, what_is_overloaded_or_too_weak_is_said_and_what_is_usual_is_not, 0, G_N_ELEMENTS (faults));
  tcase_add_loop_test (tests, a_propeller_that_meets_the_ground_is_told_and_one_with_room_is_not, 0, 3);
  tcase_add_test (tests, what_is_left_out_drives_nothing);
  tcase_add_test (tests, report_and_json_tell_it_and_a_glider_s_do_not);
  return run_suite (suite_create ("power"), tests);
}
