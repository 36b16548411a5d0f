/* How an outline lies over its printed line, and the mean of two halves. */
#include <math.h>
#include "plan/compare.h"
#include "plan/halves.h"
#include "support/drawn-ink.h"
#include "support/run-suite.h"
#include "support/shapes.h"

enum { WIDTH = 700, HEIGHT = 320 };
static const double SCALE = 6;                       /* px a mm */
static const Point AXIS = { 30, 60 };                /* px */
static const Mapping paper = { .h = { 1 / 6.0, 0, 0, 0, 1 / 6.0, 0, 0, 0, 1 }, .lens_radius = 400 };

static Outline *
taper (double tip_chord)
{
  return polygon_from ((const Point[]) { { 5, 0 }, { 9, 100 }, { 9 + tip_chord, 100 }, { 35, 0 } }, 4);
}

static Ink *
ink_of (const Outline *outline)
{
  static Point places[DRAWN_ROOM];
  const DrawnLine line = { places, places_of_outline (outline, SCALE, AXIS, places), 3 };

  return ink_of_lines (WIDTH, HEIGHT, &line, 1);
}

static Comparison
compared (const Ink *ink, const Outline *outline)
{
  const CompareRequest request = { .mapping = &paper, .frame = { .fore = { AXIS.x / SCALE, AXIS.y / SCALE }, .along = { 0, 1 }, .side = 1 },
                                   .outline = outline, .half = true };
  Comparison comparison;

  ck_assert_int_eq (compare_outline (ink, &request, &comparison), CORE_OK);
  return comparison;
}

START_TEST (an_outline_on_its_line_lies_within_a_tenth_of_a_millimetre_everywhere)
{
  Outline *outline = taper (20);
  Ink *ink = ink_of (outline);
  Comparison comparison = compared (ink, outline);

  ck_assert_double_lt (comparison.within, 0.06);
  ck_assert_double_lt (comparison.most, 0.2);
  ck_assert_double_gt (comparison.seen, 0.97);
  comparison_clear (&comparison);
  ink_unref (ink);
  outline_unref (outline);
}
END_TEST

START_TEST (a_node_pulled_off_the_line_is_found_where_it_stands)
{
  Outline *printed = taper (20), *drawn = taper (20.8);
  Ink *ink = ink_of (printed);
  Comparison comparison = compared (ink, drawn);

  ck_assert_double_eq_tol (comparison.most, 0.8, 0.1);
  ck_assert_double_gt (comparison.most_at.y, 90);
  ck_assert_double_gt (comparison.most_at.x, 20);
  for (size_t i = 0; i < comparison.count; i++)
    if (comparison.spots[i].drawn.x < 15)
      ck_assert_double_lt (comparison.spots[i].off, 0.12);
  comparison_clear (&comparison);
  ink_unref (ink);
  outline_unref (printed);
  outline_unref (drawn);
}
END_TEST

START_TEST (where_nothing_is_printed_nothing_is_seen_and_no_figure_made_up)
{
  Outline *outline = taper (20), *elsewhere = polygon_from ((const Point[]) { { 41, 0 }, { 41, 100 } }, 2);
  Ink *ink = ink_of (elsewhere);
  Comparison comparison = compared (ink, outline);

  ck_assert_double_lt (comparison.seen, 0.1);
  comparison_clear (&comparison);
  ink_unref (ink);
  outline_unref (outline);
  outline_unref (elsewhere);
}
END_TEST

START_TEST (an_outline_beyond_the_picture_cannot_be_compared)
{
  Outline *outline = polygon_from ((const Point[]) { { 500, 0 }, { 500, 100 }, { 540, 0 } }, 3);
  Outline *printed = taper (20);
  Ink *ink = ink_of (printed);
  const CompareRequest request = { .mapping = &paper, .frame = { .along = { 0, 1 }, .side = 1 }, .outline = outline, .half = true };
  Comparison comparison;

  ck_assert_int_eq (compare_outline (ink, &request, &comparison), CORE_OUT_OF_RANGE);
  ink_unref (ink);
  outline_unref (outline);
  outline_unref (printed);
}
END_TEST

START_TEST (two_halves_are_averaged_and_where_they_differ_most_is_told)
{
  Outline *starboard = taper (20), *port = taper (22), *between = taper (21), *mean;
  HalvesDifference difference;

  ck_assert_int_eq (halves_mean (starboard, port, 0.07, &mean, &difference), CORE_OK);
  ck_assert_double_eq_tol (difference.most, 2, 0.1);
  ck_assert_double_gt (difference.at.y, 90);
  ck_assert_double_eq_tol (outline_node (mean, 0).y, 0, 1e-9);
  for (size_t i = 0; i < outline_node_count (mean); i++)
    {
      size_t segment;
      double t;
      ck_assert_double_lt (outline_nearest (between, outline_node (mean, i), &segment, &t), 0.15);
    }
  outline_unref (starboard);
  outline_unref (port);
  outline_unref (between);
  outline_unref (mean);
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("plan compare");
  TCase *tcase = tcase_create ("compare");

  tcase_add_test (tcase, an_outline_on_its_line_lies_within_a_tenth_of_a_millimetre_everywhere);
  tcase_add_test (tcase, a_node_pulled_off_the_line_is_found_where_it_stands);
  tcase_add_test (tcase, where_nothing_is_printed_nothing_is_seen_and_no_figure_made_up);
  tcase_add_test (tcase, an_outline_beyond_the_picture_cannot_be_compared);
  tcase_add_test (tcase, two_halves_are_averaged_and_where_they_differ_most_is_told);
  return run_suite (suite, tcase);
}
