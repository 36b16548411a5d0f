#include <check.h>
#include <threads.h>
#include "geometry/outline.h"
#include "geometry/shapes.h"
#include "support/random.h"
#include "support/run-suite.h"
#include "support/shapes.h"

static const struct { const char *because; CoreStatus expected; size_t count; Point start; Segment segment; } refused[] = {
  { .because = "one node is no outline", .expected = CORE_TOO_FEW_NODES, .count = 0 },
  { .because = "not-a-number is no place", .expected = CORE_NOT_FINITE, .count = 1, .start = { NAN, 0 }, .segment = { .to = { 1, 2 } } },
  { .because = "nor is infinity", .expected = CORE_NOT_FINITE, .count = 1, .segment = { .to = { 1, INFINITY } } },
  { .because = "nor for a handle", .expected = CORE_NOT_FINITE, .count = 1,
    .segment = { .kind = SEGMENT_CURVE, .to = { 1, 2 }, .control2 = { -INFINITY, 0 } } },
  { .because = "nor for an ellipse", .expected = CORE_NOT_FINITE, .count = 1,
    .segment = { .kind = SEGMENT_ARC, .to = { 1, 2 }, .centre = { NAN, 0 }, .rx = 1, .ry = 2 } },
  { .because = "an ellipse without size has no arc", .expected = CORE_OFF_ITS_ARC, .count = 1,
    .segment = { .kind = SEGMENT_ARC, .to = { 40, 20 }, .centre = { 40, 0 }, .rx = 40, .ry = 0 } },
  { .because = "the end is off the ellipse", .expected = CORE_OFF_ITS_ARC, .count = 1,
    .segment = { .kind = SEGMENT_ARC, .to = { 40, 20.1 }, .centre = { 40, 0 }, .rx = 40, .ry = 20 } },
  { .because = "so is the start", .expected = CORE_OFF_ITS_ARC, .count = 1, .start = { 0.1, 0 },
    .segment = { .kind = SEGMENT_ARC, .to = { 40, 20 }, .centre = { 40, 0 }, .rx = 40, .ry = 20 } },
  { .because = "the centre lies on no ellipse", .expected = CORE_OFF_ITS_ARC, .count = 1, .start = { 40, 0 },
    .segment = { .kind = SEGMENT_ARC, .to = { 40, 20 }, .centre = { 40, 0 }, .rx = 40, .ry = 20 } },
};

START_TEST (an_outline_that_cannot_be_is_refused_and_nothing_is_made)
{
  Outline *made = NULL;
  const CoreStatus status = outline_new (refused[_i].start, &refused[_i].segment, refused[_i].count, NULL, &made);

  ck_assert_msg (status == refused[_i].expected, "%s: %s", refused[_i].because, core_status_sentence (status));
  ck_assert_ptr_null (made);
}
END_TEST

START_TEST (an_end_a_little_off_its_ellipse_is_let_pass_and_kept_as_given)
{
  const Segment arc = segment_arc ((Point) { 40, 0 }, 40, 20, (Point) { 40, 20.039 });    /* allowed: 1e-3 · 40 */
  Outline *outline = outline_from ((Point) { 0, 0 }, &arc, 1);

  ck_assert_double_eq (outline_segment (outline, 0)->ry, 20);
  ck_assert_double_eq (outline_node (outline, 1).y, 20.039);
  outline_unref (outline);
}
END_TEST

START_TEST (nodes_and_segments_are_those_given)
{
  Outline *wing = mixed_wing ();

  ck_assert_uint_eq (outline_node_count (wing), 6);
  ck_assert_uint_eq (outline_segment_count (wing), 5);
  ck_assert_double_eq (outline_node (wing, 0).x, 0);
  ck_assert_double_eq (outline_node (wing, 3).x, 112.5);
  ck_assert_int_eq (outline_segment (wing, 2)->kind, SEGMENT_ARC);
  ck_assert_double_eq (outline_segment (wing, 3)->control2.y, 343.5);
  outline_unref (wing);
}
END_TEST

START_TEST (a_node_is_smooth_where_tangents_agree_within_half_a_degree)
{
  const double almost = tan (0.49 * M_PI / 180), more = tan (0.51 * M_PI / 180);
  const Segment edges[] = {
    segment_line ((Point) { 0, 100 }), segment_line ((Point) { 100 * almost, 200 }),
    segment_curve ((Point) { 200 * almost, 300 }, (Point) { 60, 400 }, (Point) { 100, 400 }),
    segment_line ((Point) { 200, 400 + 100 * more }), segment_line ((Point) { 300, 0 }),
  };
  Outline *outline = outline_from ((Point) { 0, 0 }, edges, 5);
  const NodeKind wanted[] = { NODE_CORNER, NODE_SMOOTH, NODE_SMOOTH, NODE_CORNER, NODE_CORNER, NODE_CORNER };

  for (size_t i = 0; i < 6; i++)
    ck_assert_msg (outline_node_kind (outline, i) == wanted[i], "node %zu", i);
  outline_unref (outline);
}
END_TEST

START_TEST (kinds_that_are_given_are_kept)
{
  const NodeKind kinds[] = { NODE_CORNER, NODE_SYMMETRIC, NODE_CORNER };
  const Segment edges[] = { segment_line ((Point) { 3, 100 }), segment_line ((Point) { 70, 0 }) };
  Outline *outline = NULL;

  ck_assert_int_eq (outline_new ((Point) { 0, 0 }, edges, 2, kinds, &outline), CORE_OK);
  ck_assert_int_eq (outline_node_kind (outline, 1), NODE_SYMMETRIC);
  outline_unref (outline);
}
END_TEST

START_TEST (only_curves_have_handles)
{
  Outline *wing = mixed_wing ();
  Point place = { 17, 17 };

  ck_assert (!outline_handle (wing, 0, HANDLE_BEFORE, &place));
  ck_assert (!outline_handle (wing, 0, HANDLE_AFTER, &place));
  ck_assert (!outline_handle (wing, 1, HANDLE_BEFORE, &place));
  ck_assert_double_eq (place.x, 17);
  ck_assert (outline_handle (wing, 1, HANDLE_AFTER, &place));
  ck_assert_double_eq (place.x, 17.5);
  ck_assert (outline_handle (wing, 2, HANDLE_BEFORE, &place));
  ck_assert_double_eq (place.y, 281.75);
  ck_assert (!outline_handle (wing, 2, HANDLE_AFTER, &place));
  ck_assert (!outline_handle (wing, 5, HANDLE_AFTER, &place));
  outline_unref (wing);
}
END_TEST

START_TEST (bounds_are_of_the_curve_and_not_of_its_handles)
{
  const Segment bow[] = { segment_curve ((Point) { 0, 120 }, (Point) { 90, 120 }, (Point) { 90, 0 }) };
  Outline *curve = outline_from ((Point) { 0, 0 }, bow, 1), *ellipse = ellipse_from (110, 320, 40, 90);
  const Box box = outline_bounds (curve), round = outline_bounds (ellipse);

  ck_assert_double_eq_tol (box.max.y, 90, 1e-12 * 90);
  ck_assert (box.min.x == 0 && box.min.y == 0 && box.max.x == 90);
  ck_assert (round.min.x == 110 && round.max.x == 240 && round.min.y == 0 && round.max.y == 320);
  outline_unref (curve);
  outline_unref (ellipse);
}
END_TEST

START_TEST (equal_means_to_the_last_bit)
{
  Outline *wing = mixed_wing (), *same = mixed_wing (), *other = NULL, *kind = NULL;
  const Point place = { nextafter (112.5, 200), 407 };

  ck_assert_int_eq (outline_with_node_at (wing, 3, place, &other), CORE_OK);
  ck_assert_int_eq (outline_with_node_kind (wing, 1, NODE_CORNER, &kind), CORE_OK);
  ck_assert (outline_equal (wing, wing) && outline_equal (wing, same) && outline_equal (NULL, NULL));
  ck_assert (!outline_equal (wing, other) && !outline_equal (wing, NULL) && !outline_equal (NULL, wing));
  ck_assert_int_eq (outline_node_kind (wing, 1), NODE_SMOOTH);
  ck_assert (!outline_equal (wing, kind));
  outline_unref (wing);
  outline_unref (same);
  outline_unref (other);
  outline_unref (kind);
}
END_TEST

START_TEST (the_nearest_place_is_the_nearest_of_all_segments)
{
  Outline *wing = mixed_wing ();
  Random random = { .state = 77 };

  for (int again = 0; again < 200; again++)
    {
      const Point point = { random_between (&random, -100, 350), random_between (&random, -100, 500) };
      double least = INFINITY, t = -1;
      size_t segment = 99;
      const double distance = outline_nearest (wing, point, &segment, &t);

      for (size_t i = 0; i < 5; i++)
        {
          double each;
          segment_nearest (outline_node (wing, i), outline_segment (wing, i), point, &each);
          least = fmin (least, each);
        }
      ck_assert_double_eq_tol (distance, least, 1e-12 * 500);
      const Point place = segment_at (outline_node (wing, segment), outline_segment (wing, segment), t);
      ck_assert_double_eq_tol (point_distance (place, point), distance, 1e-12 * 500);
    }
  outline_unref (wing);
}
END_TEST

START_TEST (an_outline_contains_what_its_equation_says)
{
  Outline *ellipse = ellipse_from (110, 320, 40, 90);
  Random random = { .state = 78 };

  for (int again = 0; again < 400; again++)
    {
      const Point point = { random_between (&random, 90, 260), random_between (&random, -40, 350) };
      const double x = (point.x - 150) / (point.x < 150 ? 40 : 90), y = point.y / 320;

      ck_assert (outline_contains (ellipse, point) == (point.y >= 0 && x * x + y * y < 1));
    }
  ck_assert (!outline_contains (ellipse, (Point) { NAN, 10 }));
  outline_unref (ellipse);
}
END_TEST

static int
take_and_give_back (void *outline)
{
  for (int i = 0; i < 2000; i++)
    {
      Outline *mine = outline_ref (outline);
      outline_unref (mine);
    }
  return 0;
}

/* The sanitizers tell when the last reference goes too early or never. */
START_TEST (references_are_counted_across_threads)
{
  Outline *wing = mixed_wing ();
  thrd_t others[3];

  outline_unref (NULL);
  for (int i = 0; i < 3; i++)
    ck_assert_int_eq (thrd_create (&others[i], take_and_give_back, wing), thrd_success);
  take_and_give_back (wing);
  for (int i = 0; i < 3; i++)
    thrd_join (others[i], NULL);
  ck_assert_uint_eq (outline_node_count (wing), 6);
  outline_unref (wing);
}
END_TEST

START_TEST (a_size_beyond_arithmetic_is_said_to_be_not_finite)
{
  const Point nodes[] = { { 0, 0 }, { 1e200, 3e200 }, { 2e200, 0 } };
  Outline *huge = polygon_from (nodes, 3);

  ck_assert_int_eq (outline_check (huge, NULL), CORE_NOT_FINITE);
  outline_unref (huge);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("outlines");

  tcase_add_loop_test (tests, an_outline_that_cannot_be_is_refused_and_nothing_is_made, 0, sizeof refused / sizeof *refused);
  tcase_add_test (tests, an_end_a_little_off_its_ellipse_is_let_pass_and_kept_as_given);
  tcase_add_test (tests, nodes_and_segments_are_those_given);
  tcase_add_test (tests, a_node_is_smooth_where_tangents_agree_within_half_a_degree);
  tcase_add_test (tests, kinds_that_are_given_are_kept);
  tcase_add_test (tests, only_curves_have_handles);
  tcase_add_test (tests, bounds_are_of_the_curve_and_not_of_its_handles);
  tcase_add_test (tests, equal_means_to_the_last_bit);
  tcase_add_test (tests, the_nearest_place_is_the_nearest_of_all_segments);
  tcase_add_test (tests, an_outline_contains_what_its_equation_says);
  tcase_add_test (tests, references_are_counted_across_threads);
  tcase_add_test (tests, a_size_beyond_arithmetic_is_said_to_be_not_finite);
  return run_suite (suite_create ("outline"), tests);
}
