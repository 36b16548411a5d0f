#include "drawing/outline-path.h"
#include <math.h>
#include <stdlib.h>
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

/* The same path made where everything is in sight, so that nothing is left out. */
static void
draw_all_of_it (cairo_t *cr, const SheetView *from, const Outline *outline)
{
  cairo_surface_t *endless = cairo_recording_surface_create (CAIRO_CONTENT_ALPHA, NULL);
  cairo_t *maker = cairo_create (endless);
  cairo_path_t *path;

  outline_path_whole (maker, from, outline);
  path = cairo_copy_path (maker);
  cairo_append_path (cr, path);
  cairo_path_destroy (path);
  cairo_destroy (maker);
  cairo_surface_destroy (endless);
}

static void
paint (cairo_t *cr)
{
  cairo_set_source_rgb (cr, 0.8, 0.9, 1);
  cairo_fill_preserve (cr);
  cairo_set_source_rgb (cr, 0, 0, 0);
  cairo_set_line_width (cr, 6);
  cairo_stroke (cr);
}

/* The greatest difference of a channel, of 255. */
static int
worst_pixel (const Canvas *a, const Canvas *b)
{
  const int stride = cairo_image_surface_get_stride (a->surface), height = cairo_image_surface_get_height (a->surface);
  const unsigned char *one, *other;
  int worst = 0;

  cairo_surface_flush (a->surface);
  cairo_surface_flush (b->surface);
  one = cairo_image_surface_get_data (a->surface);
  other = cairo_image_surface_get_data (b->surface);
  for (int i = 0; i < stride * height; i++)
    worst = MAX (worst, abs (one[i] - other[i]));
  return worst;
}

/* Looked at along its edge at the sheet's greatest zoom and at a tenth of that; a quarter of a level of black is cairo's tolerance. */
static const struct { double x, y, scale; } looked_at[] = {
  { 112, 0, 80 }, { 130, 250, 80 }, { 157, 320, 80 }, { 200, 262, 8 }, { 241, 10, 8 }, { 150, -100, 8 }, { 157, -319, 80 } };

START_TEST (much_enlarged_an_outline_looks_as_if_nothing_of_it_were_left_out)
{
  const double scale = looked_at[_i].scale;
  const SheetView near = { .scale = scale, .origin_x = 365 - looked_at[_i].y * scale, .origin_y = 200 - looked_at[_i].x * scale,
                           .width = 731, .height = 400 };
  Canvas whole = canvas_new (731, 400, 1, (Colour) { 1, 1, 1, 1 });
  Outline *shapes[] = { ellipse_from (root, semispan, ahead, behind), mixed_wing () };

  for (int i = 0; i < 2; i++)
    {
      outline_path_whole (canvas.cr, &near, shapes[i]);
      paint (canvas.cr);
      draw_all_of_it (whole.cr, &near, shapes[i]);
      paint (whole.cr);
      ck_assert_int_le (worst_pixel (&canvas, &whole), 64);
      outline_unref (shapes[i]);
    }
  canvas_clear (&whole);
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
  tcase_add_loop_test (tests, much_enlarged_an_outline_looks_as_if_nothing_of_it_were_left_out, 0, sizeof looked_at / sizeof looked_at[0]);
  return run_suite (suite_create ("drawing outline-path"), tests);
}
