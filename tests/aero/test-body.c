#include <check.h>
#include <math.h>
#include <stdlib.h>
#include "aero/body.h"
#include "geometry/planform.h"
#include "geometry/shapes.h"
#include "support/run-suite.h"

static Outline *
body_of (Point start, const Segment segments[], size_t count)
{
  Outline *made = NULL;

  ck_assert_int_eq (outline_new (start, segments, count, NULL, &made), CORE_OK);
  return made;
}

static Outline *
body_ellipsoid (double nose, double length, double width)
{
  const Segment half = segment_arc ((Point) { nose + length / 2, 0 }, length / 2, width / 2, (Point) { nose + length, 0 });

  return body_of ((Point) { nose, 0 }, &half, 1);
}

static double
moment_of (const Outline *body, BodyFlow flow, double leading_x, double trailing_x)
{
  const BodyChord chord = { leading_x, trailing_x };
  double moment = NAN;

  ck_assert_int_eq (body_pitching_moment (body, flow, NULL, &chord, trailing_x > leading_x, &moment), CORE_OK);
  return moment;
}

/* Munk, The Aerodynamic Forces on Airship Hulls, NACA Report 184 (1924): twice the volume times dynamic pressure for a slender
 * body of revolution; its volume is π/6 · 600 · 80². */
START_TEST (an_ellipsoids_moment_is_twice_its_volume)
{
  Outline *body = body_ellipsoid (0, 600, 80);

  ck_assert_double_eq_tol (moment_of (body, NULL, 0, 0), 4021238.59659, 1e-9 * 4021238.59659);
  ck_assert_double_eq_tol (moment_of (body, NULL, 0, 0), 2 * M_PI / 6 * 600 * 80 * 80, 1e-9 * 4021238.59659);
  outline_unref (body);
}
END_TEST

/* Multhopp, NACA TM 1036 (1942): (π/2) ∫ w² dx; widths 0, 70, 70, 20 mm at 0, 150, 350, 700 mm: ∫ w² dx = 2006666.66667 mm³. */
START_TEST (a_straight_sided_bodys_moment_is_the_integral_of_its_width_squared)
{
  const Segment sides[] = { segment_line ((Point) { 150, 35 }), segment_line ((Point) { 350, 35 }),
                            segment_line ((Point) { 700, 10 }), segment_line ((Point) { 700, 0 }) };
  Outline *body = body_of ((Point) { 0, 0 }, sides, 4);

  ck_assert_double_eq_tol (moment_of (body, NULL, 0, 0), 3152064.62910, 1e-9 * 3152064.62910);
  ck_assert_double_eq_tol (moment_of (body, NULL, 0, 0), M_PI / 2 * (150 * 4900 / 3. + 200 * 4900 + 350 * (4900 + 1400 + 400) / 3.),
                           1e-9 * 3152064.62910);
  outline_unref (body);
}
END_TEST

/* Slender-body theory: (π/2) w² l for a stick of constant width, drawn as two nodes beside its axis. */
START_TEST (a_bare_sticks_moment_is_that_of_its_width)
{
  const Segment along = segment_line ((Point) { 470, 4 });
  Outline *stick = body_of ((Point) { 90, 4 }, &along, 1);

  ck_assert_double_eq_tol (moment_of (stick, NULL, 0, 0), M_PI / 2 * 8 * 8 * 380, 1e-6);
  outline_unref (stick);
}
END_TEST

/* That ellipsoid on an elliptical wing of 640 by 120 mm: on area and mean chord, π s c / 2 and 8 c / 3π, 0.6545 a radian. */
START_TEST (an_ellipsoids_moment_on_an_elliptical_wing_is_a_pure_number)
{
  Outline *body = body_ellipsoid (0, 600, 80), *wing = NULL;
  Planform planform;

  ck_assert_int_eq (shape_ellipse (0, 320, 60, 60, &wing), CORE_OK);
  ck_assert_int_eq (planform_measure (wing, PLANFORM_CARRIED, &planform), CORE_OK);
  ck_assert_double_eq_tol (moment_of (body, NULL, 0, 0) / (planform.area * planform.mac), 0.654498469493, 1e-9);
  outline_unref (body);
  outline_unref (wing);
}
END_TEST

/* Nelson, Flight Stability and Automatic Control, 2nd ed., equation 2.32: per degree ∑ w² dx / (36.5 S c), the constant being
 * 2 · 57.2958 / π = 36.4756. His sum is 85.1 ft³ on 184 ft² and 5.7 ft: 0.0022230 a degree, printed as 0.12 a radian. (His column is
 * said to add to more; this checks the formula.) A box stands for the sum. */
START_TEST (a_general_aviation_bodys_moment_is_nelsons_per_degree)
{
  const double half = sqrt (85.1 / 20) / 2;
  const Segment sides[] = { segment_line ((Point) { 0, half }), segment_line ((Point) { 20, half }), segment_line ((Point) { 20, 0 }) };
  Outline *body = body_of ((Point) { 0, 0 }, sides, 3);
  const double slope = moment_of (body, NULL, 0, 0) / (184 * 5.7);

  ck_assert_double_eq_tol (slope * M_PI / 180 * 36.4756 / 36.5, 0.0022230, 1e-7);
  ck_assert_double_eq_tol (slope, 0.12, 0.01);
  outline_unref (body);
}
END_TEST

START_TEST (a_body_drawn_tail_first_or_elsewhere_has_the_same_moment)
{
  Outline *body = body_ellipsoid (-37, 481, 53), *backward = NULL, *moved = NULL;
  const double moment = moment_of (body, NULL, 0, 0);

  ck_assert_int_eq (outline_reversed (body, &backward), CORE_OK);
  ck_assert_int_eq (outline_mapped (body, (Point) { 1, 1 }, (Point) { 211.3, 0 }, &moved), CORE_OK);
  ck_assert_double_eq_tol (moment_of (backward, NULL, 0, 0), moment, 1e-12 * moment);
  ck_assert_double_eq_tol (moment_of (moved, NULL, 0, 0), moment, 1e-12 * moment);
  outline_unref (body);
  outline_unref (backward);
  outline_unref (moved);
}
END_TEST

START_TEST (a_body_twice_as_large_has_eight_times_the_moment)
{
  Outline *body = body_ellipsoid (12, 481, 53), *large = NULL;

  ck_assert_int_eq (outline_mapped (body, (Point) { 2, 2 }, (Point) { 0 }, &large), CORE_OK);
  ck_assert_double_eq_tol (moment_of (large, NULL, 0, 0), 8 * moment_of (body, NULL, 0, 0), 1e-11 * moment_of (large, NULL, 0, 0));
  outline_unref (body);
  outline_unref (large);
}
END_TEST

/* A box of width w has the integral w² times its length outside the wing: 120 and 230 mm of 500. */
START_TEST (the_stretch_inside_the_wing_adds_nothing)
{
  const Segment sides[] = { segment_line ((Point) { 0, 21 }), segment_line ((Point) { 500, 21 }), segment_line ((Point) { 500, 0 }) };
  Outline *body = body_of ((Point) { 0, 0 }, sides, 3);
  const double wanted = M_PI / 2 * 42 * 42 * (120 + 230);

  ck_assert_double_eq_tol (moment_of (body, NULL, 120, 270), wanted, 1e-11 * wanted);
  outline_unref (body);
}
END_TEST

/* Many formers' nodes, more places than are asked for at a time: ∫ w² dx of a cone of 600 mm, 60 wide at its tail. */
/* Two chords apart, one inside the other's, in any order: what is left is the integral of w² over the rest. */
START_TEST (stretches_inside_any_chord_add_nothing)
{
  static const BodyChord chords[] = { { 400, 450 }, { 100, 200 }, { 120, 260 }, { 430, 440 } };
  Outline *stick = body_of ((Point) { 0, 4 }, &(Segment) { .kind = SEGMENT_LINE, .to = { 500, 4 } }, 1);
  double moment = NAN;

  ck_assert_int_eq (body_pitching_moment (stick, NULL, NULL, chords, 4, &moment), CORE_OK);
  ck_assert_double_eq_tol (moment, M_PI / 2 * 8 * 8 * (100 + 140 + 50), 1e-6);
  outline_unref (stick);
}
END_TEST

START_TEST (a_side_of_many_nodes_is_summed_whole)
{
  Segment sides[31];
  Outline *body;

  for (int i = 0; i < 30; i++)
    sides[i] = segment_line ((Point) { 20 * (i + 1), i + 1 });
  sides[30] = segment_line ((Point) { 600, 0 });
  body = body_of ((Point) { 0, 0 }, sides, 31);
  ck_assert_double_eq_tol (moment_of (body, NULL, 0, 0), M_PI / 2 * 600 * 60 * 60 / 3, 1e-9 * 1130973);
  outline_unref (body);
}
END_TEST

static const double edge_x = 163.7;

/* What the upwash does near a leading edge. */
static void
flow_like_a_root (const void *data, const double x[], size_t count, double cross_flow[])
{
  for (size_t i = 0; i < count; i++)
    cross_flow[i] = x[i] < edge_x ? 1 / sqrt (edge_x - x[i]) : 0;
}

/* ∫ w² / √(a − x) dx = 2 w² √a on a box, also when a former's node divides its side just ahead of the wing: there the root
 * lies a little beyond the stretch's end, and the quadrature keeps four digits. */
START_TEST (upwash_that_grows_like_one_over_a_root_is_integrated)
{
  const Segment whole[] = { segment_line ((Point) { 0, 21 }), segment_line ((Point) { 500, 21 }), segment_line ((Point) { 500, 0 }) };
  const Segment parted[] = { whole[0], segment_line ((Point) { 161, 21 }), whole[1], whole[2] };
  Outline *body = body_of ((Point) { 0, 0 }, whole, 3), *divided = body_of ((Point) { 0, 0 }, parted, 4);
  const double wanted = M_PI / 2 * 42 * 42 * 2 * sqrt (edge_x);

  ck_assert_double_eq_tol (moment_of (body, flow_like_a_root, edge_x, 290), wanted, 1e-9 * wanted);
  ck_assert_double_eq_tol (moment_of (divided, flow_like_a_root, edge_x, 290), wanted, 1e-4 * wanted);
  outline_unref (body);
  outline_unref (divided);
}
END_TEST

static void
flow_that_is_no_number (const void *data, const double x[], size_t count, double cross_flow[])
{
  for (size_t i = 0; i < count; i++)
    cross_flow[i] = NAN;
}

START_TEST (what_cannot_be_computed_leaves_the_moment_as_it_was)
{
  const Segment line = segment_line ((Point) { 300, 0 });
  Outline *nothing = body_of ((Point) { 0, 0 }, &line, 1), *body = body_ellipsoid (0, 300, 40);
  double moment = 0.125;

  ck_assert_int_ne (body_pitching_moment (nothing, NULL, NULL, NULL, 0, &moment), CORE_OK);
  ck_assert_int_eq (body_pitching_moment (body, flow_that_is_no_number, NULL, NULL, 0, &moment), CORE_NOT_FINITE);
  ck_assert_double_eq (moment, 0.125);
  outline_unref (nothing);
  outline_unref (body);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("body");

  tcase_add_test (tests, an_ellipsoids_moment_is_twice_its_volume);
  tcase_add_test (tests, a_straight_sided_bodys_moment_is_the_integral_of_its_width_squared);
  tcase_add_test (tests, a_bare_sticks_moment_is_that_of_its_width);
  tcase_add_test (tests, an_ellipsoids_moment_on_an_elliptical_wing_is_a_pure_number);
  tcase_add_test (tests, a_general_aviation_bodys_moment_is_nelsons_per_degree);
  tcase_add_test (tests, a_body_drawn_tail_first_or_elsewhere_has_the_same_moment);
  tcase_add_test (tests, a_body_twice_as_large_has_eight_times_the_moment);
  tcase_add_test (tests, the_stretch_inside_the_wing_adds_nothing);
  tcase_add_test (tests, stretches_inside_any_chord_add_nothing);
  tcase_add_test (tests, a_side_of_many_nodes_is_summed_whole);
  tcase_add_test (tests, upwash_that_grows_like_one_over_a_root_is_integrated);
  tcase_add_test (tests, what_cannot_be_computed_leaves_the_moment_as_it_was);
  return run_suite (suite_create ("body"), tests);
}
