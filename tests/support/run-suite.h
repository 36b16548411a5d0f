#pragma once
#include <check.h>
#include <stdlib.h>

/** Runs a suite of one case and gives the exit status; the suite is taken. */
static inline int
run_suite (Suite *suite, TCase *tests)
{
  SRunner *runner;
  int failed;

  suite_add_tcase (suite, tests);
  runner = srunner_create (suite);
  srunner_run_all (runner, CK_ENV);
  failed = srunner_ntests_failed (runner);
  srunner_free (runner);
  return failed ? EXIT_FAILURE : EXIT_SUCCESS;
}
