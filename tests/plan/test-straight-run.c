#include "plan/straight-run.h"
#include <check.h>
#include "drawn-raster.h"
#include "support/run-suite.h"

enum { WIDTH = 420, HEIGHT = 140 };

static bool
found (const DrawnLine lines[], size_t count, Point a, Point b, StraightRun *run)
{
  Ink *ink = drawn_ink (lines, count, WIDTH, HEIGHT);
  const bool is = straight_run (ink, a, b, 8, run);

  ink_unref (ink);
  return is;
}

/* How far a place lies off the line through a and b. */
static double
off_line (Point place, Point a, Point b)
{
  const Point way = point_sub (b, a), off = point_sub (place, a);

  return fabs (off.x * way.y - off.y * way.x) / hypot (way.x, way.y);
}

START_TEST (the_line_beside_two_clicks_is_found_to_a_tenth_of_a_pixel)
{
  const DrawnLine line = { { 20, 60.4 }, { 400, 72.9 }, 3, 1 };
  StraightRun run;

  ck_assert (found (&line, 1, (Point) { 40, 63.4 }, (Point) { 380, 70.1 }, &run));
  ck_assert_double_le (off_line (run.from, line.a, line.b), 0.1);
  ck_assert_double_le (off_line (run.to, line.a, line.b), 0.1);
  ck_assert_double_le (run.bend, 0.1);
  for (int i = 0; i < STRAIGHT_RUN_PLACES; i++)
    ck_assert_double_le (off_line (run.places[i], line.a, line.b), 0.15);
  /* Beside the clicks: nothing is made longer. */
  ck_assert_double_le (point_distance (run.from, (Point) { 40, 63.4 }), 4);
  ck_assert_double_le (point_distance (run.to, (Point) { 380, 70.1 }), 4);
}
END_TEST

START_TEST (in_a_reduced_picture_places_are_still_the_files)
{
  enum { REDUCED = 3 };
  const DrawnLine line = { { 20, 60.4 }, { 400, 72.9 }, 3, 1 };
  unsigned char *pixels = malloc (WIDTH * HEIGHT);
  Ink *ink;
  StraightRun run;

  for (int y = 0; y < HEIGHT; y++)
    for (int x = 0; x < WIDTH; x++)
      pixels[y * WIDTH + x] = (unsigned char) lround (240 - 200 * drawn_cover (&line, 1, x, y));
  Raster *raster = raster_new (WIDTH, HEIGHT, 1, REDUCED, pixels);
  ck_assert_int_eq (ink_new (raster, NULL, NULL, &ink), CORE_OK);
  ck_assert (straight_run (ink, (Point) { 40 * REDUCED, 63.4 * REDUCED }, (Point) { 380 * REDUCED, 70.1 * REDUCED }, 8 * REDUCED, &run));
  ck_assert_double_le (off_line (point_scale (run.from, 1.0 / REDUCED), line.a, line.b), 0.15);
  ck_assert_double_le (off_line (point_scale (run.to, 1.0 / REDUCED), line.a, line.b), 0.15);
  ink_unref (ink);
  raster_unref (raster);
}
END_TEST

START_TEST (a_centre_line_of_long_and_short_dashes_is_one_line)
{
  DrawnLine dashes[32];
  size_t count = 0;
  StraightRun run;

  for (double x = 20; x < 380; x += 40)
    {
      dashes[count++] = (DrawnLine) { { x, 60.4 }, { x + 24, 60.4 }, 2.5, 1 };
      dashes[count++] = (DrawnLine) { { x + 30, 60.4 }, { x + 34, 60.4 }, 2.5, 1 };
    }
  ck_assert (found (dashes, count, (Point) { 25, 62 }, (Point) { 375, 59 }, &run));
  ck_assert_double_eq_tol (run.from.y, 60.4, 0.15);
  ck_assert_double_eq_tol (run.to.y, 60.4, 0.15);
}
END_TEST

START_TEST (a_line_that_a_lens_bent_says_by_how_much)
{
  DrawnLine pieces[38];
  StraightRun run;

  /* A parabola whose middle lies 3 px off its chord. */
  for (int i = 0; i < 38; i++)
    {
      const double t0 = i / 38.0, t1 = (i + 1) / 38.0;
      pieces[i] = (DrawnLine) { { 20 + 380 * t0, 60 + 12 * t0 * (1 - t0) }, { 20 + 380 * t1, 60 + 12 * t1 * (1 - t1) }, 3, 1 };
    }
  ck_assert (found (pieces, 38, (Point) { 20, 61 }, (Point) { 400, 59 }, &run));
  ck_assert_double_eq_tol (run.bend, 3, 0.2);
  ck_assert_double_eq_tol (run.places[STRAIGHT_RUN_PLACES / 2].y, 63, 0.2);
}
END_TEST

START_TEST (bare_paper_a_curve_and_a_line_that_ends_are_no_straight_line)
{
  const DrawnLine half = { { 20, 60 }, { 160, 60 }, 3, 1 };
  DrawnLine wave[38];
  StraightRun run;

  for (int i = 0; i < 38; i++)
    wave[i] = (DrawnLine) { { 20 + 10 * i, 60 + 9 * sin (i / 4.0) }, { 30 + 10 * i, 60 + 9 * sin ((i + 1) / 4.0) }, 3, 1 };
  ck_assert (!found (&half, 1, (Point) { 30, 110 }, (Point) { 390, 110 }, &run));
  ck_assert (!found (&half, 1, (Point) { 30, 60 }, (Point) { 390, 60 }, &run));
  ck_assert (!found (wave, 38, (Point) { 20, 60 }, (Point) { 400, 60 }, &run));
}
END_TEST

START_TEST (two_clicks_at_one_place_or_nowhere_are_no_line)
{
  const DrawnLine line = { { 20, 60 }, { 400, 60 }, 3, 1 };
  StraightRun run;

  ck_assert (!found (&line, 1, (Point) { 60, 60 }, (Point) { 60, 60 }, &run));
  ck_assert (!found (&line, 1, (Point) { NAN, 60 }, (Point) { 60, 60 }, &run));
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("straight lines");

  tcase_add_test (tests, in_a_reduced_picture_places_are_still_the_files);
  tcase_add_test (tests, the_line_beside_two_clicks_is_found_to_a_tenth_of_a_pixel);
  tcase_add_test (tests, a_centre_line_of_long_and_short_dashes_is_one_line);
  tcase_add_test (tests, a_line_that_a_lens_bent_says_by_how_much);
  tcase_add_test (tests, bare_paper_a_curve_and_a_line_that_ends_are_no_straight_line);
  tcase_add_test (tests, two_clicks_at_one_place_or_nowhere_are_no_line);
  return run_suite (suite_create ("straight-run"), tests);
}
