#include "drawing/outline-path.h"
#include <math.h>
#include "support/canvas.h"
#include "support/run-suite.h"
#include "support/shapes.h"

static const SheetView view = { .scale = 1.067, .origin_x = 365.5, .origin_y = 20.25, .width = 731, .height = 400 };
static const double ahead = 45, behind = 85, semispan = 320, root = 112;
static Canvas canvas;

static void set_up (void) { canvas = canvas_new (731, 400, 1, (Colour) { 1, 1, 1, 1 }); }
static void tear_down (void) { canvas_clear (&canvas); }

static bool
is_inside (Point mm)
{
  const Point px = view_to_screen (&view, mm);

  return cairo_in_fill (canvas.cr, px.x, px.y);
}

/* The ellipse by its own equation; 0.15 px either side of it, which is cairo's tolerance of 0.1 and a little. */
START_TEST (arcs_are_the_true_ellipse_on_both_halves)
{
  Outline *wing = ellipse_from (root, semispan, ahead, behind);
  const double air = 0.15 / view.scale, middle = root + ahead;

  outline_path_whole (canvas.cr, &view, wing);
  for (double turn = 0.02; turn < 6.28; turn += 0.13)
    {
      const double a = cos (turn) < 0 ? ahead : behind;
      const Point in = { middle + (a - air) * cos (turn), (semispan - air) * sin (turn) };
      const Point out = { middle + (a + air) * cos (turn), (semispan + air) * sin (turn) };

      ck_assert_msg (is_inside (in), "inside at %g", turn);
      ck_assert_msg (!is_inside (out), "outside at %g", turn);
    }
  outline_unref (wing);
}
END_TEST

START_TEST (a_root_off_the_centre_line_is_carried_to_it)
{
  Outline *wing = polygon_from ((Point[]) { { 100, 30 }, { 120, 300 }, { 180, 300 }, { 200, 30 } }, 4);

  outline_path_whole (canvas.cr, &view, wing);
  ck_assert (is_inside ((Point) { 101, 0 }));
  ck_assert (is_inside ((Point) { 199, -29 }));
  ck_assert (!is_inside ((Point) { 99, 0 }));
  outline_unref (wing);
}
END_TEST

START_TEST (an_open_root_leaves_the_gap)
{
  Outline *wing = polygon_from ((Point[]) { { 100, 30 }, { 120, 300 }, { 180, 300 }, { 200, 30 } }, 4);
  Surface *surface = surface_new ("wing", ROLE_WING, wing);

  surface->root_open = true;
  outline_path_surface (canvas.cr, &view, surface, true);
  ck_assert (!is_inside ((Point) { 150, 0 }));
  ck_assert (!is_inside ((Point) { 150, -29 }));
  ck_assert (is_inside ((Point) { 150, 31 }));
  ck_assert (is_inside ((Point) { 150, -31 }));
  piece_unref (&surface->piece);
}
END_TEST

START_TEST (an_outline_that_is_open_is_not_closed_for_it)
{
  Outline *wing = polygon_from ((Point[]) { { 100, 0 }, { 120, 300 }, { 180, 280 } }, 3);
  Surface *surface = surface_new ("wing", ROLE_WING, wing);
  const Point on_closing_line = view_to_screen (&view, (Point) { 140, 140 });      /* from (180, 280) to (100, 0) */;

  cairo_set_line_width (canvas.cr, 3);
  outline_path_surface (canvas.cr, &view, surface, false);
  ck_assert (!cairo_in_stroke (canvas.cr, on_closing_line.x, on_closing_line.y));
  cairo_new_path (canvas.cr);
  surface->root_open = true;
  outline_path_surface (canvas.cr, &view, surface, true);
  ck_assert (cairo_in_stroke (canvas.cr, on_closing_line.x, on_closing_line.y));
  piece_unref (&surface->piece);
}
END_TEST

START_TEST (a_segment_alone_is_a_stretch_of_the_whole)
{
  Outline *wing = ellipse_from (root, semispan, ahead, behind);
  double x1, y1, x2, y2;

  outline_path_segment (canvas.cr, &view, wing, 1, HALF_PORT);
  cairo_path_extents (canvas.cr, &x1, &y1, &x2, &y2);
  ck_assert_double_eq_tol (x1, 365.5 - 320 * view.scale, 0.1);
  ck_assert_double_eq_tol (x2, 365.5, 0.1);
  ck_assert_double_eq_tol (y1, 20.25 + 157 * view.scale, 0.1);
  ck_assert_double_eq_tol (y2, 20.25 + 242 * view.scale, 0.1);
  outline_unref (wing);
}
END_TEST

/* y = s √(1 − (x/a)²) of the ellipse; halving finds x to 1e-10 of a segment's parameter. */
START_TEST (the_reach_of_an_ellipse_follows_its_equation)
{
  Outline *wing = ellipse_from (root, semispan, ahead, behind);

  for (double x = root + 1.7; x < root + ahead + behind; x += 9.31)
    {
      const double part = (x - root - ahead) / (x < root + ahead ? ahead : behind);

      ck_assert_double_eq_tol (outline_reach_at (wing, x), semispan * sqrt (1 - part * part), 1e-5);
    }
  ck_assert (isnan (outline_reach_at (wing, root - 1)));
  ck_assert_double_eq_tol (outline_tip (wing).y, semispan, 1e-9);
  ck_assert_double_eq_tol (outline_tip (wing).x, root + ahead, 1e-9);
  outline_unref (wing);
}
END_TEST

START_TEST (a_bulging_curves_tip_is_found_between_its_nodes)
{
  Outline *wing = outline_from ((Point) { 100, 0 }, (Segment[]) {
    segment_curve ((Point) { 100, 200 }, (Point) { 200, 200 }, (Point) { 200, 0 }) }, 1);

  /* a cubic with both handles at 200 reaches three quarters of them */
  ck_assert_double_eq_tol (outline_tip (wing).y, 150, 1e-9);
  ck_assert_double_eq_tol (outline_tip (wing).x, 150, 1e-9);
  outline_unref (wing);
}
END_TEST

START_TEST (a_side_outline_has_a_foot_and_a_top)
{
  Outline *side = polygon_from ((Point[]) { { 0, 0 }, { 100, 30 }, { 400, 10 }, { 400, 4 }, { 100, -20 }, { 0, 0 } }, 6);
  double low = 0, high = 0;

  ck_assert (outline_span_at (side, 50, &low, &high));
  ck_assert_double_eq_tol (low, -10, 1e-6);
  ck_assert_double_eq_tol (high, 15, 1e-6);
  ck_assert (!outline_span_at (side, 400.1, &low, &high));
  outline_unref (side);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("outline path");

  tcase_add_checked_fixture (tests, set_up, tear_down);
  tcase_add_test (tests, arcs_are_the_true_ellipse_on_both_halves);
  tcase_add_test (tests, a_root_off_the_centre_line_is_carried_to_it);
  tcase_add_test (tests, an_open_root_leaves_the_gap);
  tcase_add_test (tests, an_outline_that_is_open_is_not_closed_for_it);
  tcase_add_test (tests, a_segment_alone_is_a_stretch_of_the_whole);
  tcase_add_test (tests, the_reach_of_an_ellipse_follows_its_equation);
  tcase_add_test (tests, a_bulging_curves_tip_is_found_between_its_nodes);
  tcase_add_test (tests, a_side_outline_has_a_foot_and_a_top);
  return run_suite (suite_create ("drawing outline-path"), tests);
}
