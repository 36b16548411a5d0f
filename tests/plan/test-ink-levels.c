#include <check.h>
#include <string.h>
#include "drawn-raster.h"
#include "plan/ink-levels.h"
#include "support/run-suite.h"

enum { WIDTH = 800, HEIGHT = 800, SMALL = 100, FACTOR = WIDTH / SMALL };

static Point
from_afar (Point window, const void *data)
{
  return point_scale (window, FACTOR);
}

static Point
as_it_is (Point window, const void *data)
{
  return window;
}

static Point
nowhere (Point window, const void *data)
{
  return window.x > 32 ? (Point) { NAN, NAN } : (Point) { window.x - 1000, window.y };
}

/* A line 3 px wide down the middle, black. */
static Ink *
one_line (void)
{
  const DrawnLine line = { { 404, 10 }, { 404, 790 }, 3, 1 };

  return drawn_ink (&line, 1, WIDTH, HEIGHT);
}

static int
strongest_in_row (const unsigned char *row, int count)
{
  int most = 0;

  for (int i = 0; i < count; i++)
    most = row[i] > most ? row[i] : most;
  return most;
}

START_TEST (a_thin_line_is_still_seen_from_afar)
{
  InkLevels *levels = ink_levels_new (one_line ()), *even = ink_levels_new_even (one_line ());
  const InkWindow window = { .to_file = from_afar };
  unsigned char shown[SMALL * SMALL], mean[SMALL * SMALL];

  ink_levels_show (levels, &window, SMALL, SMALL, SMALL, shown);
  ink_levels_show (even, &window, SMALL, SMALL, SMALL, mean);
  ck_assert_int_gt (strongest_in_row (shown + 50 * SMALL, SMALL), 150);
  ck_assert_int_lt (strongest_in_row (mean + 50 * SMALL, SMALL), 150);
  ck_assert_int_eq (shown[50 * SMALL + 10], 0);
  ink_levels_unref (levels);
  ink_levels_unref (even);
}
END_TEST

START_TEST (at_its_own_size_it_is_shown_as_it_is)
{
  InkLevels *levels = ink_levels_new (one_line ());
  const InkWindow window = { .to_file = as_it_is };
  unsigned char *shown = malloc (WIDTH * HEIGHT);

  ink_levels_show (levels, &window, WIDTH, HEIGHT, WIDTH, shown);
  for (int x = 380; x < 430; x++)
    ck_assert_int_le (abs (shown[400 * WIDTH + x] - ink_row (ink_levels_ink (levels), 400)[x]), 1);
  free (shown);
  ink_levels_unref (levels);
}
END_TEST

static int
all_of (const unsigned char *shown)
{
  int sum = 0;

  for (int i = 0; i < SMALL * SMALL; i++)
    sum += shown[i];
  return sum;
}

/* Aslant, so that a square of the window never lies as the picture's blocks do. */
static Point
aslant (Point window, const void *data)
{
  const double scale = *(const double *) data;

  return (Point) { 40 + scale * (0.96 * window.x - 0.28 * window.y), 100 + scale * (0.28 * window.x + 0.96 * window.y) };
}

/* Blank stretches are passed over: none of them may take a speck with it, wherever it lies and however small it is shown. */
START_TEST (a_speck_on_a_blank_sheet_is_seen_wherever_it_lies)
{
  for (int i = 0; i < 120; i++)
    {
      const Point at = { 180 + i * 7 % 97, 180 + i * 5 % 89 };
      const DrawnLine speck = { at, { at.x + 1, at.y }, 3, 1 };
      InkLevels *levels = ink_levels_new (drawn_ink (&speck, 1, 400, 400));
      const double scale = 0.7 + i % 4;
      const InkWindow window = { .to_file = aslant, .data = &scale };
      unsigned char shown[SMALL * SMALL];
      int all = 0;

      for (int y = 0; y < 400; y++)
        for (int x = 0; x < 400; x++)
          all += ink_row (ink_levels_ink (levels), y)[x];
      ink_levels_show (levels, &window, SMALL, SMALL, SMALL, shown);
      if (scale > 2)       /* then all of that corner is in the window */
        ck_assert_msg (all_of (shown) * scale * scale > 0.6 * all, "a speck at %g, %g is lost at %g", at.x, at.y, scale);
      ink_levels_unref (levels);
    }
}
END_TEST

START_TEST (beyond_the_picture_there_is_nothing)
{
  InkLevels *levels = ink_levels_new (one_line ());
  const InkWindow window = { .to_file = nowhere };
  unsigned char shown[SMALL * SMALL];

  memset (shown, 77, sizeof shown);
  ink_levels_show (levels, &window, SMALL, SMALL, SMALL, shown);
  for (int i = 0; i < SMALL * SMALL; i++)
    ck_assert_int_eq (shown[i], 0);
  ink_levels_unref (levels);
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("ink levels");
  TCase *tests = tcase_create ("ink levels");

  tcase_add_test (tests, a_thin_line_is_still_seen_from_afar);
  tcase_add_test (tests, at_its_own_size_it_is_shown_as_it_is);
  tcase_add_test (tests, a_speck_on_a_blank_sheet_is_seen_wherever_it_lies);
  tcase_add_test (tests, beyond_the_picture_there_is_nothing);
  return run_suite (suite, tests);
}
