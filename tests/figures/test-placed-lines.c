#include <check.h>
#include <math.h>
#include "figures/figures.h"
#include "structure-lines.h"
#include "support/aeroplanes.h"
#include "support/figures-once.h"
#include "support/run-suite.h"
#include "support/shapes.h"

/* Where lines with places of their own pull a structure's centre: what is weighed, and what the whole is typed to weigh. A wing of
 * 640 × 100 mm, its leading edge at 30 mm, so that what is spread over it has its centre at 80. */

/* The lever, by hand: 19.2 g of sheet at 80 mm, 6.4 g that were weighed at 40 mm; of 40 g in all the sheet has 33.6. */
START_TEST (a_weighed_line_keeps_its_weight_where_the_whole_is_typed)
{
  StructureItem items[] = { by_area ("Sheet", TRACED_PLAN, 2, 150), weighing ("Blocks", 6.4) };
  Structure *structure;

  items[1].x = 40;
  structure = made_of ("wing", items, 2);
  structure->mass = 40;
  g_autoptr (Aeroplane) aeroplane = wing_of (structure);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  ck_assert_double_eq_tol (figures->mass.total_g, 40, 1e-9);
  ck_assert_double_eq_tol (figures->mass.x_mm, (33.6 * 80 + 6.4 * 40) / 40, 1e-9);
}
END_TEST

/* By hand: 10 g at 40 mm that nobody weighed become 11.2 with the usual 12 % (common practice, no source), 5 g weighed at 130 mm stay. */
START_TEST (the_usual_excess_is_on_a_placed_line_that_is_not_weighed_and_on_no_other)
{
  StructureItem items[] = { by_area ("Sheet", TRACED_PLAN, 2, 150), structure_item ("Firewall"), weighing ("Blocks", 5) };
  Structure *structure;

  items[1].mass = 10;
  items[1].x = 40;
  items[2].x = 130;
  structure = made_of ("wing", items, 3);
  structure->excess = 0.12;
  g_autoptr (Aeroplane) aeroplane = wing_of (structure);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  ck_assert_double_eq_tol (figures->mass.total_g, 1.12 * 29.2 + 5, 1e-9);
  ck_assert_double_eq_tol (figures->mass.x_mm, (1.12 * 19.2 * 80 + 11.2 * 40 + 5 * 130) / (1.12 * 29.2 + 5), 1e-9);
}
END_TEST

/* 4 g and 12 g from the scale, 8 g typed for both: they are told apart one to three, nothing is left to be spread. */
START_TEST (weighed_lines_over_the_typed_whole_are_taken_to_be_less_alike)
{
  StructureItem items[] = { by_area ("Sheet", TRACED_PLAN, 2, 150), weighing ("Nose", 4), weighing ("Post", 12) };
  Structure *structure;

  items[1].x = 40;
  items[2].x = 120;
  structure = made_of ("wing", items, 3);
  structure->mass = 8;
  g_autoptr (Aeroplane) aeroplane = wing_of (structure);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  ck_assert_double_eq_tol (figures->mass.x_mm, (40 + 3 * 120) / 4.0, 1e-9);
}
END_TEST

/* A thin rod about its middle, m l² / 12 (elementary mechanics), all of it on one line across: none in pitch. */
START_TEST (a_spar_at_a_place_of_its_own_still_lies_along_the_span)
{
  StructureItem items[] = { weighing ("Spar", 12) };

  items[0].of = TRACED_SPAN;
  items[0].x = 60;
  g_autoptr (Aeroplane) aeroplane = wing_of (made_of ("wing", items, 1));
  g_autoptr (Figures) figures = figures_once (aeroplane);
  ck_assert_double_eq_tol (figures->mass.x_mm, 60, 1e-9);
  ck_assert_double_eq_tol (figures->mass.inertia_roll_kgm2, 0.012 * 0.64 * 0.64 / 12, 1e-12);
  ck_assert_double_eq_tol (figures->mass.inertia_yaw_kgm2, 0.012 * 0.64 * 0.64 / 12, 1e-12);
  ck_assert_double_eq_tol (figures->mass.inertia_pitch_kgm2, 0, 1e-12);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("placed lines");

  tcase_add_test (tests, a_weighed_line_keeps_its_weight_where_the_whole_is_typed);
  tcase_add_test (tests, the_usual_excess_is_on_a_placed_line_that_is_not_weighed_and_on_no_other);
  tcase_add_test (tests, weighed_lines_over_the_typed_whole_are_taken_to_be_less_alike);
  tcase_add_test (tests, a_spar_at_a_place_of_its_own_still_lies_along_the_span);
  return run_suite (suite_create ("figures placed lines"), tests);
}
