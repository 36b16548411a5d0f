#include <check.h>
#include <math.h>
#include <string.h>
#include "figures/budget.h"
#include "figures/report.h"
#include "support/aeroplanes.h"
#include "support/figures-once.h"
#include "support/run-suite.h"

/* What is left for the gear. Usual loading, the airframe's share and what belongs to it are common practice, no source. */

static const Units metric = { LENGTH_MM, MASS_G };

/* 600 by 100 mm: 6 dm². */
static Aeroplane *
plank (void)
{
  return with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (100, 600, 100));
}

static Aeroplane *
wanting (Aeroplane *takes, double all_up, double loading, double airframe)
{
  AeroplaneTraits traits = aeroplane_traits (takes);
  Aeroplane *made;

  traits.target.all_up = all_up;
  traits.target.loading = loading;
  traits.airframe = airframe;
  made = aeroplane_with_traits (takes, traits);
  aeroplane_unref (takes);
  return made;
}

/* 60 g of structure known to 6, 5 of canopy known to 1; 40 g of gear known to 3. */
static Aeroplane *
built (void)
{
  Structure *structure = structure_new ("wing-structure", "wing", 60);
  Part *canopy = part_new ("canopy", "canopy"), *pack = part_new ("pack", "battery");

  structure->mass_sigma = 6;
  canopy->mass = 5, canopy->mass_sigma = 1;
  pack->mass = 40, pack->mass_sigma = 3;
  return with_piece (with_piece (with_piece (plank (), structure), canopy), pack);
}

static Budget
budget_in (Aeroplane *takes)
{
  g_autoptr (Aeroplane) aeroplane = takes;
  g_autoptr (Figures) figures = figures_once (aeroplane);
  Budget budget;

  ck_assert (budget_of (figures, &budget));
  return budget;
}

START_TEST (the_airframe_and_what_is_on_it_is_taken_off_what_is_wanted)
{
  const Budget budget = budget_in (wanting (built (), 120, 0, 0));

  ck_assert_int_eq (budget.airframe_by, AIRFRAME_RECKONED);
  ck_assert_double_eq_tol (budget.airframe_g, 65, 1e-9);
  ck_assert_double_eq_tol (budget.airframe_sigma_g, sqrt (37), 1e-9);
  ck_assert_double_eq_tol (budget.left_g, 55, 1e-9);
  ck_assert_double_eq_tol (budget.gear_g, 40, 1e-9);
  ck_assert_double_eq_tol (budget.gear_sigma_g, 3, 1e-9);
  ck_assert_double_eq_tol (budget.over_g, -15, 1e-9);
}
END_TEST

START_TEST (a_loading_wanted_is_a_mass_on_the_wing_s_area)
{
  const Budget budget = budget_in (wanting (built (), 0, 25, 0));

  ck_assert_int_eq (budget.wanted_by, WANTED_LOADING);
  ck_assert_double_eq_tol (budget.wanted_g, 150, 1e-6);
}
END_TEST

/* 18.5 + 0.032 × 100 = 21.7 g/dm²; within 15 to 22 at 500 mm and 18 to 28 at 650. */
START_TEST (where_nothing_is_typed_the_usual_loading_for_the_span_is_proposed)
{
  const Budget budget = budget_in (built ());

  ck_assert_int_eq (budget.wanted_by, WANTED_USUAL);
  ck_assert_double_eq_tol (budget.loading_g_dm2, 21.7, 1e-6);
}
END_TEST

START_TEST (before_anything_is_built_the_airframe_takes_its_usual_share)
{
  const Budget budget = budget_in (wanting (plank (), 100, 0, 0));

  ck_assert_int_eq (budget.airframe_by, AIRFRAME_USUAL);
  ck_assert_double_eq_tol (budget.left_g, 52, 1e-9);
  ck_assert_double_eq_tol (budget.left_sigma_g, 12, 1e-9);
}
END_TEST

START_TEST (an_airframe_on_the_scale_counts_and_is_held_against_what_was_reckoned)
{
  const Budget budget = budget_in (wanting (built (), 120, 0, 71));
  g_autofree char *text = budget_text (&budget, metric);

  ck_assert_int_eq (budget.airframe_by, AIRFRAME_WEIGHED);
  ck_assert_double_eq_tol (budget.left_g, 49, 1e-9);
  ck_assert_double_eq_tol (budget.left_sigma_g, 0.5, 1e-9);
  ck_assert_ptr_nonnull (strstr (text, "It weighs 6\u00a0g more than its structures"));
}
END_TEST

/* √(6² + 1² + 3²) = 6.8. */
START_TEST (it_is_said_both_ways)
{
  static const struct { double all_up; const char *words; } rows[] = {
    { 120, "leaves 55\u00a0g for the gear; what is aboard weighs 40\u00a0g, 15\u00a0g ± 6.8 less." },
    { 95, "leaves 30\u00a0g for the gear; what is aboard weighs 40\u00a0g, 10\u00a0g ± 6.8 too much." },
    { 105, "just what is aboard." }, { 105.8, "just what is aboard." }, { 60, "leaves nothing for the gear" },
  };
  const Budget budget = budget_in (wanting (built (), rows[_i].all_up, 0, 0));
  g_autofree char *text = budget_text (&budget, metric);

  ck_assert_msg (strstr (text, rows[_i].words), "%s", text);
}
END_TEST

START_TEST (report_and_json_tell_it_and_without_a_wing_nobody_does)
{
  g_autoptr (Aeroplane) made = wanting (built (), 120, 0, 0), bare = aeroplane_new ();
  g_autoptr (Figures) figures = figures_once (made), none = figures_once (bare);
  g_autofree char *text = report_text (figures, metric), *json = report_json (figures), *silent = report_json (none);

  ck_assert_ptr_nonnull (strstr (text, "What is left for the gear"));
  ck_assert_ptr_nonnull (strstr (json, "\"left_g\": 55"));
  ck_assert_ptr_null (strstr (silent, "budget"));
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("budget");

  tcase_add_test (tests, the_airframe_and_what_is_on_it_is_taken_off_what_is_wanted);
  tcase_add_test (tests, a_loading_wanted_is_a_mass_on_the_wing_s_area);
  tcase_add_test (tests, where_nothing_is_typed_the_usual_loading_for_the_span_is_proposed);
  tcase_add_test (tests, before_anything_is_built_the_airframe_takes_its_usual_share);
  tcase_add_test (tests, an_airframe_on_the_scale_counts_and_is_held_against_what_was_reckoned);
  tcase_add_loop_test (tests, it_is_said_both_ways, 0, 5);
  tcase_add_test (tests, report_and_json_tell_it_and_without_a_wing_nobody_does);
  return run_suite (suite_create ("budget"), tests);
}
