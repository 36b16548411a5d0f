#include "drawing/dimension.h"
#include <math.h>
#include "support/canvas.h"
#include "support/run-suite.h"

static Look look;
static Canvas canvas;
static Lettering lettering;

static void
set_up (void)
{
  look = look_for_screen (LOOK_LIGHT, 1);
  canvas = canvas_new (300, 200, 1, look.sheet);
  lettering = lettering_begin (canvas.cr, &look);
}

static void
tear_down (void)
{
  canvas_clear (&canvas);
}

static Dimension
between (Point from, Point to, const char *figure)
{
  return (Dimension) { .from = from, .to = to, .foot_from = from, .foot_to = to, .figure = figure };
}

START_TEST (the_figure_stands_above_a_level_line_in_its_middle)
{
  const Dimension d = between ((Point) { 40, 100 }, (Point) { 240, 100 }, "640");
  const Box box = dimension_figure_box (&lettering, &d);

  ck_assert_double_eq_tol ((box.min.x + box.max.x) / 2, 140, 1e-9);
  ck_assert_double_lt (box.min.y, 100 - look.figure_size * look.cap_height);
  ck_assert_double_gt (box.max.y, 95);
}
END_TEST

START_TEST (beside_an_upright_line_it_is_read_from_the_right)
{
  const Dimension down = between ((Point) { 150, 30 }, (Point) { 150, 170 }, "124");
  const Dimension up = between ((Point) { 150, 170 }, (Point) { 150, 30 }, "124");
  const Box box = dimension_figure_box (&lettering, &down), same = dimension_figure_box (&lettering, &up);

  ck_assert_double_eq_tol ((box.min.y + box.max.y) / 2, 100, 1e-9);
  ck_assert_double_lt (box.min.x, 150 - look.figure_size * look.cap_height);
  ck_assert_double_gt (box.max.y - box.min.y, box.max.x - box.min.x);      /* three figures, turned */
  ck_assert_double_eq (box.min.x, same.min.x);                            /* whichever end is named first */
  ck_assert_double_eq (box.min.y, same.min.y);
}
END_TEST

/* An arrow is 9 px long: under 31.5 px there is no room between. */
START_TEST (without_room_arrows_and_figure_stand_outside)
{
  const Dimension narrow = between ((Point) { 100, 100 }, (Point) { 131, 100 }, "29");
  const Dimension wide = between ((Point) { 100, 100 }, (Point) { 132, 100 }, "30");

  ck_assert_double_gt (dimension_figure_box (&lettering, &narrow).min.x, 131);
  ck_assert_double_lt (dimension_figure_box (&lettering, &wide).max.x, 132);
  dimension_draw (&lettering, &narrow);
  ck_assert (colour_distance (canvas_at (&canvas, 92, 100), look.construction) < 0.15);      /* the tail before the first end */
}
END_TEST

START_TEST (a_figure_longer_than_its_line_stands_beyond_it)
{
  const Dimension d = between ((Point) { 150, 150 }, (Point) { 150, 115 }, "1 13/32");
  const Box box = dimension_figure_box (&lettering, &d);

  ck_assert_double_lt (box.max.y, 115);
  dimension_draw (&lettering, &d);
  ck_assert (colour_distance (canvas_at (&canvas, 150, (box.min.y + box.max.y) / 2), look.construction) < 0.15);
}
END_TEST

START_TEST (extension_lines_leave_air_and_pass_the_line)
{
  Dimension d = between ((Point) { 60, 120 }, (Point) { 220, 120 }, "640");

  d.foot_from = (Point) { 60, 60 };
  d.foot_to = (Point) { 220, 60 };
  dimension_draw (&lettering, &d);
  ck_assert (colour_distance (canvas_at (&canvas, 60, 61.5), look.sheet) < 0.02);       /* 3 px of air */
  ck_assert (colour_distance (canvas_at (&canvas, 60, 64.5), look.construction) < 0.15);
  ck_assert (colour_distance (canvas_at (&canvas, 60, 123.5), look.construction) < 0.15);      /* 4 px beyond */
  ck_assert (colour_distance (canvas_at (&canvas, 60, 125.5), look.sheet) < 0.02);
}
END_TEST

START_TEST (a_figures_halo_does_not_cut_its_own_line)
{
  const Dimension d = between ((Point) { 60, 100 }, (Point) { 220, 100 }, "6408640864");

  dimension_draw (&lettering, &d);
  for (double x = 75; x < 205; x++)
    ck_assert_msg (colour_distance (canvas_at (&canvas, x, 100), look.construction) < 0.15, "at %g", x);
}
END_TEST

START_TEST (nothing_is_changed_on_the_context)
{
  const Dimension d = between ((Point) { 60, 100 }, (Point) { 220, 100 }, "640");
  cairo_matrix_t before, after;

  cairo_set_line_width (canvas.cr, 7);
  cairo_get_matrix (canvas.cr, &before);
  dimension_draw (&lettering, &d);
  cairo_get_matrix (canvas.cr, &after);
  ck_assert_double_eq (cairo_get_line_width (canvas.cr), 7);
  ck_assert_mem_eq (&before, &after, sizeof before);
  ck_assert (!cairo_has_current_point (canvas.cr));
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("dimension");

  tcase_add_checked_fixture (tests, set_up, tear_down);
  tcase_add_test (tests, the_figure_stands_above_a_level_line_in_its_middle);
  tcase_add_test (tests, beside_an_upright_line_it_is_read_from_the_right);
  tcase_add_test (tests, without_room_arrows_and_figure_stand_outside);
  tcase_add_test (tests, a_figure_longer_than_its_line_stands_beyond_it);
  tcase_add_test (tests, extension_lines_leave_air_and_pass_the_line);
  tcase_add_test (tests, a_figures_halo_does_not_cut_its_own_line);
  tcase_add_test (tests, nothing_is_changed_on_the_context);
  return run_suite (suite_create ("drawing dimension"), tests);
}
