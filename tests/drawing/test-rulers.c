#include "drawing/rulers.h"
#include <math.h>
#include "support/canvas.h"
#include "support/run-suite.h"

static const Units metric = { LENGTH_MM, MASS_G }, imperial = { LENGTH_INCH, MASS_OZ };
static const double inch = 25.4;

START_TEST (labels_stand_at_round_figures_with_room_between)
{
  for (double scale = 0.05; scale <= 80; scale *= 1.13)
    {
      const double mm = ruler_step (metric, scale), leading = mm / pow (10, floor (log10 (mm) + 1e-9));

      ck_assert_double_ge (mm * scale, 59.9);
      ck_assert_double_ge (mm, 1);
      ck_assert (scale > 59 || mm * scale <= 151);      /* 1, 2, 5: never more than two and a half times the room needed */
      ck_assert (fabs (leading - 1) < 1e-9 || fabs (leading - 2) < 1e-9 || fabs (leading - 5) < 1e-9);
    }
}
END_TEST

START_TEST (inches_go_by_halves_to_32nds_and_whole_ones)
{
  for (double scale = 0.05; scale <= 80; scale *= 1.13)
    {
      const double inches = ruler_step (imperial, scale) / inch;

      ck_assert_double_ge (inches * inch * scale, 59.9);
      if (inches < 0.99)
        ck_assert_double_eq_tol (log2 (inches * 32), round (log2 (inches * 32)), 1e-9);
      else
        ck_assert_double_eq_tol (inches, round (inches), 1e-9);
    }
  ck_assert_double_eq_tol (ruler_step (imperial, 80) / inch, 1 / 32.0, 1e-12);
}
END_TEST

START_TEST (the_scale_bar_is_of_a_handy_length_at_every_zoom)
{
  for (double scale = 0.05; scale <= 80; scale *= 1.07)
    {
      const double mm = scale_bar_length (metric, scale), inches = scale_bar_length (imperial, scale) / inch;

      ck_assert (mm * scale >= 89.9 && mm * scale <= 220);
      ck_assert (inches * inch * scale >= 89.9 && inches * inch * scale <= 220);
      ck_assert_double_eq_tol (log2 (inches / 5), round (log2 (inches / 5)), 1e-9);      /* each of its five fields halves or doubles an inch */
    }
  ck_assert_double_eq (scale_bar_length (metric, 1.067), 100);
}
END_TEST

static Look look;
static SheetView view;
static Ruler ruler;

static void
set_up (void)
{
  look = look_for_screen (LOOK_LIGHT, 1);
  view = (SheetView) { .scale = 1, .origin_x = 300, .origin_y = 50, .width = 600, .height = 400 };
  ruler = (Ruler) { .look = &look, .units = metric, .view = &view, .pointer = NAN, .extent_from = NAN, .extent_to = NAN };
}

/* How long the tick is that hangs from the ruler's inner edge at x. */
static double
tick_length (const Canvas *canvas, double x, double height)
{
  double length = 0;

  while (colour_distance (canvas_at (canvas, x, height - 1.5 - length), look.construction) < 0.2)
    length++;
  return length;
}

START_TEST (ticks_count_from_the_centre_line_both_ways)
{
  Canvas canvas = canvas_new (600, 21, 1, (Colour) { 1, 0, 1, 1 });

  draw_ruler_across (canvas.cr, &ruler, 600, 21);
  for (int side = -1; side <= 1; side += 2)
    {
      ck_assert_double_eq (tick_length (&canvas, 300 + side * 100, 21), 9);       /* 10 px, the last under the edge line */
      ck_assert_double_eq (tick_length (&canvas, 300 + side * 50, 21), 6);
      ck_assert_double_eq (tick_length (&canvas, 300 + side * 10, 21), 3);
      ck_assert_double_eq (tick_length (&canvas, 300 + side * 105, 21), 0);
    }
  ck_assert_double_eq (canvas_share (&canvas, (Box) { { 0, 0 }, { 600, 21 } }, (Colour) { 1, 0, 1, 1 }), 0);
  canvas_clear (&canvas);
}
END_TEST

/* What is left of 150 when its beginning is cut would be another place. */
START_TEST (a_figure_that_does_not_fit_whole_is_left_out)
{
  Canvas canvas = canvas_new (21, 400, 1, look.ruler_ground);

  view.origin_y = 10;      /* the figure of 0 would run up past the ruler's beginning */
  ruler.view = &view;
  draw_ruler_along (canvas.cr, &ruler, 21, 400);
  ck_assert_double_gt (canvas_share (&canvas, (Box) { { 0, 80 }, { 10, 110 } }, look.ruler_ground), 0);
  ck_assert_double_lt (canvas_share (&canvas, (Box) { { 0, 80 }, { 10, 110 } }, look.ruler_ground), 1);
  view.origin_y = 5;
  draw_ruler_along (canvas.cr, &ruler, 21, 400);
  ck_assert_double_eq (canvas_share (&canvas, (Box) { { 0, 0 }, { 10, 4 } }, look.ruler_ground), 1);
  canvas_clear (&canvas);
}
END_TEST

START_TEST (pointer_and_extent_are_shown_on_the_sheets_edge)
{
  Canvas canvas = canvas_new (21, 400, 1, look.sheet);

  draw_ruler_along (canvas.cr, &ruler, 21, 400);
  ck_assert_double_eq (canvas_share (&canvas, (Box) { { 0, 0 }, { 21, 400 } }, look.selection), 0);
  ruler.pointer = 205;
  ruler.extent_from = 40;
  ruler.extent_to = 110;
  draw_ruler_along (canvas.cr, &ruler, 21, 400);
  ck_assert (colour_distance (canvas_at (&canvas, 19.5, 50 + 75), look.selection) < 0.1);
  ck_assert (colour_distance (canvas_at (&canvas, 19.5, 50 + 115), look.selection) > 0.2);
  ck_assert (colour_distance (canvas_at (&canvas, 17.5, 50 + 205), look.selection) < 0.1);
  canvas_clear (&canvas);
}
END_TEST

START_TEST (the_scale_bar_has_five_fields_black_and_white)
{
  const double length = 100, left = 22, y = 400 - 17.5;
  Canvas canvas = canvas_new (600, 400, 1, look.band);      /* on something that it must stand out from */

  draw_scale_bar (canvas.cr, &ruler);
  for (int field = 0; field < 5; field++)
    ck_assert (colour_distance (canvas_at (&canvas, left + (field + 0.5) * length / 5, y), field % 2 ? look.sheet : look.graphite) < 0.05);
  ck_assert (colour_distance (canvas_at (&canvas, left - 2, y), look.sheet) < 0.05);
  canvas_clear (&canvas);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("rulers");

  tcase_add_checked_fixture (tests, set_up, NULL);
  tcase_add_test (tests, labels_stand_at_round_figures_with_room_between);
  tcase_add_test (tests, inches_go_by_halves_to_32nds_and_whole_ones);
  tcase_add_test (tests, the_scale_bar_is_of_a_handy_length_at_every_zoom);
  tcase_add_test (tests, ticks_count_from_the_centre_line_both_ways);
  tcase_add_test (tests, a_figure_that_does_not_fit_whole_is_left_out);
  tcase_add_test (tests, pointer_and_extent_are_shown_on_the_sheets_edge);
  tcase_add_test (tests, the_scale_bar_has_five_fields_black_and_white);
  return run_suite (suite_create ("drawing rulers"), tests);
}
