#include <check.h>
#include <string.h>
#include "geometry/status.h"
#include "support/run-suite.h"

START_TEST (every_status_has_a_sentence_of_its_own_without_a_full_stop)
{
  for (int status = CORE_OK; status < CORE_STATUS_END; status++)
    {
      const char *sentence = core_status_sentence ((CoreStatus) status);

      ck_assert_ptr_nonnull (sentence);
      ck_assert_uint_gt (strlen (sentence), 10);
      ck_assert_int_ne (sentence[strlen (sentence) - 1], '.');
      for (int other = CORE_OK; other < status; other++)
        ck_assert_str_ne (sentence, core_status_sentence ((CoreStatus) other));
    }
}
END_TEST

START_TEST (a_status_nobody_knows_still_has_a_sentence)
{
  ck_assert_ptr_nonnull (core_status_sentence (CORE_STATUS_END));
  ck_assert_ptr_nonnull (core_status_sentence ((CoreStatus) 4711));
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("sentences");

  tcase_add_test (tests, every_status_has_a_sentence_of_its_own_without_a_full_stop);
  tcase_add_test (tests, a_status_nobody_knows_still_has_a_sentence);
  return run_suite (suite_create ("status"), tests);
}
