#include <check.h>
#include <math.h>
#include "figures/usual-fit.h"
#include "figures/usual-lines.h"
#include "support/aeroplanes.h"
#include "support/figures-once.h"
#include "support/run-suite.h"
#include "support/shapes.h"

/* The lines that are laid down at once, against the area rules of the trade, all of them common practice, no source: a covered open frame 3
 * to 4.5 g/dm², a sheet tail 2.3 to 3.2. */

static Aeroplane *
laid (Aeroplane *takes, const char *of)
{
  g_autoptr (Aeroplane) before = takes;
  Aeroplane *after = usual_lines_laid (before, of);

  ck_assert_ptr_nonnull (after);
  return after;
}

static void
assert_loading (const Aeroplane *aeroplane, double least, double most)
{
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const double loading = figures->structures[0].mass_g / (figures->surfaces[0].area_mm2 * 1e-4);

  ck_assert_msg (loading >= least && loading <= most, "%g g/dm²", loading);
  for (size_t i = 0; i < figures->structures[0].structure->item_count; i++)
    ck_assert_double_finite (g_array_index (figures->structures[0].items_g, double, i));
}

/* The worked racer's wing: 680 mm, 6.52 dm². With the usual excess, 12 % more than the rule's bounds. */
START_TEST (a_wing_of_open_frame_weighs_as_the_rule_says)
{
  g_autoptr (Aeroplane) bare = laid (with_surface (aeroplane_new (), "wing", ROLE_WING, ellipse_from (110, 340, 50, 72)), "wing");
  g_autoptr (Figures) figures = figures_once (bare);

  assert_loading (bare, 3, 4.5);
  ck_assert_double_eq_tol (figures->structures[0].mass_g - figures->structures[0].excess_g, 21, 2);
}
END_TEST

START_TEST (ribs_that_have_their_stations_are_reckoned_by_them)
{
  Surface *wing = surface_new ("wing", ROLE_WING, ellipse_from (110, 340, 50, 72));

  wing->ribs = g_new0 (NamedPlace, 12);
  for (wing->rib_count = 0; wing->rib_count < 12; wing->rib_count++)
    wing->ribs[wing->rib_count] = (NamedPlace) { g_strdup_printf ("R%zu", wing->rib_count + 1), 30.0 * wing->rib_count };
  g_autoptr (Aeroplane) aeroplane = laid (with_piece (aeroplane_new (), wing), "wing");
  assert_loading (aeroplane, 3, 4.5);
  ck_assert_int_eq (aeroplane_structure (aeroplane, 0)->items[0].of, TRACED_RIBS);
}
END_TEST

START_TEST (a_sheet_tail_weighs_as_the_rule_says)
{
  g_autoptr (Aeroplane) aeroplane = laid (with_surface (aeroplane_new (), "tail", ROLE_TAILPLANE, rectangle (400, 210, 50)), "tail");

  assert_loading (aeroplane, 2.3, 4);      /* hinges and horn weigh alike on so small a one */
}
END_TEST

/* The worked racer's body: 490 mm, largest girth 200 mm, 38 g of which cowl and canopy are 7.5; a third either way. */
START_TEST (a_body_weighs_as_the_worked_one_does)
{
  Body *body = body_new ("body");

  body->outline = polygon_from ((Point[]) { { 0, 18 }, { 130, 32 }, { 490, 4 } }, 3);
  g_autoptr (Aeroplane) aeroplane = laid (with_piece (aeroplane_new (), body), "body");
  g_autoptr (Figures) figures = figures_once (aeroplane);
  ck_assert_double_eq_tol (figures->structures[0].mass_g - figures->structures[0].excess_g, 30.5, 5);
}
END_TEST

START_TEST (a_mass_that_is_typed_stays_and_what_was_laid_down_before_goes)
{
  Aeroplane *made = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (110, 640, 100));
  g_autoptr (Aeroplane) once = laid (with_structure (made, "wood", "wing", 24.3), "wing");
  g_autoptr (Aeroplane) twice = usual_lines_laid (once, "wing");

  ck_assert_double_eq (aeroplane_structure (once, 0)->mass, 24.3);
  ck_assert_uint_gt (aeroplane_structure (once, 0)->item_count, 5);
  ck_assert_uint_eq (aeroplane_structure (twice, 0)->item_count, aeroplane_structure (once, 0)->item_count);
  ck_assert_uint_eq (aeroplane_count (twice, PIECE_STRUCTURE), 1);
}
END_TEST

START_TEST (an_all_up_mass_leaves_alone_what_lines_weigh_already)
{
  g_autoptr (Aeroplane) aeroplane = laid (with_surface (aeroplane_new (), "wing", ROLE_WING, ellipse_from (110, 340, 50, 72)), "wing");
  g_autoptr (Figures) figures = figures_once (aeroplane);

  ck_assert_ptr_null (usual_structures (aeroplane, 200));
  ck_assert_double_eq_tol (usual_all_up (aeroplane), figures->mass.total_g / 0.48, 1e-6);
}
END_TEST

START_TEST (nothing_is_laid_down_for_what_is_not_drawn)
{
  g_autoptr (Aeroplane) aeroplane = with_piece (aeroplane_new (), body_new ("body"));

  ck_assert_ptr_null (usual_lines_laid (aeroplane, "body"));
  ck_assert_ptr_null (usual_lines_laid (aeroplane, "wing"));
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("usual lines");

  tcase_add_test (tests, a_wing_of_open_frame_weighs_as_the_rule_says);
  tcase_add_test (tests, ribs_that_have_their_stations_are_reckoned_by_them);
  tcase_add_test (tests, a_sheet_tail_weighs_as_the_rule_says);
  tcase_add_test (tests, a_body_weighs_as_the_worked_one_does);
  tcase_add_test (tests, a_mass_that_is_typed_stays_and_what_was_laid_down_before_goes);
  tcase_add_test (tests, an_all_up_mass_leaves_alone_what_lines_weigh_already);
  tcase_add_test (tests, nothing_is_laid_down_for_what_is_not_drawn);
  return run_suite (suite_create ("figures usual lines"), tests);
}
