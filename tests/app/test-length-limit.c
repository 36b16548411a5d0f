/* What is said of a length that no small aeroplane has. */
#include "app/length-limit.h"
#include "support/run-suite.h"
#include <math.h>
#include <stddef.h>

static const Units mm = { LENGTH_MM, MASS_G }, inches = { LENGTH_INCH, MASS_OZ };

static void
expect (char *takes, const char *sentence)
{
  g_autofree char *said = takes;

  if (sentence == NULL)
    ck_assert_ptr_null (said);
  else
    ck_assert_pstr_eq (said, sentence);
}

START_TEST (a_span_is_more_than_nothing_and_at_most_the_limit)
{
  expect (length_limit_span (mm, 0.1), NULL);
  expect (length_limit_span (mm, 20000), NULL);
  expect (length_limit_span (mm, 0), "A span is more than 0 and at most 20 m.");
  expect (length_limit_span (mm, -5), "A span is more than 0 and at most 20 m.");
  expect (length_limit_span (mm, 20000.1), "A span is more than 0 and at most 20 m.");
}
END_TEST

/* 20 m are 787.4 in at 25.4 mm to the inch. */
START_TEST (the_limit_is_said_in_the_persons_unit)
{
  expect (length_limit_span (inches, -5), "A span is more than 0 and at most 787\u00a0in.");
  expect (length_limit_place (inches, 1e5, -LENGTH_LIMIT_MM), "That is further than 787\u00a0in away.");
}
END_TEST

START_TEST (a_place_with_a_lower_end_names_both_ends)
{
  expect (length_limit_place (mm, 0, 0), NULL);
  expect (length_limit_place (mm, -1, 0), "It lies between 0 and 20 m.");
  expect (length_limit_place (mm, -30, -25), "It lies between \u221225\u00a0mm and 20 m.");
  expect (length_limit_place (mm, -20000, -LENGTH_LIMIT_MM), NULL);
  expect (length_limit_place (mm, -20001, -LENGTH_LIMIT_MM), "That is further than 20 m away.");
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("length limit");

  tcase_add_test (tests, a_span_is_more_than_nothing_and_at_most_the_limit);
  tcase_add_test (tests, the_limit_is_said_in_the_persons_unit);
  tcase_add_test (tests, a_place_with_a_lower_end_names_both_ends);
  return run_suite (suite_create ("length limit"), tests);
}
