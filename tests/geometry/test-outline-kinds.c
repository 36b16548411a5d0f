#include <check.h>
#include "geometry/outline.h"
#include "support/changed.h"
#include "support/run-suite.h"
#include "support/shapes.h"

START_TEST (a_corner_between_curves_made_smooth_turns_both_handles)
{
  const Segment edges[] = { segment_curve ((Point) { 0, 40 }, (Point) { 20, 100 }, (Point) { 40, 120 }),
                            segment_curve ((Point) { 70, 120 }, (Point) { 100, 60 }, (Point) { 100, 0 }) };
  Outline *outline = outline_from ((Point) { 0, 0 }, edges, 2);
  Outline *smooth = CHANGED (outline, outline_with_node_kind (outline, 1, NODE_SMOOTH, made));

  ck_assert_int_eq (outline_node_kind (outline, 1), NODE_CORNER);
  ck_assert_double_eq_tol (bend_at (smooth, 1), 0, 1e-12);
  ck_assert_double_eq_tol (point_distance ((Point) { 40, 120 }, handle_of (smooth, 1, HANDLE_AFTER)), 30, 1e-9);
  ck_assert_double_eq_tol (point_distance ((Point) { 40, 120 }, handle_of (smooth, 1, HANDLE_BEFORE)), hypot (20, 20), 1e-9);
  outline_unref (smooth);
  outline_unref (outline);
}
END_TEST

START_TEST (a_corner_between_lines_made_smooth_makes_curves_of_them)
{
  const Point nodes[] = { { 0, 0 }, { 0, 90 }, { 60, 90 }, { 60, 0 } };
  Outline *box = polygon_from (nodes, 4);
  Outline *smooth = CHANGED (box, outline_with_node_kind (box, 1, NODE_SMOOTH, made));

  assert_place (handle_of (smooth, 1, HANDLE_BEFORE), -30 * M_SQRT1_2, 90 - 30 * M_SQRT1_2);
  assert_place (handle_of (smooth, 1, HANDLE_AFTER), 20 * M_SQRT1_2, 90 + 20 * M_SQRT1_2);
  ck_assert_int_eq (outline_node_kind (smooth, 1), NODE_SMOOTH);
  ck_assert_int_eq (outline_segment (smooth, 2)->kind, SEGMENT_LINE);
  outline_unref (smooth);
  outline_unref (box);
}
END_TEST

START_TEST (a_cusp_made_smooth_runs_from_the_node_before_to_the_node_behind)
{
  const Segment edges[] = { segment_curve ((Point) { 0, 40 }, (Point) { 50, 80 }, (Point) { 50, 120 }),
                            segment_curve ((Point) { 50, 90 }, (Point) { 100, 60 }, (Point) { 100, 0 }) };
  Outline *cusp = outline_from ((Point) { 0, 0 }, edges, 2);
  Outline *smooth = CHANGED (cusp, outline_with_node_kind (cusp, 1, NODE_SMOOTH, made));

  assert_place (handle_of (smooth, 1, HANDLE_BEFORE), 50 - 40, 120);
  assert_place (handle_of (smooth, 1, HANDLE_AFTER), 50 + 30, 120);
  outline_unref (cusp);
  outline_unref (smooth);
}
END_TEST

START_TEST (a_corner_beside_an_arc_made_smooth_keeps_the_arc)
{
  const Segment edges[] = { segment_arc ((Point) { 150, 0 }, 40, 320, (Point) { 150, 320 }), segment_line ((Point) { 240, 0 }) };
  Outline *wing = outline_from ((Point) { 110, 0 }, edges, 2);
  Outline *smooth = CHANGED (wing, outline_with_node_kind (wing, 1, NODE_SMOOTH, made));

  assert_arc (smooth, 0, (Point) { 150, 0 }, 40, 320);
  ck_assert_double_eq_tol (handle_of (smooth, 1, HANDLE_AFTER).y, 320, 1e-9);
  ck_assert_double_gt (handle_of (smooth, 1, HANDLE_AFTER).x, 150);
  outline_unref (smooth);
  outline_unref (wing);
}
END_TEST

START_TEST (a_node_made_symmetric_has_handles_alike_and_a_corner_again_keeps_its_shape)
{
  Outline *wing = mixed_wing ();
  Outline *symmetric = CHANGED (wing, outline_with_node_kind (wing, 2, NODE_SYMMETRIC, made));
  const Point node = outline_node (symmetric, 2), before = handle_of (symmetric, 2, HANDLE_BEFORE), after = handle_of (symmetric, 2, HANDLE_AFTER);
  Outline *corner = CHANGED (symmetric, outline_with_node_kind (symmetric, 2, NODE_CORNER, made));

  assert_place (point_mix (before, after, 0.5), node.x, node.y);
  ck_assert_int_eq (outline_node_kind (symmetric, 2), NODE_SYMMETRIC);
  ck_assert_int_eq (outline_node_kind (corner, 2), NODE_CORNER);
  assert_place (handle_of (corner, 2, HANDLE_BEFORE), before.x, before.y);
  outline_unref (wing);
  outline_unref (symmetric);
  outline_unref (corner);
}
END_TEST

START_TEST (a_segment_becomes_a_line_or_a_curve_of_the_same_shape)
{
  Outline *wing = mixed_wing ();
  Outline *line = CHANGED (wing, outline_with_segment_kind (wing, 3, SEGMENT_LINE, made));
  Outline *curve = CHANGED (wing, outline_with_segment_kind (wing, 0, SEGMENT_CURVE, made));

  ck_assert_int_eq (outline_segment (line, 3)->kind, SEGMENT_LINE);
  assert_place (outline_node (line, 4), 222.75, 231.5);
  ck_assert_int_eq (outline_node_kind (wing, 3), NODE_SMOOTH);
  ck_assert_int_eq (outline_node_kind (line, 3), NODE_CORNER);            /* the arc no longer meets it along its tangent */
  assert_place (handle_of (curve, 0, HANDLE_AFTER), 4.5, 171.25 / 3);
  assert_place (segment_at ((Point) { 0, 0 }, outline_segment (curve, 0), 0.25), 13.5 / 4, 171.25 / 4);
  outline_unref (wing);
  outline_unref (line);
  outline_unref (curve);
}
END_TEST

START_TEST (an_arc_becomes_curves_that_lie_where_it_lay)
{
  const Segment half[] = { segment_arc ((Point) { 150, 0 }, 40, 75, (Point) { 190, 0 }) };
  Outline *quarter = ellipse_from (110, 320, 40, 90), *outline = outline_from ((Point) { 110, 0 }, half, 1);
  Outline *one = CHANGED (quarter, outline_with_segment_kind (quarter, 0, SEGMENT_CURVE, made));
  Outline *two = CHANGED (outline, outline_with_segment_kind (outline, 0, SEGMENT_CURVE, made));

  ck_assert_uint_eq (outline_segment_count (one), 2);
  ck_assert_uint_eq (outline_segment_count (two), 2);
  ck_assert_int_eq (outline_node_kind (two, 1), NODE_SMOOTH);
  assert_place (outline_node (two, 1), 150, 75);
  for (double t = 0; t <= 1; t += 0.125)
    {
      double distance;
      segment_nearest ((Point) { 110, 0 }, &half[0], segment_at ((Point) { 150, 75 }, outline_segment (two, 1), t), &distance);
      ck_assert_double_lt (distance, 3e-4 * 75);
    }
  outline_unref (quarter);
  outline_unref (outline);
  outline_unref (one);
  outline_unref (two);
}
END_TEST

START_TEST (a_segment_made_an_arc_bulges_outwards_with_its_tangents_along_the_axes)
{
  const Point nodes[] = { { 110, 0 }, { 150, 320 }, { 240, 0 } };
  Outline *triangle = polygon_from (nodes, 3);
  Outline *front = CHANGED (triangle, outline_with_segment_kind (triangle, 0, SEGMENT_ARC, made));
  Outline *both = CHANGED (front, outline_with_segment_kind (front, 1, SEGMENT_ARC, made));

  assert_arc (both, 0, (Point) { 150, 0 }, 40, 320);
  assert_arc (both, 1, (Point) { 150, 0 }, 90, 320);
  ck_assert_int_eq (outline_check (both, NULL), CORE_OK);
  outline_unref (triangle);
  outline_unref (front);
  outline_unref (both);
}
END_TEST

START_TEST (a_lone_segment_made_an_arc_bulges_towards_greater_y)
{
  const Point up[] = { { 10, 0 }, { 50, 30 } }, level[] = { { 10, 40 }, { 50, 40 } };
  Outline *line = polygon_from (up, 2), *flat = polygon_from (level, 2), *none = NULL;
  Outline *arc = CHANGED (line, outline_with_segment_kind (line, 0, SEGMENT_ARC, made));

  assert_arc (arc, 0, (Point) { 50, 0 }, 40, 30);
  ck_assert_int_eq (outline_with_segment_kind (flat, 0, SEGMENT_ARC, &none), CORE_OFF_ITS_ARC);
  ck_assert_ptr_null (none);
  outline_unref (line);
  outline_unref (flat);
  outline_unref (arc);
}
END_TEST

/* Both are asked of the same shape: a kind that was given does not change what the shape says. */
START_TEST (the_shape_of_a_node_is_told_whatever_kind_it_was_given)
{
  const NodeKind kinds[] = { NODE_CORNER, NODE_CORNER, NODE_SMOOTH, NODE_CORNER, NODE_SMOOTH, NODE_CORNER };
  Outline *wing = mixed_wing (), *given = NULL;
  const size_t count = outline_segment_count (wing);
  Segment segments[count];

  ck_assert_uint_eq (count + 1, sizeof kinds / sizeof kinds[0]);
  for (size_t i = 0; i < count; i++)
    segments[i] = *outline_segment (wing, i);
  ck_assert_int_eq (outline_new (outline_node (wing, 0), segments, count, kinds, &given), CORE_OK);
  for (size_t i = 0; i <= count; i++)
    {
      ck_assert_int_eq (outline_node_shape (wing, i), outline_node_kind (wing, i));
      ck_assert_int_eq (outline_node_shape (given, i), outline_node_kind (wing, i));
      ck_assert_int_eq (outline_node_kind (given, i), kinds[i]);
    }
  outline_unref (given);
  outline_unref (wing);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("changes");

  tcase_add_test (tests, a_corner_between_curves_made_smooth_turns_both_handles);
  tcase_add_test (tests, a_corner_between_lines_made_smooth_makes_curves_of_them);
  tcase_add_test (tests, a_cusp_made_smooth_runs_from_the_node_before_to_the_node_behind);
  tcase_add_test (tests, a_corner_beside_an_arc_made_smooth_keeps_the_arc);
  tcase_add_test (tests, a_node_made_symmetric_has_handles_alike_and_a_corner_again_keeps_its_shape);
  tcase_add_test (tests, a_segment_becomes_a_line_or_a_curve_of_the_same_shape);
  tcase_add_test (tests, an_arc_becomes_curves_that_lie_where_it_lay);
  tcase_add_test (tests, a_segment_made_an_arc_bulges_outwards_with_its_tangents_along_the_axes);
  tcase_add_test (tests, a_lone_segment_made_an_arc_bulges_towards_greater_y);
  tcase_add_test (tests, the_shape_of_a_node_is_told_whatever_kind_it_was_given);
  return run_suite (suite_create ("outline kinds"), tests);
}
