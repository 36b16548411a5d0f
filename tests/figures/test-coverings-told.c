#include <check.h>
#include <string.h>
#include "figures/coverings.h"
#include "figures/report.h"
#include "support/aeroplanes.h"
#include "support/figures-once.h"
#include "support/run-suite.h"

/* The table of coverings for people. Each sum is counted by standing in its place. */

enum { TERMINAL = 80 };

static unsigned summed;

Coverings __real_coverings_of (const Figures *figures, CoveringWhere where);
Coverings __wrap_coverings_of (const Figures *figures, CoveringWhere where);

Coverings
__wrap_coverings_of (const Figures *figures, CoveringWhere where)
{
  summed += where.scope == COVERING_TAIL;
  return __real_coverings_of (figures, where);
}

/* All of it covered, and the battery with a name that no column has room for. */
static Figures *
covered_racer (void)
{
  g_autoptr (Aeroplane) bare = racer ();
  g_autoptr (Figures) figures = figures_once (bare);
  g_autoptr (Aeroplane) covered = covering_chosen (figures, (CoveringWhere) { .scope = COVERING_ALL }, material_class_find ("iron-on"));
  Part *battery = (Part *) piece_dup (aeroplane_find (covered, "battery"));

  g_free (battery->name);
  battery->name = g_strdup ("Battery, two cells, the old one with the repaired plug");
  g_autoptr (Aeroplane) named = aeroplane_with_replaced (covered, aeroplane_find (covered, "battery"), &battery->piece);
  return figures_once (named);
}

/* The lines of the table alone: from its heading to the empty line. */
static void
assert_narrow (const char *report)
{
  g_auto (GStrv) lines = g_strsplit (strstr (report, "Coverings compared"), "\n", -1);

  for (size_t i = 0; *lines[i]; i++)
    ck_assert_msg (g_utf8_strlen (lines[i], -1) <= TERMINAL, "wide: %s", lines[i]);
  ck_assert_uint_gt (g_strv_length (lines), 10);
}

START_TEST (a_row_of_the_table_fits_a_terminal_in_millimetres_and_in_inches)
{
  g_autoptr (Figures) figures = covered_racer ();
  g_autofree char *metric = report_text (figures, (Units) { LENGTH_MM, MASS_G });
  g_autofree char *inches = report_text (figures, (Units) { LENGTH_INCH, MASS_OZ });

  assert_narrow (metric);
  assert_narrow (inches);
  ck_assert_ptr_nonnull (strstr (inches, "nose, oz"));
}
END_TEST

START_TEST (the_part_that_makes_up_for_it_is_named_beneath)
{
  g_autoptr (Figures) figures = covered_racer ();
  g_autofree char *report = report_text (figures, (Units) { LENGTH_MM, MASS_G });

  ck_assert_ptr_nonnull (strstr (report, "The part is “Battery, two cells"));
  ck_assert_ptr_nonnull (strstr (report, "as now"));
}
END_TEST

START_TEST (the_tail_is_summed_once_for_its_rows_and_the_sentence)
{
  g_autoptr (Figures) figures = covered_racer ();

  summed = 0;
  g_autofree char *report = report_text (figures, (Units) { LENGTH_MM, MASS_G });
  ck_assert_ptr_nonnull (strstr (report, "The lightest, “Polyester film”, spares"));
  ck_assert_uint_eq (summed, 1);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("coverings told");

  tcase_add_test (tests, a_row_of_the_table_fits_a_terminal_in_millimetres_and_in_inches);
  tcase_add_test (tests, the_part_that_makes_up_for_it_is_named_beneath);
  tcase_add_test (tests, the_tail_is_summed_once_for_its_rows_and_the_sentence);
  return run_suite (suite_create ("coverings told"), tests);
}
