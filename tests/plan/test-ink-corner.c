#include "plan/ink-corner.h"
#include <check.h>
#include "drawn-raster.h"
#include "support/run-suite.h"

/* Two lines that cross at (60.3, 50.7), one askew; a corner of two lines; the end of one. */
static const DrawnLine crossing[] = { { { 10, 50.7 }, { 110, 50.7 }, 3, 1 }, { { 55.3, 0.7 }, { 65.3, 100.7 }, 3, 1 } };
static const DrawnLine corner[] = { { { 40.25, 30.5 }, { 110, 30.5 }, 3, 1 }, { { 40.25, 30.5 }, { 40.25, 95 }, 3, 1 } };
static const DrawnLine dash[] = { { { 30.5, 50.5 }, { 80.5, 50.5 }, 4, 1 } };

static bool
found (const DrawnLine lines[], size_t count, Point near, double reach, Point *place)
{
  Ink *ink = drawn_ink (lines, count, 128, 110);
  const bool is = ink_corner (ink, near, reach, place);

  ink_unref (ink);
  return is;
}

static void
assert_near (Point got, Point wanted, double tolerance)
{
  ck_assert_msg (point_distance (got, wanted) <= tolerance, "(%g, %g), wanted (%g, %g)", got.x, got.y, wanted.x, wanted.y);
}

START_TEST (a_crossing_is_found_from_six_pixels_off)
{
  static const Point offs[] = { { 6, 0 }, { -4, 4 }, { 0, -6 }, { 0.2, 0.1 } };
  const Point truth = { 60.3, 50.7 };
  Point place;

  ck_assert (found (crossing, 2, point_add (truth, offs[_i]), 10, &place));
  assert_near (place, truth, 0.15);
}
END_TEST

START_TEST (a_corner_is_found_where_the_middles_of_its_lines_meet)
{
  Point place;

  ck_assert (found (corner, 2, (Point) { 44, 27 }, 10, &place));
  assert_near (place, (Point) { 40.25, 30.5 }, 0.4);
}
END_TEST

START_TEST (where_a_line_ends_on_another_the_middles_of_both_meet)
{
  const DrawnLine lines[] = { { { 60.3, 20 }, { 60.3, 90 }, 3, 1 }, { { 60.3, 50.7 }, { 110, 50.7 }, 3, 1 } };
  Point place;

  ck_assert (found (lines, 2, (Point) { 64, 46 }, 10, &place));
  assert_near (place, (Point) { 60.3, 50.7 }, 0.4);
}
END_TEST

START_TEST (the_end_of_a_line_is_found_on_its_middle)
{
  Point place;

  ck_assert (found (dash, 1, (Point) { 84, 48 }, 10, &place));
  ck_assert_double_eq_tol (place.y, 50.5, 0.2);
  ck_assert_double_eq_tol (place.x, 81.5, 1.5);           /* a round end of half the width */
}
END_TEST

START_TEST (a_line_that_goes_on_straight_and_bare_paper_have_none)
{
  Point place = { 1, 2 };

  ck_assert (!found (crossing, 2, (Point) { 25, 52 }, 10, &place));
  ck_assert (!found (crossing, 2, (Point) { 100, 90 }, 10, &place));
  ck_assert (!found (crossing, 2, (Point) { NAN, 90 }, 10, &place));
  ck_assert_double_eq (place.x, 1);
}
END_TEST

START_TEST (what_lies_beyond_reach_is_not_taken)
{
  Point place;

  ck_assert (!found (crossing, 2, (Point) { 70, 51 }, 4, &place));
}
END_TEST

START_TEST (a_picture_of_reduced_pixels_answers_in_the_file_s)
{
  unsigned char *pixels = malloc (128 * 110);
  Point place;
  Ink *ink;

  for (int y = 0; y < 110; y++)
    for (int x = 0; x < 128; x++)
      pixels[y * 128 + x] = (unsigned char) lround (240 - 200 * drawn_cover (crossing, 2, x, y));
  Raster *raster = raster_new (128, 110, 1, 4, pixels);
  ck_assert_int_eq (ink_new (raster, NULL, NULL, &ink), CORE_OK);
  raster_unref (raster);
  ck_assert (ink_corner (ink, (Point) { 4 * 63, 4 * 53 }, 40, &place));
  assert_near (place, (Point) { 4 * 60.3, 4 * 50.7 }, 0.6);
  ink_unref (ink);
}
END_TEST

/* A figure seven before the end of a dimension line, on its extension line. */
static const DrawnLine dimension[] = { { { 90.3, 10 }, { 90.3, 100 }, 3, 1 }, { { 8, 60.7 }, { 90.3, 60.7 }, 3, 1 },
                                       { { 62, 36 }, { 74, 36 }, 3, 1 }, { { 74, 36 }, { 66, 54 }, 3, 1 } };

START_TEST (a_dimension_line_s_end_is_found_beside_a_figure_and_no_corner_of_the_figure)
{
  Ink *ink = drawn_ink (dimension, 4, 128, 110);
  Point place;

  ck_assert (ink_corner (ink, (Point) { 78, 44 }, 24, &place));
  ck_assert_double_lt (place.y, 57);
  ck_assert (ink_line_corner (ink, (Point) { 78, 44 }, 24, 30, &place));
  assert_near (place, (Point) { 90.3, 60.7 }, 0.4);
  ck_assert (!ink_line_corner (ink, (Point) { 70, 40 }, 14, 30, &place));
  ink_unref (ink);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("corners of printed lines");

  tcase_add_loop_test (tests, a_crossing_is_found_from_six_pixels_off, 0, 4);
  tcase_add_test (tests, a_corner_is_found_where_the_middles_of_its_lines_meet);
  tcase_add_test (tests, where_a_line_ends_on_another_the_middles_of_both_meet);
  tcase_add_test (tests, the_end_of_a_line_is_found_on_its_middle);
  tcase_add_test (tests, a_line_that_goes_on_straight_and_bare_paper_have_none);
  tcase_add_test (tests, what_lies_beyond_reach_is_not_taken);
  tcase_add_test (tests, a_dimension_line_s_end_is_found_beside_a_figure_and_no_corner_of_the_figure);
  tcase_add_test (tests, a_picture_of_reduced_pixels_answers_in_the_file_s);
  return run_suite (suite_create ("ink-corner"), tests);
}
