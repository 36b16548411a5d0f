#include <check.h>
#include "geometry/planform.h"
#include "support/run-suite.h"
#include "support/shapes.h"

static StationCut
cut_at (const Outline *outline, PlanformSides sides, double y)
{
  StationCut cut;

  ck_assert_int_eq (planform_cut (outline, sides, y, &cut), CORE_OK);
  return cut;
}

/* c = c0 √(1 - (y/s)²). */
START_TEST (the_chord_of_an_ellipse_follows_its_equation)
{
  Outline *wing = ellipse_from (110, 320, 40, 90);

  for (double y = 0; y < 320; y += 13.37)
    {
      const double q = sqrt (1 - y / 320 * (y / 320));
      const StationCut cut = cut_at (wing, PLANFORM_CARRIED, y);

      ck_assert_double_eq_tol (cut.leading_x, 150 - 40 * q, 1e-12 * 150);
      ck_assert_double_eq_tol (cut.trailing_x, 150 + 90 * q, 1e-12 * 240);
      ck_assert_double_eq_tol (cut.chord, 130 * q, 1e-12 * 240);
      ck_assert_int_eq (cut.pieces, 1);
    }
  outline_unref (wing);
}
END_TEST

START_TEST (a_round_tip_has_no_chord_and_a_square_one_its_own)
{
  Outline *round = ellipse_from (110, 320, 40, 90);
  Outline *square = taper_from ((const double[]) { 0, 411 }, (const double[]) { 5, 33 }, (const double[]) { 180, 71 }, 2);
  const StationCut at_round = cut_at (round, PLANFORM_CARRIED, 320), at_square = cut_at (square, PLANFORM_CARRIED, 411);

  ck_assert_double_eq (at_round.chord, 0);
  ck_assert_double_eq (at_round.leading_x, 150);
  ck_assert_double_eq (at_square.chord, 71);
  ck_assert_double_eq (at_square.leading_x, 33);
  ck_assert_double_eq (cut_at (square, PLANFORM_CARRIED, 0).chord, 180);
  outline_unref (round);
  outline_unref (square);
}
END_TEST

/* The trailing edge has a notch whose upper lip hangs inboard over it: the chord there is in two pieces. */
START_TEST (a_notch_is_left_out_of_the_chord)
{
  const Point nodes[] = { { 0, 0 }, { 0, 300 }, { 120, 300 }, { 120, 100 }, { 60, 150 }, { 80, 60 }, { 130, 60 }, { 130, 0 } };
  Outline *wing = polygon_from (nodes, 8);
  const StationCut cut = cut_at (wing, PLANFORM_CARRIED, 120);

  /* At y = 120: leading edge 0; the notch from 60 + 20·(150-120)/90 to 120 - 60·(120-100)/50; trailing edge 120. */
  ck_assert_double_eq_tol (cut.leading_x, 0, 1e-12);
  ck_assert_double_eq_tol (cut.trailing_x, 120, 1e-10);
  ck_assert_int_eq (cut.pieces, 2);
  ck_assert_double_eq_tol (cut.chord, (60 + 20.0 / 3) + (120 - 96), 1e-10);
  ck_assert_int_eq (cut_at (wing, PLANFORM_CARRIED, 30).pieces, 1);
  ck_assert_double_eq_tol (cut_at (wing, PLANFORM_CARRIED, 30).chord, 130, 1e-10);
  outline_unref (wing);
}
END_TEST

START_TEST (a_station_through_a_step_takes_the_chord_outboard_of_it)
{
  const Point nodes[] = { { 0, 0 }, { 0, 300 }, { 90, 300 }, { 90, 110 }, { 140, 110 }, { 140, 0 } };
  Outline *wing = polygon_from (nodes, 6);

  ck_assert_double_eq (cut_at (wing, PLANFORM_CARRIED, 110).chord, 90);
  ck_assert_double_eq (cut_at (wing, PLANFORM_CARRIED, 109.999).chord, 140);
  outline_unref (wing);
}
END_TEST

START_TEST (inboard_of_a_root_the_chord_is_carried_or_there_is_none)
{
  Outline *wing = taper_from ((const double[]) { 41.5, 300 }, (const double[]) { 7, 33 }, (const double[]) { 160, 90 }, 2);
  StationCut cut = { .pieces = 17 };

  ck_assert_double_eq (cut_at (wing, PLANFORM_CARRIED, 0).chord, 160);
  ck_assert_double_eq (cut_at (wing, PLANFORM_CARRIED, 20).leading_x, 7);
  ck_assert_int_eq (cut_at (wing, PLANFORM_CARRIED, 20).pieces, 1);
  ck_assert_int_eq (planform_cut (wing, PLANFORM_OPEN, 20, &cut), CORE_OUT_OF_RANGE);
  ck_assert_int_eq (planform_cut (wing, PLANFORM_SINGLE, 20, &cut), CORE_OUT_OF_RANGE);
  ck_assert_int_eq (planform_cut (wing, PLANFORM_CARRIED, 300.001, &cut), CORE_OUT_OF_RANGE);
  ck_assert_int_eq (planform_cut (wing, PLANFORM_CARRIED, -0.001, &cut), CORE_OUT_OF_RANGE);
  ck_assert_int_eq (planform_cut (wing, PLANFORM_CARRIED, NAN, &cut), CORE_OUT_OF_RANGE);
  ck_assert_int_eq (cut.pieces, 17);
  outline_unref (wing);
}
END_TEST

static void
assert_breaks (const Outline *outline, PlanformSides sides, const double wanted[], size_t count)
{
  double got[16];

  ck_assert_uint_eq (planform_breaks (outline, sides, got, 16), count);
  for (size_t i = 0; i < count; i++)
    ck_assert_double_eq_tol (got[i], wanted[i], 1e-12 * 411);
}

START_TEST (breaks_stand_at_nodes_and_turns_from_the_root_to_the_tip)
{
  Outline *taper = taper_from ((const double[]) { 41.5, 211, 411 }, (const double[]) { 5, 9, 33 }, (const double[]) { 180, 150, 71 }, 3);
  /* y = 3 t (1 - t)² 120 + 3 t² (1 - t) 120 turns at t = 1/2, y = 90. */
  const Segment bow[] = { segment_curve ((Point) { 0, 120 }, (Point) { 90, 120 }, (Point) { 90, 0 }) };
  Outline *curve = outline_from ((Point) { 0, 0 }, bow, 1);

  assert_breaks (taper, PLANFORM_CARRIED, (const double[]) { 0, 41.5, 211, 411 }, 4);
  assert_breaks (taper, PLANFORM_OPEN, (const double[]) { 41.5, 211, 411 }, 3);
  assert_breaks (curve, PLANFORM_CARRIED, (const double[]) { 0, 90 }, 2);
  outline_unref (taper);
  outline_unref (curve);
}
END_TEST

START_TEST (breaks_closer_than_a_millionth_of_the_span_are_one)
{
  const Point nodes[] = { { 0, 0 }, { 0, 150 }, { 10, 299.9999 }, { 90, 300 }, { 100, 150.0001 }, { 120, 0.0001 }, { 120, 0 } };
  Outline *wing = polygon_from (nodes, 7);
  double few[2] = { -1, -1 };

  assert_breaks (wing, PLANFORM_CARRIED, (const double[]) { 0, 150, 300 }, 3);
  ck_assert_uint_eq (planform_breaks (wing, PLANFORM_CARRIED, few, 1), 3);    /* no more is written than there is room */
  ck_assert (few[0] == 0 && few[1] == -1);
  outline_unref (wing);
}
END_TEST

static AreaMoments
moments_of (const Outline *outline, PlanformSides sides)
{
  AreaMoments moments;

  ck_assert_int_eq (planform_moments (outline, sides, &moments), CORE_OK);
  return moments;
}

/* A rectangle: c³ b / 12 and b³ c / 3 for each half; textbook mechanics. */
START_TEST (moments_of_a_rectangle_follow_the_textbook)
{
  const double c = 71.5, s = 311.25;
  Outline *wing = taper_from ((const double[]) { 0, s }, (const double[]) { 1013, 1013 }, (const double[]) { c, c }, 2);
  const AreaMoments got = moments_of (wing, PLANFORM_CARRIED);

  ck_assert_double_eq_tol (got.area, 2 * c * s, 1e-9 * c * s);
  ck_assert_double_eq_tol (got.x, 1013 + c / 2, 1e-9 * c);
  ck_assert_double_eq_tol (got.y, s / 2, 1e-9 * s);
  ck_assert_double_eq_tol (got.xx, 2 * s * c * c * c / 12, 1e-9 * s * c * c * c);
  ck_assert_double_eq_tol (got.yy, 2 * c * s * s * s / 3, 1e-9 * c * s * s * s);
  outline_unref (wing);
}
END_TEST

/* An elliptic lamina of semi-axes s along y and a along x: π a s, π a³ s / 4, π a s³ / 4; the half's centroid stands at 4 s / 3π. */
START_TEST (moments_of_an_ellipse_follow_the_textbook)
{
  const double a = 60, s = 320;
  Outline *wing = ellipse_from (90, s, a, a);
  const AreaMoments got = moments_of (wing, PLANFORM_CARRIED);

  ck_assert_double_eq_tol (got.area, M_PI * a * s, 1e-9 * a * s);
  ck_assert_double_eq_tol (got.x, 90 + a, 1e-9 * s);
  ck_assert_double_eq_tol (got.y, 4 * s / (3 * M_PI), 1e-9 * s);
  ck_assert_double_eq_tol (got.xx, M_PI * a * a * a * s / 4, 1e-9 * a * a * a * s);
  ck_assert_double_eq_tol (got.yy, M_PI * a * s * s * s / 4, 1e-9 * a * s * s * s);
  outline_unref (wing);
}
END_TEST

/* A right triangle of base c and height s: c³ s / 36 about its centroid, c s³ / 12 about its base; textbook mechanics. */
START_TEST (moments_of_a_triangle_follow_the_textbook)
{
  const double c = 93, s = 151;
  Outline *fin = taper_from ((const double[]) { 0, s }, (const double[]) { 700, 700 }, (const double[]) { c, 0 }, 2);
  const AreaMoments got = moments_of (fin, PLANFORM_SINGLE);

  ck_assert_double_eq_tol (got.x, 700 + c / 3, 1e-9 * c);
  ck_assert_double_eq_tol (got.y, s / 3, 1e-9 * s);
  ck_assert_double_eq_tol (got.xx, c * c * c * s / 36, 1e-9 * c * c * c * s);
  ck_assert_double_eq_tol (got.yy, c * s * s * s / 12, 1e-9 * c * s * s * s);
  outline_unref (fin);
}
END_TEST

/* The carried rectangle counts; left open it does not; a fin counts once. */
START_TEST (moments_take_the_carried_root_in)
{
  const double c = 90, root = 40, tip = 300;
  Outline *wing = taper_from ((const double[]) { root, tip }, (const double[]) { 5, 5 }, (const double[]) { c, c }, 2);
  const AreaMoments carried = moments_of (wing, PLANFORM_CARRIED), open = moments_of (wing, PLANFORM_OPEN), single = moments_of (wing, PLANFORM_SINGLE);

  ck_assert_double_eq_tol (carried.area, 2 * c * tip, 1e-9 * c * tip);
  ck_assert_double_eq_tol (carried.y, tip / 2, 1e-9 * tip);
  ck_assert_double_eq_tol (carried.yy, 2 * c * tip * tip * tip / 3, 1e-9 * c * tip * tip * tip);
  ck_assert_double_eq_tol (carried.xx, 2 * tip * c * c * c / 12, 1e-9 * tip * c * c * c);
  ck_assert_double_eq_tol (open.y, (tip + root) / 2, 1e-9 * tip);
  ck_assert_double_eq_tol (open.yy, 2 * c * (tip * tip * tip - root * root * root) / 3, 1e-9 * c * tip * tip * tip);
  ck_assert_double_eq_tol (single.yy, open.yy / 2, 1e-9 * open.yy);
  outline_unref (wing);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("stations");

  tcase_add_test (tests, the_chord_of_an_ellipse_follows_its_equation);
  tcase_add_test (tests, a_round_tip_has_no_chord_and_a_square_one_its_own);
  tcase_add_test (tests, a_notch_is_left_out_of_the_chord);
  tcase_add_test (tests, a_station_through_a_step_takes_the_chord_outboard_of_it);
  tcase_add_test (tests, inboard_of_a_root_the_chord_is_carried_or_there_is_none);
  tcase_add_test (tests, breaks_stand_at_nodes_and_turns_from_the_root_to_the_tip);
  tcase_add_test (tests, breaks_closer_than_a_millionth_of_the_span_are_one);
  tcase_add_test (tests, moments_of_a_rectangle_follow_the_textbook);
  tcase_add_test (tests, moments_of_an_ellipse_follow_the_textbook);
  tcase_add_test (tests, moments_of_a_triangle_follow_the_textbook);
  tcase_add_test (tests, moments_take_the_carried_root_in);
  return run_suite (suite_create ("planform cut"), tests);
}
