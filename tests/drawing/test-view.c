#include "drawing/view.h"
#include <math.h>
#include "support/run-suite.h"

static const SheetView view = { .scale = 1.067, .origin_x = 365.5, .origin_y = 92.25, .width = 731, .height = 704 };

/* Rounding of a few operations on values of some hundred px. */
static const double exact = 1e-9;

START_TEST (the_nose_is_at_the_top_and_starboard_to_the_right)
{
  const Point aft = view_to_screen (&view, (Point) { 222, 0 }), starboard = view_to_screen (&view, (Point) { 0, 205 });

  ck_assert_double_gt (aft.y, view.origin_y);
  ck_assert_double_eq (aft.x, view.origin_x);
  ck_assert_double_gt (starboard.x, view.origin_x);
  ck_assert_double_eq_tol (starboard.x - view.origin_x, 205 * 1.067, exact);
}
END_TEST

START_TEST (a_place_on_the_screen_leads_back_to_its_millimetres)
{
  for (int i = 0; i < 50; i++)
    {
      const Point place = { -130.7 + 17.3 * i, 320.9 - 13.1 * i }, px = view_to_screen (&view, place);
      const Point back = view_from_screen (&view, px.x, px.y);

      ck_assert_double_eq_tol (back.x, place.x, exact);
      ck_assert_double_eq_tol (back.y, place.y, exact);
    }
}
END_TEST

START_TEST (zooming_keeps_the_place_under_the_pointer)
{
  const double x = 517.3, y = 301.9, factors[] = { 1.1, 1.9, 0.37, 12, 1 / 40.0, 1e-6, 1e9, 0.9 };
  const Point before = view_from_screen (&view, x, y);
  SheetView zoomed = view;

  for (int i = 0; i < 8; i++)
    {
      Point px;

      zoomed = view_zoomed (&zoomed, factors[i], x, y);
      px = view_to_screen (&zoomed, before);
      ck_assert_double_eq_tol (px.x, x, 1e-3);      /* a thousandth of a pixel, also after running into the bounds */
      ck_assert_double_eq_tol (px.y, y, 1e-3);
      ck_assert_double_ge (zoomed.scale, 0.05);
      ck_assert_double_le (zoomed.scale, 80);
    }
}
END_TEST

START_TEST (zooming_in_and_out_by_the_same_factor_changes_nothing)
{
  const SheetView in = view_zoomed (&view, 1.7, 12.5, 640), out = view_zoomed (&in, 1 / 1.7, 12.5, 640);

  ck_assert_double_eq_tol (out.scale, view.scale, exact);
  ck_assert_double_eq_tol (out.origin_x, view.origin_x, exact);
  ck_assert_double_eq_tol (out.origin_y, view.origin_y, exact);
}
END_TEST

/* Wide, tall, and nearly square. */
static const Box boxes[] = {
  { { -14.3, -320.1 }, { 499.7, 320.1 } }, { { 0, -31 }, { 900.5, 29 } }, { { 100, 100 }, { 100.5, 100.7 } } };

START_TEST (a_fitted_view_shows_the_box_in_its_middle_and_touches_the_margin)
{
  const double margin = 24;
  const SheetView fitted = view_fitted (&view, boxes[_i], margin);
  const Point a = view_to_screen (&fitted, boxes[_i].min), b = view_to_screen (&fitted, boxes[_i].max);

  ck_assert_double_eq_tol (a.x, fitted.width - b.x, exact);
  ck_assert_double_eq_tol (a.y, fitted.height - b.y, exact);
  ck_assert_double_ge (a.x, margin - exact);
  ck_assert_double_ge (a.y, margin - exact);
  if (fitted.scale < 80)
    ck_assert_double_eq_tol (fmin (a.x, a.y), margin, exact);
}
END_TEST

START_TEST (fitting_nothing_changes_nothing)
{
  const SheetView same = view_fitted (&view, (Box) { { 1, 1 }, { -1, -1 } }, 24);

  ck_assert_double_eq (same.scale, view.scale);
  ck_assert_double_eq (same.origin_x, view.origin_x);
}
END_TEST

START_TEST (panning_moves_every_place_alike)
{
  const SheetView panned = view_panned (&view, -13.5, 41);
  const Point before = view_to_screen (&view, (Point) { 77, -55 }), after = view_to_screen (&panned, (Point) { 77, -55 });

  ck_assert_double_eq_tol (after.x - before.x, -13.5, exact);
  ck_assert_double_eq_tol (after.y - before.y, 41, exact);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("view");

  tcase_add_test (tests, the_nose_is_at_the_top_and_starboard_to_the_right);
  tcase_add_test (tests, a_place_on_the_screen_leads_back_to_its_millimetres);
  tcase_add_test (tests, zooming_keeps_the_place_under_the_pointer);
  tcase_add_test (tests, zooming_in_and_out_by_the_same_factor_changes_nothing);
  tcase_add_loop_test (tests, a_fitted_view_shows_the_box_in_its_middle_and_touches_the_margin, 0, 3);
  tcase_add_test (tests, fitting_nothing_changes_nothing);
  tcase_add_test (tests, panning_moves_every_place_alike);
  return run_suite (suite_create ("drawing view"), tests);
}
