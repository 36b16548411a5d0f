#include "document/units.h"
#include <float.h>
#include <math.h>
#include "document/quantity.h"
#include "support/comma-locale.h"
#include "support/random.h"
#include "support/run-suite.h"

#define NB "\u00a0"
#define MINUS "\u2212"

/* 1 in = 25.4 mm and 1 lb = 453.59237 g, so 1 oz = 28.349523125 g, exactly: International yard and pound agreement, 1959. */
static const double inch = 25.4, ounce = 28.349523125;
static const Units metric = { LENGTH_MM, MASS_G }, imperial = { LENGTH_INCH, MASS_OZ };

typedef struct { const char *shown; char *(*text) (Units units, double value); double value; bool imperial; } Shown;

static const Shown shown[] = {
  { .shown = "37" NB "mm", .text = units_length, .value = 36.5 },
  { .shown = MINUS "13" NB "mm", .text = units_length, .value = -12.6 },
  { .shown = "0" NB "mm", .text = units_length, .value = -0.3 },
  { .shown = "1234", .text = units_length_figure, .value = 1234.2 },
  { .shown = "\u2013", .text = units_length, .value = NAN },
  { .shown = "\u2013", .text = units_length, .value = INFINITY, .imperial = true },
  { .shown = "3" NB "1/16" NB "in", .text = units_length, .value = 77.7875, .imperial = true },
  { .shown = "7/16", .text = units_length_figure, .value = 11.1125, .imperial = true },
  { .shown = MINUS "1" NB "31/32", .text = units_length_figure, .value = -63 * 25.4 / 32, .imperial = true },
  { .shown = "25" NB "1/4" NB "in", .text = units_length, .value = 641.35, .imperial = true },
  { .shown = "1/32", .text = units_length_figure, .value = 25.4 / 60, .imperial = true },
  { .shown = "0", .text = units_length_figure, .value = -25.4 / 70, .imperial = true },
  { .shown = "2" NB "in", .text = units_length, .value = 50.8 - 0.39, .imperial = true },
  /* 3 in, typed where millimetres are shown, is no 76 mm. */
  { .shown = "76.2" NB "mm", .text = units_length_known, .value = 76.2 },
  { .shown = "80" NB "mm", .text = units_length_known, .value = 80.04 },
  { .shown = "3" NB "in", .text = units_length_known, .value = 76.2, .imperial = true },
  { .shown = "\u2013", .text = units_length_known, .value = NAN },
  /* By hand: 720.0779 g mm are an ounce inch. */
  { .shown = MINUS "720" NB "g·mm", .text = units_moment, .value = -720.0779 },
  { .shown = MINUS "1.00" NB "oz·in", .text = units_moment, .value = -720.0779, .imperial = true },
  { .shown = MINUS "720", .text = units_moment_figure, .value = -720.0779 },
  { .shown = "27" NB "g", .text = units_mass, .value = 27.4 },
  { .shown = "999" NB "g", .text = units_mass, .value = 999.49 },
  { .shown = "1.00" NB "kg", .text = units_mass, .value = 999.5 },
  { .shown = "2.35" NB "kg", .text = units_mass, .value = 2345.6 },
  /* Tenths of a gram below 10 g where there are any; a hundredth of an ounce is 0.28 g. Common practice, no source. */
  { .shown = "4.5" NB "g", .text = units_mass, .value = 4.5 },
  { .shown = "6" NB "g", .text = units_mass, .value = 6 },
  { .shown = "6" NB "g", .text = units_mass, .value = 6.04 },
  { .shown = "9.9", .text = units_mass_figure, .value = 9.94 },
  { .shown = "10", .text = units_mass_figure, .value = 9.95 },
  { .shown = MINUS "0.5", .text = units_mass_figure, .value = -0.5 },
  { .shown = "0", .text = units_mass_figure, .value = 0 },
  { .shown = "0.16" NB "oz", .text = units_mass, .value = 4.5, .imperial = true },
  { .shown = "0.21" NB "oz", .text = units_mass, .value = 6, .imperial = true },
  { .shown = "0.95" NB "oz", .text = units_mass, .value = 27, .imperial = true },
  { .shown = "6.20" NB "oz", .text = units_mass, .value = 6.2 * 28.349523125, .imperial = true },
  { .shown = "9.99", .text = units_mass_figure, .value = 9.994 * 28.349523125, .imperial = true },
  { .shown = "10.0", .text = units_mass_figure, .value = 9.996 * 28.349523125, .imperial = true },
  { .shown = MINUS "0.40", .text = units_mass_figure, .value = -0.4 * 28.349523125, .imperial = true },
  { .shown = "0.7" NB "g", .text = units_mass_deviation, .value = 0.72 },
  { .shown = "0.1" NB "g", .text = units_mass_deviation, .value = 0.02 },
  { .shown = "0" NB "g", .text = units_mass_deviation, .value = 0 },
  { .shown = "1.20" NB "kg", .text = units_mass_deviation, .value = 1200 },
  { .shown = "0.01", .text = units_mass_deviation_figure, .value = 0.02, .imperial = true },
  { .shown = "\u2013", .text = units_mass_deviation, .value = NAN },
  { .shown = "6.5" NB "m/s", .text = units_speed, .value = 6.49 },
  /* A mile is 1609.344 m: International yard and pound agreement, 1959. */
  { .shown = "10.0" NB "mph", .text = units_speed, .value = 4.4704, .imperial = true },
  { .shown = "\u2013", .text = units_speed, .value = NAN },
  { .shown = "\u2013", .text = units_mass, .value = NAN },
  { .shown = "8.76" NB "dm²", .text = units_area, .value = 87624 },
  { .shown = "12.4" NB "dm²", .text = units_area, .value = 123999 },
  { .shown = "136" NB "in²", .text = units_area, .value = 136.2 * 25.4 * 25.4, .imperial = true },
  { .shown = "23" NB "g/dm²", .text = units_loading, .value = 22.8 },
  { .shown = "9.3" NB "g/dm²", .text = units_loading, .value = 9.34 },
  /* 1 ft² = 9.290304 dm², so 30.515 g/dm² is one ounce for each square foot ten times: 10.000 oz/ft². */
  { .shown = "10" NB "oz/ft²", .text = units_loading, .value = 10 * 28.349523125 / 9.290304, .imperial = true },
};

START_TEST (a_value_is_shown_as_the_trade_rounds_it)
{
  const Shown *each = &shown[_i];
  g_autofree char *text = each->text (each->imperial ? imperial : metric, each->value);

  ck_assert_str_eq (text, each->shown);
}
END_TEST

START_TEST (sizes_angles_and_percent_have_their_own_signs)
{
  g_autofree char *size = units_size (metric, 55.2, 30, 11.7), *inches = units_size (imperial, 50.8, 9.525, 25.4);
  g_autofree char *angle = units_angle (2.5), *whole = units_angle (-4.02), *percent = units_percent (-12.4), *none = units_percent (NAN);
  g_autofree char *number = units_number (-0.426, 2), *nought = units_number (-0.004, 2), *missing = units_number (NAN, 2);

  ck_assert_str_eq (size, "55 × 30 × 12");
  ck_assert_str_eq (inches, "2 × 3/8 × 1");
  ck_assert_str_eq (angle, "2.5°");
  ck_assert_str_eq (whole, MINUS "4°");
  ck_assert_str_eq (percent, MINUS "12" NB "%");
  ck_assert_str_eq (none, "\u2013");
  ck_assert_str_eq (number, MINUS "0.43");
  ck_assert_str_eq (nought, "0.00");
  ck_assert_str_eq (missing, "\u2013");
}
END_TEST

typedef struct { const char *typed; double value; bool imperial, mass; } Typed;

static const Typed typed[] = {
  { .typed = "1.5", .value = 1.5 },
  { .typed = "1,5", .value = 1.5 },
  { .typed = "1.5", .value = 38.1, .imperial = true },
  { .typed = "12.5 mm", .value = 12.5, .imperial = true },
  { .typed = "12,5mm", .value = 12.5, .imperial = true },
  { .typed = "3 1/16 in", .value = 77.7875 },
  { .typed = "3-1/16", .value = 77.7875, .imperial = true },
  { .typed = "7/16", .value = 11.1125, .imperial = true },
  { .typed = "25 1/4\"", .value = 641.35 },
  { .typed = "25 ¼″", .value = 641.35 },
  { .typed = "3" NB "1/16" NB "in", .value = 77.7875 },
  { .typed = "1.44in", .value = 36.576 },
  { .typed = "1.44 IN.", .value = 36.576 },
  { .typed = "3.5 cm", .value = 35 },
  { .typed = "0.64 m", .value = 640 },
  { .typed = "2 ft 3 in", .value = 685.8 },
  { .typed = "2' 3 1/2\"", .value = 698.5 },
  { .typed = MINUS "12.5", .value = -12.5 },
  { .typed = "-7/16 in", .value = -11.1125 },
  { .typed = "+4", .value = 4 },
  { .typed = "  36 \t", .value = 36 },
  { .typed = "1 234.5", .value = 1234.5 },
  { .typed = "1,234,567.5", .value = 1234567.5 },
  { .typed = "1.234.567,5", .value = 1234567.5 },
  { .typed = "0,125", .value = 0.125 },
  { .typed = "1.25e-3", .value = 0.00125 },
  { .typed = "6.2 oz", .value = 175.767043375, .mass = true },
  { .typed = "1 lb", .value = 453.59237, .mass = true },
  { .typed = "1 lb 2 oz", .value = 453.59237 + 56.69904625, .mass = true },
  { .typed = "1/2", .value = 14.1747615625, .mass = true, .imperial = true },
  { .typed = "27,5 g", .value = 27.5, .mass = true, .imperial = true },
  { .typed = "0.2 kg", .value = 200, .mass = true },
};

START_TEST (what_a_person_types_is_the_nearest_double_to_what_it_says)
{
  const Typed *each = &typed[_i];
  const Units units = each->imperial ? imperial : metric;
  double value = -1e300;
  GError *error = NULL;
  const bool done = each->mass ? units_parse_mass (units, each->typed, &value, &error) : units_parse_length (units, each->typed, &value, &error);

  ck_assert_msg (done, "%s: %s", each->typed, error ? error->message : "");
  ck_assert_msg (value == each->value, "%s: %.17g", each->typed, value);
}
END_TEST

typedef struct { const char *typed; UnitsError code; const char *sentence; bool mass; } Refused;

static const Refused refused[] = {
  { .typed = "", .code = UNITS_ERROR_EMPTY },
  { .typed = " \t ", .code = UNITS_ERROR_EMPTY, .mass = true },
  { .typed = "wide", .code = UNITS_ERROR_NOT_A_NUMBER },
  { .typed = "1.2.3", .code = UNITS_ERROR_NOT_A_NUMBER },
  { .typed = "1..2", .code = UNITS_ERROR_NOT_A_NUMBER },
  { .typed = "--4", .code = UNITS_ERROR_NOT_A_NUMBER },
  { .typed = "3/0 in", .code = UNITS_ERROR_NOT_A_NUMBER },
  { .typed = "inf", .code = UNITS_ERROR_NOT_A_NUMBER },
  { .typed = "nan", .code = UNITS_ERROR_NOT_A_NUMBER },
  { .typed = "1e9", .code = UNITS_ERROR_LARGE },
  { .typed = "4 mm 5", .code = UNITS_ERROR_NOT_A_NUMBER },
  { .typed = "\xff\xfe", .code = UNITS_ERROR_NOT_A_NUMBER },
  { .typed = "1 g", .code = UNITS_ERROR_UNIT, .sentence = "“g” is not a unit of length. Write mm, cm, m, in or ft." },
  { .typed = "12 mm", .code = UNITS_ERROR_UNIT, .mass = true, .sentence = "“mm” is not a unit of mass. Write g, kg, oz or lb." },
  { .typed = "1 cubit", .code = UNITS_ERROR_UNIT },
  { .typed = "1,000", .code = UNITS_ERROR_AMBIGUOUS, .sentence = "1,000: is that one or a thousand? Write 1 or 1000." },
  { .typed = "1.000", .code = UNITS_ERROR_AMBIGUOUS, .sentence = "1.000: is that one or a thousand? Write 1 or 1000." },
  { .typed = "12,345 mm", .code = UNITS_ERROR_AMBIGUOUS },
};

START_TEST (what_cannot_be_understood_is_asked_about_and_sets_nothing)
{
  const Refused *each = &refused[_i];
  double value = 4.25;
  GError *error = NULL;

  ck_assert_msg (!(each->mass ? units_parse_mass (metric, each->typed, &value, &error)
                              : units_parse_length (metric, each->typed, &value, &error)), "%s", each->typed);
  ck_assert (value == 4.25);
  ck_assert_msg (g_error_matches (error, UNITS_ERROR, each->code), "%s: %s", each->typed, error->message);
  if (each->sentence)
    ck_assert_str_eq (error->message, each->sentence);
  g_error_free (error);
}
END_TEST

START_TEST (a_number_alone_takes_no_unit_of_length)
{
  double value = 0;
  GError *error = NULL;

  ck_assert (units_parse_number ("2,5°", &value, NULL));
  ck_assert (value == 2.5);
  ck_assert (units_parse_number (MINUS "12 %", &value, NULL));
  ck_assert (value == -12);
  ck_assert (!units_parse_number ("12 mm", &value, &error));
  ck_assert (g_error_matches (error, UNITS_ERROR, UNITS_ERROR_UNIT));
  g_error_free (error);
}
END_TEST

/* Each value is made in every magnitude that a model has, from a film of glue to a hangar. */
static double
any_value (Random *random)
{
  const double size = pow (10, random_between (random, -6, 6.9));

  return random_next (random) & 1 ? size : -size;
}

static void
assert_edited_text_is_the_value (Units units, double value)
{
  g_autofree char *length = units_length_exact (units, value), *mass = units_mass_exact (units, value), *number = units_number_exact (value);
  double back = NAN;

  ck_assert_msg (units_parse_length (units, length, &back, NULL) && back == value, "%s is %.17g and not %.17g", length, back, value);
  ck_assert_msg (units_parse_mass (units, mass, &back, NULL) && back == value, "%s is %.17g and not %.17g", mass, back, value);
  ck_assert_msg (units_parse_number (number, &back, NULL) && back == value, "%s is %.17g and not %.17g", number, back, value);
}

static void
assert_many_edited_texts_are_their_values (void)
{
  Random random = { 19590701 };

  for (int i = 0; i < 700; i++)
    {
      const double value = any_value (&random), marks = round (value / inch * 64) * inch / 64;

      assert_edited_text_is_the_value (metric, value);
      assert_edited_text_is_the_value (imperial, value);
      assert_edited_text_is_the_value (imperial, marks);
      assert_edited_text_is_the_value (metric, round (value * 8) / 8);
    }
}

START_TEST (text_for_editing_is_read_back_to_the_last_bit)
{
  assert_many_edited_texts_are_their_values ();
}
END_TEST

START_TEST (text_for_editing_is_what_a_person_would_write)
{
  static const struct { double value; const char *metric, *length, *mass; } cases[] = {
    { 77.7875, "77.7875", "3 1/16", NULL },
    { -11.1125, "-11.1125", "-7/16", NULL },
    { 36.576, "36.576", "1.44", NULL },
    { 2540, "2540", "100", NULL },
    { 28.349523125, "28.349523125", NULL, "1" },
    { 2834.9523125, "2834.9523125", NULL, "100" },
    { 175.767043375, "175.767043375", NULL, "6.2" },
    { 566.9904625, "566.9904625", NULL, "20" },
    { 100000, "100000", NULL, NULL },
    { 0, "0", "0", "0" },
  };

  for (size_t i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autofree char *metric_text = units_length_exact (metric, cases[i].value), *length = units_length_exact (imperial, cases[i].value);
      g_autofree char *mass = units_mass_exact (imperial, cases[i].value);

      ck_assert_str_eq (metric_text, cases[i].metric);
      if (cases[i].length)
        ck_assert_str_eq (length, cases[i].length);
      if (cases[i].mass)
        ck_assert_str_eq (mass, cases[i].mass);
    }
}
END_TEST

START_TEST (a_loading_is_typed_and_edited_in_the_reader_s_own_unit)
{
  double got = NAN;
  g_autofree char *eight = NULL, *metric_text = units_loading_exact (metric, 24), *none = units_loading_exact (imperial, NAN);

  ck_assert (units_parse_loading (imperial, "8.25", &got, NULL));
  ck_assert_double_eq_tol (got, 8.25 * 28.349523125 / 9.290304, 1e-12);
  eight = units_loading_exact (imperial, got);
  ck_assert_str_eq (eight, "8.25");
  ck_assert_str_eq (metric_text, "24");
  ck_assert_str_eq (none, "");
  ck_assert_str_eq (units_loading_name (imperial), "oz/ft²");
}
END_TEST

START_TEST (an_area_is_typed_and_edited_in_the_reader_s_own_unit)
{
  double got = NAN;
  g_autofree char *square = NULL, *metric_text = units_area_exact (metric, 12200), *none = units_area_exact (imperial, NAN);

  ck_assert (units_parse_area (imperial, "22.7", &got, NULL));
  ck_assert_double_eq_tol (got, 22.7 * 25.4 * 25.4, 1e-9);
  square = units_area_exact (imperial, got);
  ck_assert_str_eq (square, "22.7");
  ck_assert_str_eq (metric_text, "1.22");
  ck_assert_str_eq (none, "");
  ck_assert (!units_parse_area (metric, "1,000", &got, NULL));
}
END_TEST

START_TEST (the_inch_and_the_ounce_are_exact)
{
  double value;

  ck_assert (units_parse_length (metric, "1 in", &value, NULL) && value == inch);
  ck_assert (units_parse_length (metric, "1 ft", &value, NULL) && value == 304.8);
  ck_assert (units_parse_mass (metric, "1 oz", &value, NULL) && value == ounce);
  ck_assert (units_parse_mass (metric, "16 oz", &value, NULL) && value == 453.59237);
}
END_TEST

static bool
is_asked_about (const char *text)
{
  GError *error = NULL;
  double value;
  const bool asked = !units_parse_length (metric, text, &value, &error) && g_error_matches (error, UNITS_ERROR, UNITS_ERROR_AMBIGUOUS);

  g_clear_error (&error);
  return asked;
}

START_TEST (where_the_comma_is_the_decimal_sign_it_is_shown_and_read)
{
  char *folder = comma_locale_enter ();
  g_autofree char *angle = units_angle (2.5), *exact = units_number_exact (1.234), *mass = units_mass (imperial, 6.2 * ounce);
  double value = 0;

  ck_assert_str_eq (angle, "2,5°");
  ck_assert_str_eq (exact, "1,234");
  ck_assert_str_eq (mass, "6,20" NB "oz");
  ck_assert (units_parse_number ("1,234", &value, NULL) && value == 1.234);
  ck_assert (units_parse_number ("1.5", &value, NULL) && value == 1.5);
  ck_assert (units_parse_number ("1,5", &value, NULL) && value == 1.5);
  ck_assert (is_asked_about ("1.000"));
  ck_assert (is_asked_about ("1,000"));
  ck_assert (is_asked_about ("1.234"));
  assert_many_edited_texts_are_their_values ();
  comma_locale_leave (folder);
}
END_TEST

START_TEST (where_the_point_is_the_decimal_sign_only_the_comma_is_asked_about)
{
  double value = 0;

  ck_assert (units_parse_number ("1.234", &value, NULL) && value == 1.234);
  ck_assert (is_asked_about ("1,234"));
  ck_assert (is_asked_about ("1.000"));
  ck_assert (!is_asked_about ("0,234"));
  ck_assert (!is_asked_about ("1234,5"));
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("units");

  tcase_set_timeout (tests, 60);
  tcase_add_loop_test (tests, a_value_is_shown_as_the_trade_rounds_it, 0, G_N_ELEMENTS (shown));
  tcase_add_test (tests, sizes_angles_and_percent_have_their_own_signs);
  tcase_add_loop_test (tests, what_a_person_types_is_the_nearest_double_to_what_it_says, 0, G_N_ELEMENTS (typed));
  tcase_add_loop_test (tests, what_cannot_be_understood_is_asked_about_and_sets_nothing, 0, G_N_ELEMENTS (refused));
  tcase_add_test (tests, a_number_alone_takes_no_unit_of_length);
  tcase_add_test (tests, text_for_editing_is_read_back_to_the_last_bit);
  tcase_add_test (tests, text_for_editing_is_what_a_person_would_write);
  tcase_add_test (tests, a_loading_is_typed_and_edited_in_the_reader_s_own_unit);
  tcase_add_test (tests, an_area_is_typed_and_edited_in_the_reader_s_own_unit);
  tcase_add_test (tests, the_inch_and_the_ounce_are_exact);
  tcase_add_test (tests, where_the_comma_is_the_decimal_sign_it_is_shown_and_read);
  tcase_add_test (tests, where_the_point_is_the_decimal_sign_only_the_comma_is_asked_about);
  return run_suite (suite_create ("document units"), tests);
}
