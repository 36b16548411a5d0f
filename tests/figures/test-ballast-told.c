#include <check.h>
#include <math.h>
#include <string.h>
#include "document/changes.h"
#include "figures/advice.h"
#include "figures/ballast-told.h"
#include "figures/ballast-worst.h"
#include "figures/report.h"
#include "figures/report-ballast.h"
#include "support/aeroplanes.h"
#include "support/figures-once.h"
#include "support/run-suite.h"

static const Units metric = { LENGTH_MM, MASS_G };

/* The racer with so many grams over its tailplane: the battery's rail does not reach. */
static Aeroplane *
heavy_tail (double grams)
{
  Part *lead = part_new ("trim", "other");

  lead->mass = grams;
  lead->x = 400;
  return with_piece (racer (), lead);
}

static Aeroplane *
told_added (const Aeroplane *aeroplane, const BallastTold *told, double battery_x)
{
  g_autoptr (Aeroplane) moved = change_part_place (aeroplane, "battery", battery_x, 0, 0);
  Part *lead = part_new ("lead", "ballast");

  lead->mass = told->mass_g;
  lead->x = told->x_mm;
  return aeroplane_with_added (moved, &lead->piece);
}

/* Put where it is told it does what it is told for: that is the balance point of all, Σ m x / Σ m. */
START_TEST (ballast_as_told_beside_the_part_at_its_rails_end_brings_the_balance_to_the_place_advised)
{
  g_autoptr (Aeroplane) aeroplane = heavy_tail (20);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const Solution *solution = figures_solution (figures, "battery");
  const BallastTold told = ballast_told_of (figures, solution);
  g_autoptr (Aeroplane) leaded = told_added (aeroplane, &told, solution->part->rail_from);
  g_autoptr (Figures) after = figures_once (leaded);

  ck_assert (told.has_place && !solution->reachable);
  ck_assert_double_gt (told.mass_g, solution->ballast_g);
  ck_assert_double_gt (told.sigma_g, 0);
  ck_assert_double_eq_tol (after->mass.x_mm, figures->balance.advised_x_mm, 1e-6);
}
END_TEST

/* FAA-H-8083-1, Weight and Balance Handbook, chapter on adding or removing weight: the same sum for all that stands as it does. */
START_TEST (with_nothing_moved_what_is_told_stands_first_in_the_table_of_places)
{
  g_autoptr (Aeroplane) aeroplane = heavy_tail (20);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const BallastTold told = ballast_told_of (figures, NULL);
  g_autoptr (GArray) places = ballast_places (aeroplane, ballast_need_of (figures));
  g_autofree char *first = ballast_place_phrase (&g_array_index (places, BallastPlace, 0)), *said = ballast_told_phrase (&told);

  ck_assert_double_eq (told.mass_g, g_array_index (places, BallastPlace, 0).mass_g);
  ck_assert_str_eq (said, first);
}
END_TEST

START_TEST (headline_and_table_of_what_slides_tell_the_same_grams_at_the_same_place)
{
  g_autoptr (Aeroplane) aeroplane = heavy_tail (20);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const BallastTold told = ballast_told_of (figures, figures_solution (figures, "battery"));
  g_autofree char *mass = units_mass (metric, told.mass_g), *place = ballast_told_phrase (&told), *report = report_text (figures, metric);
  g_autofree char *in_headline = g_strdup_printf ("too short: %s %s as well.", mass, place);
  g_autofree char *in_table = g_strdup_printf ("beyond; %s ± ", mass);
  Advice *advice = advice_new (figures, metric);

  ck_assert_msg (strstr (advice->headline, in_headline), "%s", advice->headline);
  const char *row = strstr (report, in_table);
  ck_assert_ptr_nonnull (row);
  ck_assert_ptr_nonnull (strstr (row, place));
  advice_free (advice);
}
END_TEST

START_TEST (where_the_rail_reaches_none_is_told)
{
  g_autoptr (Aeroplane) aeroplane = racer ();
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const BallastTold told = ballast_told_of (figures, figures_solution (figures, "battery"));

  ck_assert_double_eq (told.mass_g, 0);
  ck_assert (!told.has_place);
}
END_TEST

/* So much lead goes into no body: it is told of at the very end, as if outside. */
START_TEST (what_has_no_room_anywhere_is_told_of_at_the_nose)
{
  g_autoptr (Aeroplane) aeroplane = heavy_tail (4000);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const BallastTold told = ballast_told_of (figures, NULL);
  g_autofree char *said = ballast_told_phrase (&told);

  ck_assert (!told.has_place);
  ck_assert_double_eq (told.x_mm, figures->nose_x_mm);
  ck_assert_str_eq (said, "at the nose");
}
END_TEST

/* With the battery foremost and such a lump in place the balance point lies ahead of the place advised by what two deviations of all without
 * the lump take from it: x_t − 2σ W / (W + n). A normal law has 97.7 % below two deviations. */
START_TEST (nose_weight_in_the_worst_case_makes_up_for_two_deviations)
{
  g_autoptr (Aeroplane) aeroplane = heavy_tail (20.0 * _i);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const BallastWorst worst = ballast_worst_of (figures);
  const double sigma = figures->balance.static_margin_sigma_percent / 100 * figures->reference->planform.mac;
  g_autoptr (Aeroplane) leaded = told_added (aeroplane, &worst.told, figures_solution (figures, "battery")->part->rail_from);
  g_autoptr (Figures) after = figures_once (leaded);
  g_autofree char *text = ballast_worst_text (&worst, metric), *mass = units_mass (metric, worst.told.mass_g);

  ck_assert_double_eq_tol (worst.further_mm, 2 * sigma, 1e-9);
  ck_assert (worst.told.has_place && worst.told.mass_g > 0);
  ck_assert_double_eq_tol (after->mass.x_mm, figures->balance.advised_x_mm - 2 * sigma * figures->mass.total_g / after->mass.total_g, 1e-6);
  ck_assert_ptr_nonnull (strstr (text, mass));
  ck_assert_ptr_nonnull (strstr (text, "foremost on its rail"));
}
END_TEST

START_TEST (a_heavy_nose_needs_no_weight_there_in_the_worst_case)
{
  Part *lump = part_new ("lump", "other");

  lump->mass = 60;
  lump->x = 20;
  g_autoptr (Aeroplane) aeroplane = with_piece (racer (), lump);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const BallastWorst worst = ballast_worst_of (figures);
  g_autofree char *text = ballast_worst_text (&worst, metric);

  ck_assert_double_eq (worst.told.mass_g, 0);
  ck_assert_ptr_nonnull (strstr (text, "no nose weight is needed"));
}
END_TEST

START_TEST (without_a_balance_point_no_worst_case_is_told)
{
  g_autoptr (Aeroplane) aeroplane = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (100, 600, 100));
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const BallastWorst worst = ballast_worst_of (figures);

  ck_assert_ptr_null (ballast_worst_text (&worst, metric));
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("ballast told");

  tcase_add_test (tests, ballast_as_told_beside_the_part_at_its_rails_end_brings_the_balance_to_the_place_advised);
  tcase_add_test (tests, with_nothing_moved_what_is_told_stands_first_in_the_table_of_places);
  tcase_add_test (tests, headline_and_table_of_what_slides_tell_the_same_grams_at_the_same_place);
  tcase_add_test (tests, where_the_rail_reaches_none_is_told);
  tcase_add_test (tests, what_has_no_room_anywhere_is_told_of_at_the_nose);
  tcase_add_loop_test (tests, nose_weight_in_the_worst_case_makes_up_for_two_deviations, 0, 3);
  tcase_add_test (tests, a_heavy_nose_needs_no_weight_there_in_the_worst_case);
  tcase_add_test (tests, without_a_balance_point_no_worst_case_is_told);
  return run_suite (suite_create ("ballast told"), tests);
}
