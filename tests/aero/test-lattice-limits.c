#include <check.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>
#include "convergence-wings.h"
#include "support/run-suite.h"

/* The promise is the product's own; the limit is that of two fine lattices of ratio two with the error of the first order taken out
 * (Richardson). convergence.md says how well that is known: these panels, a quarter of the study's, tell it to 0.03 % of MAC. */
static const LatticeOptions fine = { .spanwise = 28, .chordwise = 8 };

/* The lift slope may be off by more where a wing has a corner in its plan or its rise, and beside a foreplane or a second wing: nothing
 * but the size of a gust hangs on it. In percent. */
static double
slope_promise (const StudyWing *wing, StudyGroup group)
{
  if (group > STUDY_TAILED)
    return 0.6;
  return strstr (wing->name, "square notch") ? 0.35 : wing->bend.station > 0 ? 0.25 : 0.15;
}

/* _i counts wings, and for each of them the companies. */
START_TEST (default_panels_put_the_neutral_point_where_finer_ones_tend)
{
  const StudyWing *wing = &study_wings[(size_t) _i / study_company_count];
  const StudyCompany *company = &study_companies[(size_t) _i % study_company_count];
  StudyCase flown = study_case_of (wing, company);
  Lattice *lattice = lattice_new ();
  const LatticeResult working = study_solve (lattice, &flown, lattice_default_options ());
  const LatticeResult limit = study_limit_from (lattice, &flown, fine);
  const StudyGroup group = study_group (wing, company);
  const double error = study_neutral_error (&flown, &working, &limit), promise = study_promise (group);
  const double slope_error = 100 * (working.lift_slope / limit.lift_slope - 1);

  ck_assert_msg (fabs (error) < promise, "%s, %s: %+.3f %% of MAC, promised %g", wing->name, company->name, error, promise);
  ck_assert_msg (fabs (slope_error) < slope_promise (wing, group), "%s, %s: lift slope off by %+.3f %%", wing->name, company->name,
                 slope_error);
  lattice_free (lattice);
  study_case_clear (&flown);
}
END_TEST

/* What the promise is made for, and the panels it is made of. */
START_TEST (the_default_panels_are_20_by_6_and_a_tails_12_by_4)
{
  const LatticeOptions options = lattice_default_options ();
  StudyCase flown = study_case_of (&study_wings[0], &study_companies[2]);
  Lattice *lattice = lattice_new ();
  const LatticeResult by_default = study_solve (lattice, &flown, options);

  ck_assert_int_eq (options.spanwise, 20);
  ck_assert_int_eq (options.chordwise, 6);
  ck_assert_int_eq (options.spacing, LATTICE_COSINE);
  flown.surfaces[1].spanwise = 12;
  flown.surfaces[1].chordwise = 4;
  const LatticeResult spelt = study_solve (lattice, &flown, options);

  ck_assert_double_eq (spelt.neutral_point_x, by_default.neutral_point_x);
  ck_assert_double_eq (spelt.lift_slope, by_default.lift_slope);
  flown.surfaces[1].chordwise = 3;
  ck_assert_double_ne (study_solve (lattice, &flown, options).neutral_point_x, by_default.neutral_point_x);
  lattice_free (lattice);
  study_case_clear (&flown);
}
END_TEST

/* A study of straight wings alone would promise little. */
START_TEST (the_study_holds_every_kind_of_wing)
{
  int notched = 0, elliptical = 0, swept = 0, raised = 0, groups[study_groups] = { 0 };

  for (size_t w = 0; w < study_wing_count; w++)
    {
      notched += strstr (study_wings[w].name, "notch") != NULL;
      elliptical += study_wings[w].corner_count == 0;
      swept += abs (study_wings[w].sweep_deg) > 8;
      raised += study_wings[w].dihedral > 0.3;
      for (size_t c = 0; c < study_company_count; c++)
        groups[study_group (&study_wings[w], &study_companies[c])]++;
    }
  ck_assert_int_ge (notched, 3);
  ck_assert_int_ge (elliptical, 2);
  ck_assert_int_ge (swept, 4);
  ck_assert_int_ge (raised, 1);
  for (int i = 0; i < study_groups; i++)
    ck_assert_int_gt (groups[i], 0);
}
END_TEST

int
main (void)
{
  const int cases = (int) (study_wing_count * study_company_count);
  TCase *tests = tcase_create ("lattice limits");

  tcase_add_loop_test (tests, default_panels_put_the_neutral_point_where_finer_ones_tend, 0, cases);
  tcase_add_test (tests, the_default_panels_are_20_by_6_and_a_tails_12_by_4);
  tcase_add_test (tests, the_study_holds_every_kind_of_wing);
  return run_suite (suite_create ("lattice limits"), tests);
}
