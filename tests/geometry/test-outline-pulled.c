#include <check.h>
#include "geometry/outline.h"
#include "support/changed.h"
#include "support/run-suite.h"
#include "support/shapes.h"

START_TEST (pulling_the_tip_of_an_ellipse_keeps_both_arcs_exact)
{
  Outline *wing = ellipse_from (110, 320, 40, 90);
  Outline *pulled = CHANGED (wing, outline_with_node_at (wing, 1, (Point) { 163.5, 347.25 }, made));

  assert_arc (pulled, 0, (Point) { 163.5, 0 }, 53.5, 347.25);
  assert_arc (pulled, 1, (Point) { 163.5, 0 }, 76.5, 347.25);
  ck_assert_int_eq (outline_node_kind (pulled, 1), NODE_SMOOTH);
  outline_unref (pulled);
  outline_unref (wing);
}
END_TEST

START_TEST (pulling_the_root_of_an_ellipse_keeps_its_arc_exact)
{
  Outline *wing = ellipse_from (110, 320, 40, 90);
  Outline *pulled = CHANGED (wing, outline_with_node_at (wing, 0, (Point) { 97.25, 0 }, made));

  assert_arc (pulled, 0, (Point) { 150, 0 }, 52.75, 320);
  assert_arc (pulled, 1, (Point) { 150, 0 }, 90, 320);
  outline_unref (pulled);
  outline_unref (wing);
}
END_TEST

START_TEST (an_arc_turns_over_when_its_end_is_pulled_past_the_other)
{
  Outline *wing = ellipse_from (110, 320, 40, 90);
  Outline *pulled = CHANGED (wing, outline_with_node_at (wing, 0, (Point) { 180, 0 }, made));

  assert_arc (pulled, 0, (Point) { 150, 0 }, 30, 320);
  assert_place (segment_at ((Point) { 180, 0 }, outline_segment (pulled, 0), 0.5), 150 + 30 * M_SQRT1_2, 320 * M_SQRT1_2);
  outline_unref (pulled);
  outline_unref (wing);
}
END_TEST

START_TEST (an_arc_with_no_extent_to_stretch_becomes_a_curve_of_its_shape)
{
  const Segment half[] = { segment_arc ((Point) { 150, 0 }, 40, 75, (Point) { 190, 0 }) };
  Outline *outline = outline_from ((Point) { 110, 0 }, half, 1);
  Outline *along = CHANGED (outline, outline_with_node_at (outline, 1, (Point) { 204, 0 }, made));
  Outline *across = CHANGED (outline, outline_with_node_at (outline, 1, (Point) { 190, 6.5 }, made));

  assert_arc (along, 0, (Point) { 157, 0 }, 47, 75);
  ck_assert_int_eq (outline_segment (across, 0)->kind, SEGMENT_CURVE);
  assert_place (handle_of (across, 0, HANDLE_AFTER), 110, 100);           /* 4/3 of the semi-axis, tan 45° */
  assert_place (handle_of (across, 1, HANDLE_BEFORE), 190, 106.5);        /* moved with its node */
  outline_unref (outline);
  outline_unref (along);
  outline_unref (across);
}
END_TEST

/* Turned over along y, half an ellipse would lie on the side of lesser y, which half a turn does not mean. */
START_TEST (half_an_ellipse_that_would_change_its_side_becomes_a_curve)
{
  const Segment half[] = { segment_arc ((Point) { 0, 0 }, 50, 50, (Point) { 30, -40 }) };
  Outline *outline = outline_from ((Point) { -30, 40 }, half, 1);
  Outline *same_side = CHANGED (outline, outline_with_node_at (outline, 1, (Point) { 30, -60 }, made));
  Outline *other_side = CHANGED (outline, outline_with_node_at (outline, 1, (Point) { 30, 60 }, made));

  assert_arc (same_side, 0, (Point) { 0, -10 }, 50, 62.5);
  ck_assert_int_eq (outline_segment (other_side, 0)->kind, SEGMENT_CURVE);
  outline_unref (outline);
  outline_unref (same_side);
  outline_unref (other_side);
}
END_TEST

START_TEST (an_arc_squeezed_flat_becomes_a_curve)
{
  Outline *wing = ellipse_from (110, 320, 40, 90);
  Outline *flat = CHANGED (wing, outline_with_node_at (wing, 0, (Point) { 150, 0 }, made));

  ck_assert_int_eq (outline_segment (flat, 0)->kind, SEGMENT_CURVE);
  ck_assert_int_eq (outline_segment (flat, 1)->kind, SEGMENT_ARC);
  outline_unref (flat);
  outline_unref (wing);
}
END_TEST

START_TEST (handles_go_with_their_node)
{
  Outline *leaf = leaf_of_curves ();
  const Point before = handle_of (leaf, 1, HANDLE_BEFORE), after = handle_of (leaf, 1, HANDLE_AFTER);
  Outline *moved = CHANGED (leaf, outline_with_node_at (leaf, 1, (Point) { 121.5 + 7.5, 36.75 - 3.25 }, made));

  assert_place (outline_node (moved, 1), 129, 33.5);
  assert_place (handle_of (moved, 1, HANDLE_BEFORE), before.x + 7.5, before.y - 3.25);
  assert_place (handle_of (moved, 1, HANDLE_AFTER), after.x + 7.5, after.y - 3.25);
  assert_place (handle_of (moved, 2, HANDLE_BEFORE), handle_of (leaf, 2, HANDLE_BEFORE).x, handle_of (leaf, 2, HANDLE_BEFORE).y);
  ck_assert_int_eq (outline_node_kind (moved, 1), NODE_SMOOTH);
  outline_unref (moved);
  outline_unref (leaf);
}
END_TEST

START_TEST (a_curve_beside_a_line_stays_smooth_when_the_line_turns)
{
  Outline *wing = mixed_wing ();
  Outline *moved = CHANGED (wing, outline_with_node_at (wing, 0, (Point) { -20, 0 }, made));
  const Point node = outline_node (moved, 1), handle = handle_of (moved, 1, HANDLE_AFTER);
  const double length = point_distance ((Point) { 13.5, 171.25 }, (Point) { 17.5, 221.5 });

  ck_assert_int_eq (outline_node_kind (moved, 1), NODE_SMOOTH);
  ck_assert_double_eq_tol (point_distance (node, handle), length, 1e-9);
  ck_assert_double_eq_tol ((handle.x - node.x) * 171.25 - (handle.y - node.y) * 33.5, 0, 1e-9 * 171.25 * length);
  outline_unref (moved);
  outline_unref (wing);
}
END_TEST

START_TEST (a_smooth_node_between_lines_that_no_longer_agree_is_a_corner)
{
  const Point nodes[] = { { 0, 0 }, { 10, 100 }, { 20, 200 }, { 90, 0 } };
  Outline *wing = polygon_from (nodes, 4);

  ck_assert_int_eq (outline_node_kind (wing, 1), NODE_SMOOTH);
  Outline *moved = CHANGED (wing, outline_with_node_at (wing, 1, (Point) { 4, 100 }, made));
  ck_assert_int_eq (outline_node_kind (moved, 1), NODE_CORNER);
  ck_assert_int_eq (outline_segment (moved, 0)->kind, SEGMENT_LINE);
  outline_unref (moved);
  outline_unref (wing);
}
END_TEST

START_TEST (at_a_smooth_node_the_other_handle_turns_and_keeps_its_length)
{
  Outline *leaf = leaf_of_curves ();
  const double length = point_distance (outline_node (leaf, 1), handle_of (leaf, 1, HANDLE_AFTER));
  Outline *turned = CHANGED (leaf, outline_with_handle_at (leaf, 1, HANDLE_BEFORE, (Point) { 60, 30 }, made));

  assert_place (handle_of (turned, 1, HANDLE_BEFORE), 60, 30);
  ck_assert_double_eq_tol (bend_at (turned, 1), 0, 1e-12);
  ck_assert_double_eq_tol (point_distance (outline_node (turned, 1), handle_of (turned, 1, HANDLE_AFTER)), length, 1e-9);
  outline_unref (turned);
  outline_unref (leaf);
}
END_TEST

START_TEST (at_a_symmetric_node_the_other_handle_takes_the_length_too)
{
  Outline *leaf = leaf_of_curves ();
  Outline *symmetric = CHANGED (leaf, outline_with_node_kind (leaf, 1, NODE_SYMMETRIC, made));
  Outline *turned = CHANGED (symmetric, outline_with_handle_at (symmetric, 1, HANDLE_AFTER, (Point) { 181.5, 41 }, made));

  assert_place (handle_of (turned, 1, HANDLE_BEFORE), 2 * 121.5 - 181.5, 2 * 36.75 - 41);
  ck_assert_int_eq (outline_node_kind (turned, 1), NODE_SYMMETRIC);
  outline_unref (turned);
  outline_unref (symmetric);
  outline_unref (leaf);
}
END_TEST

START_TEST (at_a_corner_the_other_handle_stays)
{
  Outline *leaf = leaf_of_curves ();
  Outline *corner = CHANGED (leaf, outline_with_node_kind (leaf, 1, NODE_CORNER, made));
  Outline *turned = CHANGED (corner, outline_with_handle_at (corner, 1, HANDLE_BEFORE, (Point) { 60, 30 }, made));

  assert_place (handle_of (turned, 1, HANDLE_AFTER), 201.5, 36.75);
  outline_unref (turned);
  outline_unref (corner);
  outline_unref (leaf);
}
END_TEST

START_TEST (a_handle_that_continues_a_line_stays_on_it)
{
  const Segment edges[] = { segment_line ((Point) { 0, 100 }), segment_curve ((Point) { 0, 150 }, (Point) { 40, 200 }, (Point) { 90, 200 }),
                            segment_line ((Point) { 120, 0 }) };
  Outline *wing = outline_from ((Point) { 0, 0 }, edges, 3);
  Outline *pulled = CHANGED (wing, outline_with_handle_at (wing, 1, HANDLE_AFTER, (Point) { 17, 163 }, made));
  Outline *behind = CHANGED (wing, outline_with_handle_at (wing, 1, HANDLE_AFTER, (Point) { 17, 63 }, made));

  assert_place (handle_of (pulled, 1, HANDLE_AFTER), 0, 163);
  assert_place (handle_of (behind, 1, HANDLE_AFTER), 0, 100);
  outline_unref (wing);
  outline_unref (pulled);
  outline_unref (behind);
}
END_TEST

START_TEST (a_place_without_a_handle_has_none_to_move)
{
  Outline *wing = mixed_wing (), *made = NULL;

  ck_assert_int_eq (outline_with_handle_at (wing, 0, HANDLE_AFTER, (Point) { 1, 1 }, &made), CORE_OUT_OF_RANGE);
  ck_assert_int_eq (outline_with_handle_at (wing, 5, HANDLE_AFTER, (Point) { 1, 1 }, &made), CORE_OUT_OF_RANGE);
  ck_assert_ptr_null (made);
  outline_unref (wing);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("changes");

  tcase_add_test (tests, pulling_the_tip_of_an_ellipse_keeps_both_arcs_exact);
  tcase_add_test (tests, pulling_the_root_of_an_ellipse_keeps_its_arc_exact);
  tcase_add_test (tests, an_arc_turns_over_when_its_end_is_pulled_past_the_other);
  tcase_add_test (tests, an_arc_with_no_extent_to_stretch_becomes_a_curve_of_its_shape);
  tcase_add_test (tests, half_an_ellipse_that_would_change_its_side_becomes_a_curve);
  tcase_add_test (tests, an_arc_squeezed_flat_becomes_a_curve);
  tcase_add_test (tests, handles_go_with_their_node);
  tcase_add_test (tests, a_curve_beside_a_line_stays_smooth_when_the_line_turns);
  tcase_add_test (tests, a_smooth_node_between_lines_that_no_longer_agree_is_a_corner);
  tcase_add_test (tests, at_a_smooth_node_the_other_handle_turns_and_keeps_its_length);
  tcase_add_test (tests, at_a_symmetric_node_the_other_handle_takes_the_length_too);
  tcase_add_test (tests, at_a_corner_the_other_handle_stays);
  tcase_add_test (tests, a_handle_that_continues_a_line_stays_on_it);
  tcase_add_test (tests, a_place_without_a_handle_has_none_to_move);
  return run_suite (suite_create ("outline pulled"), tests);
}
