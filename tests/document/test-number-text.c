#include "document/number-text.h"
#include <glib.h>
#include <math.h>
#include <stdlib.h>
#include "support/random.h"
#include "support/run-suite.h"

/* Every double has a decimal of at most 17 digits that reads back to it (IEEE 754-2008, 5.12.2), and most have a shorter one. printf and
 * strtod, which are correctly rounded in glibc, are the judges here; the tests run in the C locale. */
static void
shortest_of_printf (double value, char *text)
{
  for (int digits = 1; digits <= 17; digits++)
    {
      g_snprintf (text, NUMBER_ROOM, "%.*g", digits, value);
      if (strtod (text, NULL) == value)
        return;
    }
}

static void
assert_written_like_printf (double value)
{
  char wanted[NUMBER_ROOM], got[NUMBER_ROOM];
  const size_t length = number_write (value, got);
  double back;

  shortest_of_printf (value, wanted);
  ck_assert_uint_eq (length, strlen (got));
  ck_assert_msg (number_read (got, length, &back) && back == value, "%a is written as %s", value, got);
  if (!strchr (wanted, 'e'))      /* printf chooses an exponent by the count of digits, the file by what a person reads more easily */
    ck_assert_msg (strcmp (got, wanted) == 0, "%a is written as %s and not %s", value, got, wanted);
}

START_TEST (any_number_is_written_with_as_few_digits_as_it_needs)
{
  Random random = { 20240229 };

  for (int i = 0; i < 5000; i++)
    {
      const double value = pow (10, random_between (&random, -8, 9));

      assert_written_like_printf (value);
      assert_written_like_printf (-nextafter (round (value * 1000) / 1000, 1e300));
      assert_written_like_printf (round (value * 1e4) / 1e4);
      assert_written_like_printf (ldexp (1 + (double) random_below (&random, 8), (int) random_below (&random, 40) - 12));
    }
}
END_TEST

START_TEST (numbers_at_the_edges_are_written_like_all_others)
{
  static const double edges[] = { 1e-3, 1e-2, 0.1, 1, 10, 100, 1e7, 1e8 };

  for (size_t i = 0; i < G_N_ELEMENTS (edges); i++)
    {
      assert_written_like_printf (edges[i]);
      assert_written_like_printf (nextafter (edges[i], 0));
      assert_written_like_printf (nextafter (edges[i], 1e300));
      assert_written_like_printf (edges[i] / 3);
    }
  assert_written_like_printf (0);
  assert_written_like_printf (5e-324);
  assert_written_like_printf (1.7976931348623157e308);
}
END_TEST

static const struct { const char *text; bool read; double value; } texts[] = {
  { .text = "1.5", .read = true, .value = 1.5 },
  { .text = " -0.125\n", .read = true, .value = -0.125 },
  { .text = "+3", .read = true, .value = 3 },
  { .text = ".5", .read = true, .value = 0.5 },
  { .text = "5.", .read = true, .value = 5 },
  { .text = "2.5e-3", .read = true, .value = 0.0025 },
  { .text = "123456789012345678901234567890", .read = true, .value = 123456789012345678901234567890.0 },
  { .text = "" }, { .text = " " }, { .text = "1,5" }, { .text = "0x10" }, { .text = "inf" }, { .text = "nan" }, { .text = "1e999" },
  { .text = "1 2" }, { .text = "-" }, { .text = "." }, { .text = "1e" }, { .text = "1.2.3" }, { .text = "1mm" }, { .text = "--1" },
};

START_TEST (a_text_is_read_whole_or_not_at_all)
{
  double value = 7.25;

  ck_assert_msg (number_read (texts[_i].text, strlen (texts[_i].text), &value) == texts[_i].read, "'%s'", texts[_i].text);
  ck_assert_msg (value == (texts[_i].read ? texts[_i].value : 7.25), "'%s' is %.17g", texts[_i].text, value);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("number text");

  tcase_set_timeout (tests, 60);
  tcase_add_test (tests, any_number_is_written_with_as_few_digits_as_it_needs);
  tcase_add_test (tests, numbers_at_the_edges_are_written_like_all_others);
  tcase_add_loop_test (tests, a_text_is_read_whole_or_not_at_all, 0, G_N_ELEMENTS (texts));
  return run_suite (suite_create ("document number text"), tests);
}
