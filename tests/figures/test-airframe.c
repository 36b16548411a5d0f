#include <check.h>
#include <math.h>
#include <string.h>
#include "document/reader.h"
#include "document/writer.h"
#include "figures/report.h"
#include "support/aeroplanes.h"
#include "support/figures-once.h"
#include "support/run-suite.h"

/* The bare airframe on the scale. What belongs to it, and how well a kitchen scale and fingers tell, is common practice, no source. */

static const Units metric = { LENGTH_MM, MASS_G };

static Structure *
structure_at (const char *id, double mass, double sigma, double x, double x_sigma)
{
  Structure *structure = structure_new (id, NULL, mass);

  structure->mass_sigma = sigma;
  structure->x = x, structure->y = structure->z = 0;
  structure->x_sigma = x_sigma;
  return structure;
}

/* 40 ± 4 g at 100 mm, 20 ± 2 g at 400 mm, in places known to 0.1 mm; 30 g of battery at 50 mm. */
static Aeroplane *
built (void)
{
  Aeroplane *made = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (100, 600, 100));

  made = with_piece (made, structure_at ("front", 40, 4, 100, 0.1));
  made = with_piece (made, structure_at ("rear", 20, 2, 400, 0.1));
  return with_part (made, "pack", 30, 50);
}

static Aeroplane *
on_scale (Aeroplane *takes, double mass, double sigma, double x, double x_sigma)
{
  AeroplaneTraits traits = aeroplane_traits (takes);
  Aeroplane *made;

  traits.airframe = mass;
  traits.airframe_sigma = sigma;
  traits.airframe_balanced = !isnan (x);
  traits.airframe_x = x;
  traits.airframe_x_sigma = x_sigma;
  made = aeroplane_with_traits (takes, traits);
  aeroplane_unref (takes);
  return made;
}

static const LoadFigures *
load (const Figures *figures, const char *id)
{
  for (size_t i = 0; i < figures->load_count; i++)
    if (strcmp (figures->loads[i].piece->id, id) == 0)
      return &figures->loads[i];
  ck_abort_msg ("nothing is called %s", id);
}

/* 66 g at 190 mm are 46.2 and 19.8 g; with 30 g at 50 mm they balance at (66 × 190 + 30 × 50) / 96. */
START_TEST (a_bare_airframe_weighed_and_balanced_corrects_mass_and_balance_of_the_whole)
{
  g_autoptr (Aeroplane) aeroplane = on_scale (built (), 66, 0.01, 190, 0.01);
  g_autoptr (Figures) figures = figures_once (aeroplane);

  ck_assert (figures->airframe.weighed && figures->airframe.balanced);
  ck_assert_double_eq_tol (load (figures, "front")->mass_g, 46.2, 0.02);
  ck_assert_double_eq_tol (load (figures, "rear")->mass_g, 19.8, 0.02);
  ck_assert_double_eq (load (figures, "pack")->mass_g, 30);
  ck_assert_double_eq_tol (figures->mass.total_g, 96, 0.02);
  ck_assert_double_eq_tol (figures->mass.x_mm, (66 * 190 + 30 * 50) / 96.0, 0.05);
}
END_TEST

START_TEST (the_balance_point_is_known_better_then)
{
  g_autoptr (Aeroplane) reckoned = built (), weighed = on_scale (built (), 61, 0.5, 201, 1), poor = on_scale (built (), 61, 0.5, NAN, 0);
  g_autoptr (Figures) before = figures_once (reckoned), after = figures_once (weighed), mass_alone = figures_once (poor);

  ck_assert_double_lt (after->mass.x_sigma_mm, before->mass.x_sigma_mm);
  ck_assert_double_lt (after->mass.x_sigma_mm, mass_alone->mass.x_sigma_mm);
  ck_assert_double_lt (after->mass.total_sigma_g, before->mass.total_sigma_g);
}
END_TEST

START_TEST (what_is_still_to_come_was_on_no_scale)
{
  Aeroplane *made = built ();
  Part *canopy = part_new ("canopy", "canopy");

  canopy->mass = 5, canopy->x = 150, canopy->to_come = true;
  g_autoptr (Aeroplane) aeroplane = on_scale (with_piece (made, canopy), 66, 0.01, NAN, 0);
  g_autoptr (Figures) figures = figures_once (aeroplane);

  ck_assert_double_eq (load (figures, "canopy")->mass_g, 5);
  ck_assert_double_eq_tol (figures->mass.total_g, 66 + 5 + 30, 0.02);
}
END_TEST

START_TEST (a_weighing_that_structures_cannot_explain_is_told)
{
  g_autoptr (Aeroplane) sound = on_scale (built (), 64, 0.5, 200, 2), wrong = on_scale (built (), 90, 0.5, 300, 2);
  g_autoptr (Figures) fine = figures_once (sound), bad = figures_once (wrong);

  ck_assert_ptr_null (note_with (fine, "bare airframe"));
  ck_assert_ptr_nonnull (note_with (bad, "weighs more than its structures can come to"));
  ck_assert_ptr_nonnull (note_with (bad, "balances further aft than its structures can"));
}
END_TEST

START_TEST (a_weighing_without_any_structure_to_share_it_says_so)
{
  g_autoptr (Aeroplane) made = on_scale (with_part (with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (100, 600, 100)), "pack", 30, 50),
                                         66, 0.5, 190, 1);
  g_autoptr (Figures) figures = figures_once (made);

  ck_assert (!figures->airframe.weighed);
  ck_assert_ptr_nonnull (note_with (figures, "does not count for the balance yet"));
}
END_TEST

START_TEST (undoing_the_weighing_brings_back_what_was_reckoned)
{
  g_autoptr (Aeroplane) reckoned = built (), weighed = on_scale (built (), 66, 0.5, 190, 1);
  FiguresCache *cache = figures_cache_new ();
  g_autoptr (Figures) first = figures_of (cache, reckoned), then = figures_of (cache, weighed), again = figures_of (cache, reckoned);

  ck_assert_double_ne (then->mass.x_mm, first->mass.x_mm);
  ck_assert_double_eq (again->mass.x_mm, first->mass.x_mm);
  ck_assert_double_eq (again->mass.total_g, first->mass.total_g);
  figures_cache_free (cache);
}
END_TEST

START_TEST (report_and_file_keep_where_it_balances)
{
  g_autoptr (Aeroplane) aeroplane = on_scale (built (), 66, 0.5, 190, 1);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  g_autofree char *text = report_text (figures, metric), *file = writer_text (aeroplane, NULL);
  g_autoptr (Aeroplane) read = reader_read_data (file, strlen (file), "file", NULL, NULL);

  ck_assert_ptr_nonnull (strstr (text, "aft of the datum, as found"));
  ck_assert_ptr_nonnull (strstr (file, "airframe-x=\"190\""));
  ck_assert (aeroplane_equal (aeroplane, read));
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("airframe");

  tcase_add_test (tests, a_bare_airframe_weighed_and_balanced_corrects_mass_and_balance_of_the_whole);
  tcase_add_test (tests, the_balance_point_is_known_better_then);
  tcase_add_test (tests, what_is_still_to_come_was_on_no_scale);
  tcase_add_test (tests, a_weighing_that_structures_cannot_explain_is_told);
  tcase_add_test (tests, a_weighing_without_any_structure_to_share_it_says_so);
  tcase_add_test (tests, undoing_the_weighing_brings_back_what_was_reckoned);
  tcase_add_test (tests, report_and_file_keep_where_it_balances);
  return run_suite (suite_create ("airframe"), tests);
}
