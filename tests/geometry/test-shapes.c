#include <check.h>
#include "geometry/shapes.h"
#include "support/run-suite.h"
#include "support/shapes.h"

enum { MOST = 4 };

static const struct { const char *because; CoreStatus expected; size_t count; double station[MOST], leading[MOST], chord[MOST]; } refused[] = {
  { .because = "one station is no wing", .expected = CORE_OUT_OF_RANGE, .count = 1, .chord = { 100 } },
  { .because = "stations must rise", .expected = CORE_OUT_OF_RANGE, .count = 3, .station = { 0, 200, 200 }, .chord = { 90, 80, 70 } },
  { .because = "a chord below 0 is none", .expected = CORE_OUT_OF_RANGE, .count = 2, .station = { 0, 200 }, .chord = { 90, -1 } },
  { .because = "only the tip may be pointed", .expected = CORE_OUT_OF_RANGE, .count = 2, .station = { 0, 200 }, .chord = { 0, 70 } },
  { .because = "NaN is no chord", .expected = CORE_NOT_FINITE, .count = 2, .station = { 0, 200 }, .chord = { 90, NAN } },
  { .because = "infinity is no station", .expected = CORE_NOT_FINITE, .count = 2, .station = { 0, INFINITY }, .chord = { 90, 80 } },
};

START_TEST (a_taper_that_cannot_be_is_refused)
{
  Outline *made = NULL;
  const CoreStatus status = shape_taper (refused[_i].station, refused[_i].leading, refused[_i].chord, refused[_i].count, &made);

  ck_assert_msg (status == refused[_i].expected, "%s: %s", refused[_i].because, core_status_sentence (status));
  ck_assert_ptr_null (made);
}
END_TEST

START_TEST (a_taper_runs_out_along_the_leading_edge_and_back_along_the_trailing_edge)
{
  Outline *wing = taper_from ((const double[]) { 11, 211, 437 }, (const double[]) { 3, 17, 61 }, (const double[]) { 191, 163, 71 }, 3);
  const Point wanted[] = { { 3, 11 }, { 17, 211 }, { 61, 437 }, { 132, 437 }, { 180, 211 }, { 194, 11 } };

  ck_assert_uint_eq (outline_node_count (wing), 6);
  for (size_t i = 0; i < 6; i++)
    ck_assert (outline_node (wing, i).x == wanted[i].x && outline_node (wing, i).y == wanted[i].y);
  ck_assert_int_eq (outline_check (wing, NULL), CORE_OK);
  outline_unref (wing);
}
END_TEST

START_TEST (a_pointed_tip_is_one_node)
{
  Outline *delta = taper_from ((const double[]) { 0, 151 }, (const double[]) { 0, 87 }, (const double[]) { 93, 0 }, 2);

  ck_assert_uint_eq (outline_node_count (delta), 3);
  ck_assert_int_eq (outline_check (delta, NULL), CORE_OK);
  outline_unref (delta);
}
END_TEST

START_TEST (an_ellipse_is_two_quarters_that_share_a_smooth_tip)
{
  Outline *wing = ellipse_from (110, 320, 40, 90);

  ck_assert_uint_eq (outline_segment_count (wing), 2);
  ck_assert_int_eq (outline_segment (wing, 0)->kind, SEGMENT_ARC);
  ck_assert_double_eq (outline_segment (wing, 0)->rx, 40);
  ck_assert_double_eq (outline_segment (wing, 1)->rx, 90);
  ck_assert_int_eq (outline_node_kind (wing, 1), NODE_SMOOTH);
  ck_assert (outline_node (wing, 1).x == 150 && outline_node (wing, 1).y == 320 && outline_node (wing, 2).x == 240);
  outline_unref (wing);
}
END_TEST

START_TEST (an_ellipse_may_have_one_straight_edge_and_not_two)
{
  Outline *straight = ellipse_from (110, 320, 0, 90), *made = NULL;

  ck_assert_int_eq (outline_segment (straight, 0)->kind, SEGMENT_LINE);
  ck_assert_int_eq (outline_check (straight, NULL), CORE_OK);
  ck_assert_int_eq (shape_ellipse (110, 320, 0, 0, &made), CORE_OUT_OF_RANGE);
  ck_assert_int_eq (shape_ellipse (110, 0, 40, 90, &made), CORE_OUT_OF_RANGE);
  ck_assert_int_eq (shape_ellipse (110, 320, -40, 90, &made), CORE_OUT_OF_RANGE);
  ck_assert_int_eq (shape_ellipse (NAN, 320, 40, 90, &made), CORE_NOT_FINITE);
  ck_assert_ptr_null (made);
  outline_unref (straight);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("shapes");

  tcase_add_loop_test (tests, a_taper_that_cannot_be_is_refused, 0, sizeof refused / sizeof *refused);
  tcase_add_test (tests, a_taper_runs_out_along_the_leading_edge_and_back_along_the_trailing_edge);
  tcase_add_test (tests, a_pointed_tip_is_one_node);
  tcase_add_test (tests, an_ellipse_is_two_quarters_that_share_a_smooth_tip);
  tcase_add_test (tests, an_ellipse_may_have_one_straight_edge_and_not_two);
  return run_suite (suite_create ("shapes"), tests);
}
