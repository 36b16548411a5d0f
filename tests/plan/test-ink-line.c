#include "plan/ink-line.h"
#include <check.h>
#include "drawn-raster.h"
#include "support/run-suite.h"

enum { WIDTH = 420, HEIGHT = 140 };

static bool
found (const DrawnLine lines[], size_t count, Point near, double reach, Point *place)
{
  Ink *ink = drawn_ink (lines, count, WIDTH, HEIGHT);
  const bool is = ink_line (ink, near, reach, place);

  ink_unref (ink);
  return is;
}

/* The line is drawn, so its middle is known exactly. Slanted and upright, thin and bold. */
static const DrawnLine drawn[] = {
  { { 20, 60.4 }, { 400, 72.9 }, 2, 1 },
  { { 20, 60.4 }, { 400, 72.9 }, 4.5, 1 },
  { { 203.3, 5 }, { 198.8, 135 }, 3, 1 },
  { { 120, 10 }, { 300, 130 }, 3, 0.4 },
};

START_TEST (beside_a_line_its_middle_is_found_to_a_quarter_of_a_pixel)
{
  const DrawnLine *line = &drawn[_i / 2];
  const Point way = point_sub (line->b, line->a), across = point_scale ((Point) { -way.y, way.x }, 1 / hypot (way.x, way.y));
  const Point near = point_add (point_mix (line->a, line->b, 0.43), point_scale (across, _i % 2 ? 9.3 : -6.1));
  Point place;

  ck_assert (found (line, 1, near, 14, &place));
  ck_assert_double_le (drawn_distance (place, line), 0.25);
  ck_assert_double_le (point_distance (place, near), 11);
}
END_TEST

START_TEST (of_two_lines_the_nearer_is_taken_though_the_other_is_bolder)
{
  const DrawnLine lines[] = { { { 20, 60 }, { 400, 60 }, 2, 0.6 }, { { 20, 80 }, { 400, 80 }, 4.5, 1 } };
  Point place;

  ck_assert (found (lines, 2, (Point) { 200, 66 }, 30, &place));
  ck_assert_double_eq_tol (place.y, 60, 0.25);
  ck_assert_double_eq_tol (place.x, 200, 1.5);
  ck_assert (found (lines, 2, (Point) { 200, 74 }, 30, &place));
  ck_assert_double_eq_tol (place.y, 80, 0.25);
}
END_TEST

START_TEST (on_bare_paper_and_out_of_reach_there_is_none)
{
  const DrawnLine line = { { 20, 60 }, { 400, 60 }, 3, 1 };
  Point place = { 1, 2 };

  ck_assert (!found (&line, 1, (Point) { 200, 110 }, 30, &place));
  ck_assert (!found (&line, 1, (Point) { 200, 80 }, 12, &place));
  ck_assert (!found (&line, 1, (Point) { NAN, 60 }, 12, &place));
  ck_assert (!found (&line, 1, (Point) { 900, 900 }, 12, &place));
  ck_assert_double_eq (place.x, 1);
}
END_TEST

START_TEST (in_a_reduced_picture_the_place_is_the_files)
{
  enum { REDUCED = 3 };
  const DrawnLine line = { { 20, 60.4 }, { 400, 60.4 }, 3, 1 };
  unsigned char *pixels = malloc (WIDTH * HEIGHT);
  Point place;
  Ink *ink;

  for (int y = 0; y < HEIGHT; y++)
    for (int x = 0; x < WIDTH; x++)
      pixels[y * WIDTH + x] = (unsigned char) lround (240 - 200 * drawn_cover (&line, 1, x, y));
  Raster *raster = raster_new (WIDTH, HEIGHT, 1, REDUCED, pixels);
  ck_assert_int_eq (ink_new (raster, NULL, NULL, &ink), CORE_OK);
  ck_assert (ink_line (ink, (Point) { 200 * REDUCED, 66 * REDUCED }, 10 * REDUCED, &place));
  ck_assert_double_eq_tol (place.y, 60.4 * REDUCED, 0.25 * REDUCED);
  ink_unref (ink);
  raster_unref (raster);
}
END_TEST

static double
share (const DrawnLine lines[], size_t count, Point a, Point b)
{
  Ink *ink = drawn_ink (lines, count, WIDTH, HEIGHT);
  const double found = ink_share_between (ink, a, b, 4);

  ink_unref (ink);
  return found;
}

START_TEST (between_two_places_the_share_that_is_printed_is_told)
{
  const DrawnLine line = { { 20, 60 }, { 400, 60 }, 3, 1 }, half = { { 20, 60 }, { 210, 60 }, 3, 1 };

  ck_assert_double_eq (share (&line, 1, (Point) { 40, 62 }, (Point) { 390, 57 }), 1);
  ck_assert_double_eq_tol (share (&half, 1, (Point) { 20, 62 }, (Point) { 400, 57 }), 0.5, 0.03);
  ck_assert_double_eq (share (&line, 1, (Point) { 40, 100 }, (Point) { 390, 110 }), 0);
  ck_assert_double_eq (share (&line, 1, (Point) { 40, 60 }, (Point) { 40, 60 }), 0);
  ck_assert_double_eq (share (&line, 1, (Point) { NAN, 60 }, (Point) { 40, 60 }), 0);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("nearest line");

  tcase_add_loop_test (tests, beside_a_line_its_middle_is_found_to_a_quarter_of_a_pixel, 0, 2 * sizeof drawn / sizeof *drawn);
  tcase_add_test (tests, of_two_lines_the_nearer_is_taken_though_the_other_is_bolder);
  tcase_add_test (tests, on_bare_paper_and_out_of_reach_there_is_none);
  tcase_add_test (tests, between_two_places_the_share_that_is_printed_is_told);
  tcase_add_test (tests, in_a_reduced_picture_the_place_is_the_files);
  return run_suite (suite_create ("ink-line"), tests);
}
