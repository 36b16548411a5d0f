#include <check.h>
#include <math.h>
#include "figures/figures.h"
#include "support/aeroplanes.h"
#include "support/figures-once.h"
#include "support/run-suite.h"
#include "support/shapes.h"

/* Textbook mechanics, an elliptic lamina of 38 g with semi-axes 320 and 60 mm: m b²/4 in roll, m a²/4 in pitch, their sum in yaw. */
START_TEST (a_structure_spread_over_an_elliptic_wing_is_an_elliptic_lamina)
{
  Aeroplane *made = with_surface (aeroplane_new (), "wing", ROLE_WING, ellipse_from (37, 320, 60, 60));
  g_autoptr (Aeroplane) aeroplane = with_structure (made, "wood", "wing", 38);
  g_autoptr (Figures) figures = figures_once (aeroplane);

  ck_assert_double_eq_tol (figures->mass.total_g, 38, 1e-12);
  ck_assert_double_eq_tol (figures->mass.x_mm, 97, 1e-6);
  ck_assert_double_eq_tol (figures->mass.inertia_roll_kgm2, 9.728e-4, 1e-9 * 9.728e-4);
  ck_assert_double_eq_tol (figures->mass.inertia_pitch_kgm2, 3.42e-5, 1e-9 * 3.42e-5);
  ck_assert_double_eq_tol (figures->mass.inertia_yaw_kgm2, 1.007e-3, 1e-9 * 1.007e-3);
}
END_TEST

/* Centroid of the area between two quarter ellipses: 4 (b − a) / 3π aft of the widest line. */
START_TEST (a_structure_without_a_place_lies_at_the_areas_centroid)
{
  Aeroplane *made = with_surface (aeroplane_new (), "wing", ROLE_WING, ellipse_from (112, 320, 45, 85));
  g_autoptr (Aeroplane) aeroplane = with_structure (made, "wood", "wing", 24.3);
  g_autoptr (Figures) figures = figures_once (aeroplane);

  ck_assert_double_eq_tol (figures->mass.x_mm, 157 + 4 * (85 - 45) / (3 * M_PI), 1e-7);
  ck_assert_double_eq_tol (figures->mass.y_mm, 0, 1e-12);
}
END_TEST

START_TEST (centre_counts_along_the_mean_chord)
{
  Structure *wood = structure_new ("wood", "wing", 24.3);
  Aeroplane *made = with_surface (aeroplane_new (), "wing", ROLE_WING, ellipse_from (112, 320, 45, 85));
  const double mac = 8 * 130 / (3 * M_PI), leading_edge = 112 + 45 * (1 - 8 / (3 * M_PI));

  wood->centre = 0.42;
  g_autoptr (Aeroplane) aeroplane = with_piece (made, wood);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  ck_assert_double_eq_tol (figures->mass.x_mm, leading_edge + 0.42 * mac, 1e-7);
}
END_TEST

/* A wedge 12 mm wide at the nose and 36 at the tail: the centroid of a trapezium, L (a + 2b) / 3 (a + b). */
START_TEST (a_bodys_mass_lies_at_the_centroid_of_its_area_from_above)
{
  Body *body = body_new ("body");

  body->outline = polygon_from ((Point[]) { { 30, 6 }, { 330, 18 } }, 2);      /* blunt at both ends, closed along the axis */
  g_autoptr (Aeroplane) aeroplane = with_structure (with_piece (aeroplane_new (), body), "shell", "body", 33);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  ck_assert_double_eq_tol (figures->mass.x_mm, 30 + 300 * (6 + 2 * 18) / (3.0 * (6 + 18)), 1e-9);
}
END_TEST

/* Textbook mechanics, a thin rectangle: m l²/12 along, m w²/12 across, their sum about the upright axis. */
START_TEST (a_bodys_mass_turns_as_a_thin_sheet)
{
  Body *body = body_new ("body");

  body->outline = polygon_from ((Point[]) { { 30, 27 }, { 330, 27 } }, 2);
  g_autoptr (Aeroplane) aeroplane = with_structure (with_piece (aeroplane_new (), body), "shell", "body", 33);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  ck_assert_double_eq_tol (figures->mass.inertia_pitch_kgm2, 0.033 * 0.3 * 0.3 / 12, 1e-12);
  ck_assert_double_eq_tol (figures->mass.inertia_roll_kgm2, 0.033 * 0.054 * 0.054 / 12, 1e-12);
  ck_assert_double_eq_tol (figures->mass.inertia_yaw_kgm2, 0.033 * (0.3 * 0.3 + 0.054 * 0.054) / 12, 1e-12);
}
END_TEST

START_TEST (a_fins_mass_stands_upright)
{
  Surface *fin = surface_new ("fin", ROLE_FIN, taper_from ((double[]) { 0, 70 }, (double[]) { 400, 400 }, (double[]) { 60, 60 }, 2));

  fin->z = 11;
  g_autoptr (Aeroplane) aeroplane = with_structure (with_piece (aeroplane_new (), fin), "wood", "fin", 2);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  ck_assert_double_eq_tol (figures->mass.z_mm, 11 + 35, 1e-9);
  ck_assert_double_eq_tol (figures->mass.inertia_roll_kgm2, 0.002 * 0.07 * 0.07 / 12, 1e-14);
  ck_assert_double_eq_tol (figures->mass.inertia_yaw_kgm2, 0.002 * 0.06 * 0.06 / 12, 1e-14);
  ck_assert_double_eq_tol (figures->mass.inertia_pitch_kgm2, 0.002 * (0.07 * 0.07 + 0.06 * 0.06) / 12, 1e-14);
}
END_TEST

START_TEST (a_body_seen_only_from_the_side_spreads_its_mass_over_that_area)
{
  Body *body = body_new ("body");

  body->side_outline = polygon_from ((Point[]) { { 20, -14 }, { 20, 10 }, { 260, 10 }, { 260, -14 }, { 20, -14 } }, 5);
  g_autoptr (Aeroplane) aeroplane = with_structure (with_piece (aeroplane_new (), body), "shell", "body", 33);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  ck_assert_double_eq_tol (figures->mass.x_mm, 140, 1e-9);
  ck_assert_double_eq_tol (figures->mass.z_mm, -2, 1e-9);
}
END_TEST

/* The file's outlines close from last to first: what is left out of a rectangle's line is drawn by closing it. */
START_TEST (a_side_view_that_closes_by_a_straight_line_holds_the_same_mass)
{
  Body *body = body_new ("body");

  body->side_outline = polygon_from ((Point[]) { { 20, -14 }, { 20, 10 }, { 260, 10 }, { 260, -14 } }, 4);
  g_autoptr (Aeroplane) aeroplane = with_structure (with_piece (aeroplane_new (), body), "shell", "body", 33);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  ck_assert_double_eq_tol (figures->mass.x_mm, 140, 1e-9);

  body = body_new ("body");
  body->side_outline = polygon_from ((Point[]) { { 10, 3 }, { 200, 20 }, { 450, 0 }, { 200, -20 } }, 4);
  g_autoptr (Aeroplane) slim = with_structure (with_piece (aeroplane_new (), body), "shell", "body", 33);
  g_autoptr (Figures) slim_figures = figures_once (slim);
  ck_assert_double_eq (slim_figures->mass.total_g, 33);
  ck_assert (slim_figures->mass.x_mm > 150 && slim_figures->mass.x_mm < 300);
}
END_TEST

/* One plain dihedral lifts the centroid of a rectangle by a quarter of the span times tan Γ. */
START_TEST (dihedral_lifts_a_wings_mass_and_incidence_lowers_what_lies_aft)
{
  Surface *wing = surface_new ("wing", ROLE_WING, rectangle (50, 640, 120));
  const double degree = M_PI / 180;

  wing->z = 17;
  wing->dihedral = 5;
  wing->incidence = 2;
  g_autoptr (Aeroplane) aeroplane = with_structure (with_piece (aeroplane_new (), wing), "wood", "wing", 30);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  ck_assert_double_eq_tol (figures->mass.z_mm, 17 + 160 * tan (5 * degree) - 60 * tan (2 * degree), 1e-9);
}
END_TEST

/* A tip panel from 200 mm with its own angle, constant chord: the mean of the lift along the half-span by hand. */
START_TEST (a_dihedral_break_lifts_only_what_lies_outboard)
{
  Surface *wing = surface_new ("wing", ROLE_WING, rectangle (50, 600, 100));
  const double rise = tan (12 * M_PI / 180) * 100;          /* at the tip */

  wing->breaks = g_new (DihedralBreak, 1);
  wing->breaks[0] = (DihedralBreak) { .from = 200, .angle = 12 };
  wing->break_count = 1;
  g_autoptr (Aeroplane) aeroplane = with_structure (with_piece (aeroplane_new (), wing), "wood", "wing", 30);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  ck_assert_double_eq_tol (figures->mass.z_mm, rise / 2 / 3, 5e-3 * rise);      /* 64 cells, one of them across the break */
}
END_TEST

START_TEST (a_structure_with_a_place_of_its_own_is_a_point_there)
{
  Structure *paint = structure_new ("paint", NULL, 5.5);

  paint->x = 210, paint->y = -3, paint->z = 8;
  g_autoptr (Aeroplane) aeroplane = with_piece (aeroplane_new (), paint);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  ck_assert_double_eq_tol (figures->mass.x_mm, 210, 1e-9);
  ck_assert_double_eq_tol (figures->mass.y_mm, -3, 1e-9);
  ck_assert_double_eq_tol (figures->mass.z_mm, 8, 1e-9);
  ck_assert_double_eq_tol (figures->mass.inertia_yaw_kgm2, 0, 1e-18);
}
END_TEST

START_TEST (a_part_left_ashore_weighs_nothing)
{
  Part *spare = part_new ("spare", "battery");

  spare->mass = 46, spare->x = 90, spare->aboard = false;
  g_autoptr (Aeroplane) aeroplane = with_piece (with_part (aeroplane_new (), "motor", 17, 30), spare);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  ck_assert_double_eq_tol (figures->mass.total_g, 17, 1e-12);
  ck_assert_double_eq_tol (figures->mass.x_mm, 30, 1e-9);
}
END_TEST

/* Nothing stated: a structure 18 % of its mass and 3 % of the mean chord; a part without class 10 % and 3 mm. Two masses at one place
 * leave the places' deviations alone. */
START_TEST (deviations_that_are_not_stated_are_those_of_the_class)
{
  Structure *wood = structure_new ("wood", NULL, 30);
  Part *box = part_new ("box", NULL);
  Aeroplane *made = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (0, 600, 110));

  wood->x = 80;
  box->mass = 20, box->x = 80;
  g_autoptr (Aeroplane) together = with_piece (with_piece (made, piece_dup (&wood->piece)), piece_dup (&box->piece));
  g_autoptr (Figures) figures = figures_once (together);
  ck_assert_double_eq_tol (figures->mass.x_sigma_mm, hypot (30 * 0.03 * 110, 20 * 3) / 50, 1e-9);

  wood->x = 180;                /* now the masses' deviations count as well: arms of 40 and 60 mm about 140 */
  g_autoptr (Aeroplane) apart = with_piece (with_piece (with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (0, 600, 110)),
                                                        wood), box);
  g_autoptr (Figures) spread = figures_once (apart);
  ck_assert_double_eq_tol (spread->mass.x_sigma_mm,
                           sqrt (pow (30 * 3.3, 2) + pow (20 * 3, 2) + pow (40 * 5.4, 2) + pow (60 * 2, 2)) / 50, 1e-9);
  ck_assert_ptr_eq (spread->weigh_first[0], aeroplane_find (apart, "wood"));
  ck_assert_ptr_eq (spread->weigh_first[1], aeroplane_find (apart, "box"));
}
END_TEST

START_TEST (a_mass_of_nothing_drawn_and_without_a_place_is_a_problem_and_withholds_the_balance_point)
{
  Aeroplane *made = with_part (aeroplane_new (), "motor", 17, 30);
  g_autoptr (Aeroplane) aeroplane = with_structure (made, "boom", "nowhere", 12);
  g_autoptr (Figures) figures = figures_once (aeroplane);

  ck_assert_double_nan (figures->mass.x_mm);
  ck_assert_double_eq_tol (figures->mass.total_g, 29, 1e-12);
  ck_assert (note_with (figures, "boom")->problem);
}
END_TEST

START_TEST (without_masses_there_is_a_note_and_no_balance_point)
{
  g_autoptr (Aeroplane) aeroplane = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (0, 600, 110));
  g_autoptr (Figures) figures = figures_once (aeroplane);

  ck_assert_double_nan (figures->mass.x_mm);
  ck_assert_double_eq (figures->mass.total_g, 0);
  ck_assert_ptr_nonnull (note_with (figures, "no masses yet"));
}
END_TEST

START_TEST (parts_that_weigh_nothing_are_no_masses_and_said_so)
{
  Aeroplane *made = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (0, 600, 110));
  g_autoptr (Aeroplane) aeroplane = with_part (made, "motor", 0, 30);
  g_autoptr (Figures) figures = figures_once (aeroplane);

  ck_assert_double_nan (figures->mass.x_mm);
  ck_assert_ptr_nonnull (note_with (figures, "no masses yet"));
}
END_TEST

/* A cuboid of 24 g, 60 by 20 by 10 mm, alone: m (w² + h²)/12 about its long axis, m (l² + h²)/12 across it; turned by a quarter they change
 * places, at 45 degrees both are their mean. Textbook mechanics. */
START_TEST (a_part_turned_takes_its_inertia_along)
{
  const double along = 24e-3 * (20e-3 * 20e-3 + 10e-3 * 10e-3) / 12, across = 24e-3 * (60e-3 * 60e-3 + 10e-3 * 10e-3) / 12;
  const struct { double turn, roll, pitch; } cases[] = {
    { 0, along, across }, { 90, across, along }, { 45, (along + across) / 2, (along + across) / 2 } };
  Part *box = part_new ("box", "battery");

  box->mass = 24;
  box->length = 60;
  box->width = 20;
  box->height = 10;
  box->turn = cases[_i].turn;
  g_autoptr (Aeroplane) aeroplane = with_piece (aeroplane_new (), box);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  ck_assert_double_eq_tol (figures->mass.inertia_roll_kgm2, cases[_i].roll, 1e-15);
  ck_assert_double_eq_tol (figures->mass.inertia_pitch_kgm2, cases[_i].pitch, 1e-15);
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("figures masses");
  TCase *tests = tcase_create ("masses");

  tcase_add_test (tests, a_structure_spread_over_an_elliptic_wing_is_an_elliptic_lamina);
  tcase_add_test (tests, a_structure_without_a_place_lies_at_the_areas_centroid);
  tcase_add_test (tests, centre_counts_along_the_mean_chord);
  tcase_add_test (tests, a_bodys_mass_lies_at_the_centroid_of_its_area_from_above);
  tcase_add_test (tests, a_bodys_mass_turns_as_a_thin_sheet);
  tcase_add_test (tests, a_fins_mass_stands_upright);
  tcase_add_test (tests, a_body_seen_only_from_the_side_spreads_its_mass_over_that_area);
  tcase_add_test (tests, dihedral_lifts_a_wings_mass_and_incidence_lowers_what_lies_aft);
  tcase_add_test (tests, a_dihedral_break_lifts_only_what_lies_outboard);
  tcase_add_test (tests, a_structure_with_a_place_of_its_own_is_a_point_there);
  tcase_add_test (tests, a_part_left_ashore_weighs_nothing);
  tcase_add_test (tests, deviations_that_are_not_stated_are_those_of_the_class);
  tcase_add_test (tests, a_mass_of_nothing_drawn_and_without_a_place_is_a_problem_and_withholds_the_balance_point);
  tcase_add_test (tests, a_side_view_that_closes_by_a_straight_line_holds_the_same_mass);
  tcase_add_test (tests, parts_that_weigh_nothing_are_no_masses_and_said_so);
  tcase_add_test (tests, without_masses_there_is_a_note_and_no_balance_point);
  tcase_add_loop_test (tests, a_part_turned_takes_its_inertia_along, 0, 3);
  return run_suite (suite, tests);
}
