#include <check.h>
#include <math.h>
#include "drawn-raster.h"
#include "plan/follow.h"
#include "support/run-suite.h"

/* At 8 px a mm: a line 3.2 px wide from left to right, a little askew, and what is beside it. Common practice, no source. */
enum { WIDTH = 560, HEIGHT = 240, PX_PER_MM = 8 };
#define LINE_WIDTH 3.2
static const Point from = { 30, 100.3 }, to = { 530, 121.8 };
static const Point clicks[] = { { 31, 103 }, { 280, 108.5 }, { 529, 124 } };

static FollowedLine
followed (const DrawnLine lines[], size_t count)
{
  const FollowOptions options = { .px_per_mm = PX_PER_MM, .click_sigma = 2 };
  Ink *ink = drawn_ink (lines, count, WIDTH, HEIGHT);
  FollowedLine line;

  ck_assert_int_eq (follow_line (ink, clicks, 3, &options, &line), CORE_OK);
  ink_unref (ink);
  return line;
}

/* How far its places are off the line, px: the worst of those that are trusted. */
static double
worst_off (const FollowedLine *line, double trusted)
{
  const DrawnLine wanted = { from, to, 1, 1 };
  double worst = 0;

  for (size_t i = 0; i < line->count; i++)
    if (line->weights[i] >= trusted)
      worst = fmax (worst, drawn_distance (line->places[i], &wanted));
  return worst;
}

static double
trust_between (const FollowedLine *line, double x_from, double x_to)
{
  double sum = 0;
  int count = 0;

  for (size_t i = 0; i < line->count; i++)
    if (line->places[i].x >= x_from && line->places[i].x <= x_to)
      sum += line->weights[i], count++;
  ck_assert_int_gt (count, 0);
  return sum / count;
}

START_TEST (a_line_is_followed_to_a_tenth_of_a_pixel_from_clicks_beside_it)
{
  const DrawnLine lines[] = { { from, to, LINE_WIDTH, 1 } };
  FollowedLine line = followed (lines, 1);

  ck_assert_double_lt (worst_off (&line, 0.5), 0.1);
  ck_assert_double_gt (trust_between (&line, 60, 500), 0.9);
  ck_assert_double_eq_tol (line.half_width, LINE_WIDTH / 2, 0.8);
  ck_assert_double_lt (point_distance (line.places[0], from), 4);
  ck_assert_double_lt (point_distance (line.places[line.count - 1], to), 4);
  for (size_t i = 1; i < line.count; i++)
    ck_assert_double_lt (point_distance (line.places[i], line.places[i - 1]), 1.6);
  followed_line_clear (&line);
}
END_TEST

/* Between few clicks the line lies far from the straight way, where a broad shade does: what is seen there is no line's width. */
START_TEST (a_bent_line_between_two_clicks_is_as_wide_as_it_is_and_trusted)
{
  enum { PIECES = 50 };
  const FollowOptions options = { .px_per_mm = PX_PER_MM, .click_sigma = 2 };
  DrawnLine lines[PIECES + 1] = { { { 30, 160 }, { 530, 160 }, 24, 0.2 } };
  FollowedLine line;
  Ink *ink;

  for (int i = 0; i < PIECES; i++)
    lines[i + 1] = (DrawnLine) { { 30 + 10 * i, 160 - 40 * sin (M_PI * i / PIECES) }, { 40 + 10 * i, 160 - 40 * sin (M_PI * (i + 1) / PIECES) },
                                 LINE_WIDTH, 1 };
  ink = drawn_ink (lines, PIECES + 1, WIDTH, HEIGHT);
  ck_assert_int_eq (follow_line (ink, (Point[]) { { 31, 160 }, { 529, 160 } }, 2, &options, &line), CORE_OK);
  ck_assert_double_eq_tol (line.half_width, LINE_WIDTH / 2, 0.8);
  ck_assert_double_gt (trust_between (&line, 150, 410), 0.9);
  followed_line_clear (&line);
  ink_unref (ink);
}
END_TEST

START_TEST (a_gap_is_bridged_and_not_trusted)
{
  const DrawnLine lines[] = { { from, point_mix (from, to, 0.5), LINE_WIDTH, 1 }, { point_mix (from, to, 0.6), to, LINE_WIDTH, 1 } };
  FollowedLine line = followed (lines, 2);

  ck_assert_double_lt (worst_off (&line, 0), 2);
  ck_assert_double_lt (worst_off (&line, 0.5), 0.25);
  ck_assert_double_lt (trust_between (&line, 300, 310), 0.2);
  ck_assert_double_gt (trust_between (&line, 100, 260), 0.9);
  followed_line_clear (&line);
}
END_TEST

START_TEST (ribs_that_cross_do_not_lead_away)
{
  DrawnLine lines[8] = { { from, to, LINE_WIDTH, 1 } };

  for (int i = 1; i < 8; i++)
    lines[i] = (DrawnLine) { { 60 * i + 20, 10 }, { 60 * i + 28, 230 }, LINE_WIDTH, 1 };
  FollowedLine line = followed (lines, 8);
  ck_assert_double_lt (worst_off (&line, 0), 1);
  ck_assert_double_lt (worst_off (&line, 0.5), 0.3);
  followed_line_clear (&line);
}
END_TEST

/* The inner line of a double outline, 3 mm inside and just as dark, goes on where the outline has a gap. */
START_TEST (the_line_beside_is_not_taken_even_at_a_gap)
{
  const Point beside = { 0, 3 * PX_PER_MM };
  const DrawnLine lines[] = {
    { from, point_mix (from, to, 0.55), LINE_WIDTH, 1 }, { point_mix (from, to, 0.62), to, LINE_WIDTH, 1 },
    { point_add (from, beside), point_add (to, beside), LINE_WIDTH, 1 },
  };
  FollowedLine line = followed (lines, 3);

  ck_assert_double_lt (worst_off (&line, 0), 2);
  followed_line_clear (&line);
}
END_TEST

START_TEST (blank_paper_is_followed_but_not_trusted)
{
  FollowedLine line = followed (NULL, 0);

  ck_assert_double_lt (trust_between (&line, 40, 520), 0.05);
  followed_line_clear (&line);
}
END_TEST

static bool
never (double done, void *data)
{
  (void) done, (void) data;
  return false;
}

START_TEST (what_cannot_be_followed_says_why)
{
  const DrawnLine lines[] = { { from, to, LINE_WIDTH, 1 } };
  const Point nowhere[] = { { 30, 100 }, { NAN, 110 } }, beyond[] = { { 30, 100 }, { 60000, 110 } };
  const double scales[] = { 0, -1, NAN, 1e-300, 1e-4, 1e4, 1e300, INFINITY };
  const FollowOptions options = { .px_per_mm = PX_PER_MM, .click_sigma = 2 };
  const FollowOptions hasty = { .px_per_mm = PX_PER_MM, .click_sigma = 2, .goes_on = never };
  Ink *ink = drawn_ink (lines, 1, WIDTH, HEIGHT);
  FollowedLine line;

  ck_assert_int_eq (follow_line (ink, clicks, 1, &options, &line), CORE_TOO_FEW_NODES);
  ck_assert_int_eq (follow_line (ink, nowhere, 2, &options, &line), CORE_NOT_FINITE);
  ck_assert_int_eq (follow_line (ink, beyond, 2, &options, &line), CORE_OUT_OF_RANGE);
  for (size_t i = 0; i < sizeof scales / sizeof *scales; i++)
    {
      const FollowOptions wrong = { .px_per_mm = scales[i], .click_sigma = 2 };
      ck_assert_int_eq (follow_line (ink, clicks, 3, &wrong, &line), CORE_OUT_OF_RANGE);
    }
  ck_assert_int_eq (follow_line (ink, clicks, 3, &hasty, &line), CORE_CANCELLED);
  ink_unref (ink);
}
END_TEST

/* Down and away by `degrees`, sharp. */
static const Point corner = { 300, 60 };

static Point
beyond_corner (double degrees, double length)
{
  return (Point) { corner.x + length * cos (degrees * M_PI / 180), corner.y + length * sin (degrees * M_PI / 180) };
}

static const double corners[] = { 25, 45, 76, 90, 110 };

START_TEST (a_sharp_corner_is_not_cut)
{
  const Point end = beyond_corner (corners[_i], 160), start = { 60, 60 };
  const DrawnLine lines[] = { { start, corner, LINE_WIDTH, 1 }, { corner, end, LINE_WIDTH, 1 } };
  const Point clicked[] = { { 61, 61.5 }, { 180, 59 }, { 302, 59 }, { end.x + 1, end.y - 1 } };
  const FollowOptions options = { .px_per_mm = PX_PER_MM, .click_sigma = 2 };
  Ink *ink = drawn_ink (lines, 2, WIDTH, HEIGHT);
  FollowedLine line;
  double nearest = INFINITY, worst = 0;

  ck_assert_int_eq (follow_line (ink, clicked, 4, &options, &line), CORE_OK);
  for (size_t i = 0; i < line.count; i++)
    {
      nearest = fmin (nearest, point_distance (line.places[i], corner));
      worst = fmax (worst, fmin (drawn_distance (line.places[i], &lines[0]), drawn_distance (line.places[i], &lines[1])));
    }
  ck_assert_double_lt (nearest, 1);
  ck_assert_double_lt (worst, 1);
  followed_line_clear (&line);
  ink_unref (ink);
}
END_TEST

static const double radii[] = { 2, 4, 10 };      /* mm */

START_TEST (a_round_corner_is_not_made_sharp)
{
  enum { PIECES = 24 };
  const double r = radii[_i] * PX_PER_MM;
  const Point middle = { corner.x - r, corner.y + r };
  DrawnLine lines[PIECES + 2] = { { { 60, corner.y }, { middle.x, corner.y }, LINE_WIDTH, 1 },
                                  { { corner.x, middle.y }, { corner.x, 220 }, LINE_WIDTH, 1 } };
  const Point clicked[] = { { 61, 61.5 }, { 150, 59 }, { middle.x + r * M_SQRT1_2 + 1, middle.y - r * M_SQRT1_2 }, { 301, 219 } };
  const FollowOptions options = { .px_per_mm = PX_PER_MM, .click_sigma = 2 };
  FollowedLine line;
  double worst = 0;

  for (int i = 0; i < PIECES; i++)
    {
      const double a = M_PI / 2 * i / PIECES, b = M_PI / 2 * (i + 1) / PIECES;
      lines[i + 2] = (DrawnLine) { { middle.x + r * sin (a), middle.y - r * cos (a) }, { middle.x + r * sin (b), middle.y - r * cos (b) },
                                   LINE_WIDTH, 1 };
    }
  Ink *ink = drawn_ink (lines, PIECES + 2, WIDTH, HEIGHT);
  ck_assert_int_eq (follow_line (ink, clicked, 4, &options, &line), CORE_OK);
  for (size_t i = 0; i < line.count; i++)
    {
      double off = INFINITY;
      for (int j = 0; j < PIECES + 2; j++)
        off = fmin (off, drawn_distance (line.places[i], &lines[j]));
      worst = fmax (worst, off);
    }
  ck_assert_double_lt (worst, 1.6);      /* a fifth of a millimetre */
  followed_line_clear (&line);
  ink_unref (ink);
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("follow");
  TCase *tests = tcase_create ("a printed line");

  tcase_add_test (tests, a_line_is_followed_to_a_tenth_of_a_pixel_from_clicks_beside_it);
  tcase_add_test (tests, a_bent_line_between_two_clicks_is_as_wide_as_it_is_and_trusted);
  tcase_add_test (tests, a_gap_is_bridged_and_not_trusted);
  tcase_add_test (tests, ribs_that_cross_do_not_lead_away);
  tcase_add_test (tests, the_line_beside_is_not_taken_even_at_a_gap);
  tcase_add_test (tests, blank_paper_is_followed_but_not_trusted);
  tcase_add_loop_test (tests, a_sharp_corner_is_not_cut, 0, sizeof corners / sizeof *corners);
  tcase_add_loop_test (tests, a_round_corner_is_not_made_sharp, 0, sizeof radii / sizeof *radii);
  tcase_add_test (tests, what_cannot_be_followed_says_why);
  return run_suite (suite, tests);
}
