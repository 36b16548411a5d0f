#include "drawing/line-kind.h"
#include <cairo-pdf.h>
#include <math.h>
#include "support/canvas.h"
#include "support/run-suite.h"

static const Colour white = { 1, 1, 1, 1 }, black = { 0, 0, 0, 1 };

/* Rows of device pixels that a level line marks, and whether each is fully black. */
static void
assert_rows (double scale, double y, double width, int rows)
{
  Canvas canvas = canvas_new (40, 40, scale, white);
  Box marked;

  look_set_source (canvas.cr, black);
  cairo_set_line_width (canvas.cr, width);
  line_stroke (canvas.cr, (Point) { 5, y }, (Point) { 35, y });
  marked = canvas_marked (&canvas, white);
  ck_assert_int_eq (lround ((marked.max.y - marked.min.y) * scale), rows);
  ck_assert_double_eq (canvas_share (&canvas, (Box) { { 6, marked.min.y }, { 34, marked.max.y } }, black), 1);
  ck_assert_double_le (fabs ((marked.min.y + marked.max.y) / 2 - y), 0.5 + 1e-9);      /* never moved by more than half a pixel */
  canvas_clear (&canvas);
}

START_TEST (a_one_pixel_line_fills_whole_pixels_wherever_it_runs)
{
  for (double y = 10; y < 12; y += 0.17)
    {
      assert_rows (1, y, 1, 1);
      assert_rows (2, y, 1, 2);
      assert_rows (1, y, 2, 2);
      assert_rows (2, y, 1.5, 3);
    }
}
END_TEST

START_TEST (lines_are_crisp_on_a_shifted_sheet_too)
{
  Canvas canvas = canvas_new (40, 40, 1, white);

  cairo_translate (canvas.cr, 3.4, 7.7);
  look_set_source (canvas.cr, black);
  cairo_set_line_width (canvas.cr, 1);
  line_stroke (canvas.cr, (Point) { 10, 2 }, (Point) { 10, 30 });
  ck_assert_double_eq (canvas_share (&canvas, (Box) { { 13, 12 }, { 14, 30 } }, black), 1);
  ck_assert_double_eq (canvas_share (&canvas, (Box) { { 12, 12 }, { 13, 30 } }, white), 1);
  canvas_clear (&canvas);
}
END_TEST

START_TEST (a_box_keeps_crisp_edges_on_all_sides)
{
  Canvas canvas = canvas_new (40, 40, 1, white);
  Box marked;

  look_set_source (canvas.cr, black);
  cairo_set_line_width (canvas.cr, 1);
  line_add_box (canvas.cr, (Box) { { 5.3, 6.8 }, { 25.1, 16.2 } });
  cairo_stroke (canvas.cr);
  marked = canvas_marked (&canvas, white);
  ck_assert_double_eq (canvas_share (&canvas, (Box) { marked.min, { marked.max.x, marked.min.y + 1 } }, black), 1);
  ck_assert_double_eq (canvas_share (&canvas, (Box) { { marked.max.x - 1, marked.min.y }, marked.max }, black), 1);
  canvas_clear (&canvas);
}
END_TEST

START_TEST (on_paper_of_lines_nothing_is_moved)
{
  cairo_surface_t *surface = cairo_pdf_surface_create_for_stream (NULL, NULL, 100, 100);
  cairo_t *cr = cairo_create (surface);

  ck_assert_double_eq (line_crisp_x (cr, 12.34, 0.18), 12.34);
  ck_assert_double_eq (line_crisp_y (cr, 56.78, 0.18), 56.78);
  cairo_destroy (cr);
  cairo_surface_destroy (surface);
}
END_TEST

/* The drawn share of a long line is that of its dashes; 2 % for where it is cut off. */
static const struct { LineKind kind; double share; } kinds[] = {
  { LINE_CONSTRUCTION, 1 }, { LINE_HIDDEN, 4 / 7.0 }, { LINE_CENTRE, 16.5 / 22.5 }, { LINE_DATUM, 2 / 5.0 },
  { LINE_OTHER_POSITION, 18 / 30.0 }, { LINE_PROPOSAL, 4 / 7.0 } };

START_TEST (a_kind_of_line_is_known_by_its_dashes)
{
  const Look look = look_for_screen (LOOK_LIGHT, 1);
  Canvas canvas = canvas_new (900, 9, 8, white);      /* large pixels, so that dashes end on them nearly */

  look_set_source (canvas.cr, black);
  line_kind_set (canvas.cr, &look, kinds[_i].kind);
  cairo_set_line_width (canvas.cr, 1);
  line_stroke (canvas.cr, (Point) { 0, 4.5 }, (Point) { 900, 4.5 });
  ck_assert_double_eq_tol (canvas_share (&canvas, (Box) { { 0, 4.25 }, { 900, 4.75 } }, black), kinds[_i].share, 0.02);
  canvas_clear (&canvas);
}
END_TEST

/* Shifted by a third of a dash the two would differ by all of black along every edge of a dash. */
START_TEST (much_enlarged_the_dashes_in_sight_stand_where_they_would_with_all_the_others)
{
  const Look look = look_for_screen (LOOK_LIGHT, 1);
  const Point from = { -21000, -9150 + 37 * _i }, to = { 34000, 15000 };
  Canvas seen = canvas_new (200, 200, 1, white), whole = canvas_new (200, 200, 1, white);
  double worst = 0;

  for (int i = 0; i < 2; i++)
    {
      cairo_t *cr = i == 0 ? seen.cr : whole.cr;

      look_set_source (cr, black);
      line_kind_set (cr, &look, LINE_CENTRE);
      cairo_set_line_width (cr, 3);
    }
  line_stroke (seen.cr, from, to);
  cairo_move_to (whole.cr, from.x, from.y);
  cairo_line_to (whole.cr, to.x, to.y);
  cairo_stroke (whole.cr);
  for (int y = 0; y < 200; y++)
    for (int x = 0; x < 200; x++)
      worst = fmax (worst, colour_distance (canvas_at (&seen, x + 0.5, y + 0.5), canvas_at (&whole, x + 0.5, y + 0.5)));
  ck_assert_double_le (worst, 0.1);
  ck_assert_double_gt (canvas_share (&seen, (Box) { { 0, 0 }, { 200, 200 } }, black), 0.003);
  canvas_clear (&seen);
  canvas_clear (&whole);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("line kind");

  tcase_add_test (tests, a_one_pixel_line_fills_whole_pixels_wherever_it_runs);
  tcase_add_test (tests, lines_are_crisp_on_a_shifted_sheet_too);
  tcase_add_test (tests, a_box_keeps_crisp_edges_on_all_sides);
  tcase_add_test (tests, on_paper_of_lines_nothing_is_moved);
  tcase_add_loop_test (tests, a_kind_of_line_is_known_by_its_dashes, 0, sizeof kinds / sizeof kinds[0]);
  tcase_add_loop_test (tests, much_enlarged_the_dashes_in_sight_stand_where_they_would_with_all_the_others, 0, 4);
  return run_suite (suite_create ("drawing line-kind"), tests);
}
