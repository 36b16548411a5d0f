#include <check.h>
#include "geometry/outline.h"
#include "support/run-suite.h"
#include "support/shapes.h"

/* Ends the test unless the change succeeds and the old outline is what it was. */
#define CHANGED(old, call) ({ \
    Outline *new_one = NULL, *copy_of_old = copied (old); \
    Outline **made = &new_one; \
    ck_assert_int_eq (call, CORE_OK); \
    ck_assert (outline_equal (old, copy_of_old)); \
    outline_unref (copy_of_old); \
    new_one; })

static Outline *
copied (const Outline *outline)
{
  const size_t count = outline_segment_count (outline);
  Segment segments[count];
  NodeKind kinds[count + 1];
  Outline *copy = NULL;

  for (size_t i = 0; i < count; i++)
    segments[i] = *outline_segment (outline, i);
  for (size_t i = 0; i <= count; i++)
    kinds[i] = outline_node_kind (outline, i);
  ck_assert_int_eq (outline_new (outline_node (outline, 0), segments, count, kinds, &copy), CORE_OK);
  return copy;
}

static void
assert_place (Point got, double x, double y)
{
  ck_assert_msg (fabs (got.x - x) < 1e-9 && fabs (got.y - y) < 1e-9, "%.12g, %.12g instead of %.12g, %.12g", got.x, got.y, x, y);
}

static void
assert_arc (const Outline *outline, size_t segment, Point centre, double rx, double ry)
{
  const Segment *arc = outline_segment (outline, segment);

  ck_assert_int_eq (arc->kind, SEGMENT_ARC);
  assert_place (arc->centre, centre.x, centre.y);
  assert_place ((Point) { arc->rx, arc->ry }, rx, ry);
}

static Point
handle_of (const Outline *outline, size_t node, HandleSide side)
{
  Point place;

  ck_assert (outline_handle (outline, node, side, &place));
  return place;
}

/* Sine of the angle between the handles of a node: 0 when they run along one line. */
static double
bend_at (const Outline *outline, size_t node)
{
  const Point place = outline_node (outline, node);
  const Point before = point_sub (handle_of (outline, node, HANDLE_BEFORE), place);
  const Point after = point_sub (handle_of (outline, node, HANDLE_AFTER), place);

  ck_assert_double_lt (before.x * after.x + before.y * after.y, 0);
  return (before.x * after.y - before.y * after.x) / (hypot (before.x, before.y) * hypot (after.x, after.y));
}

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

START_TEST (mapping_moves_and_stretches_every_place)
{
  Outline *wing = mixed_wing ();
  Outline *mapped = CHANGED (wing, outline_mapped (wing, (Point) { 0.5, 2 }, (Point) { 100, -3 }, made));
  Outline *none = NULL;

  for (size_t i = 0; i < 5; i++)
    for (double t = 0; t <= 1; t += 0.25)
      {
        const Point old = segment_at (outline_node (wing, i), outline_segment (wing, i), t);
        assert_place (segment_at (outline_node (mapped, i), outline_segment (mapped, i), t), 100 + old.x / 2, 2 * old.y - 3);
      }
  ck_assert_int_eq (outline_mapped (wing, (Point) { 0, 1 }, (Point) { 0, 0 }, &none), CORE_OUT_OF_RANGE);
  ck_assert_int_eq (outline_mapped (wing, (Point) { 1, -1 }, (Point) { 0, 0 }, &none), CORE_OUT_OF_RANGE);
  ck_assert_int_eq (outline_mapped (wing, (Point) { 1, 1 }, (Point) { NAN, 0 }, &none), CORE_NOT_FINITE);
  ck_assert_ptr_null (none);
  outline_unref (mapped);
  outline_unref (wing);
}
END_TEST

START_TEST (reversing_twice_gives_the_outline_back)
{
  Outline *wing = mixed_wing ();
  Outline *reversed = CHANGED (wing, outline_reversed (wing, made));
  Outline *again = CHANGED (reversed, outline_reversed (reversed, made));

  assert_place (outline_node (reversed, 0), 236, 0);
  ck_assert_int_eq (outline_segment (reversed, 2)->kind, SEGMENT_ARC);
  ck_assert_int_eq (outline_node_kind (reversed, 3), outline_node_kind (wing, 2));
  ck_assert (outline_equal (wing, again) && !outline_equal (wing, reversed));
  outline_unref (wing);
  outline_unref (reversed);
  outline_unref (again);
}
END_TEST

START_TEST (segments_are_added_behind_the_last_node)
{
  const Point nodes[] = { { 0, 0 }, { 0, 90 } };
  const Segment onwards = segment_curve ((Point) { 0, 120 }, (Point) { 30, 150 }, (Point) { 60, 150 });
  const Segment back = segment_line ((Point) { 60, 0 }), off = segment_arc ((Point) { 9, 9 }, 1, 1, (Point) { 9, 9 });
  Outline *line = polygon_from (nodes, 2), *none = NULL;
  Outline *longer = CHANGED (line, outline_with_segment_added (line, &onwards, made));
  Outline *closed = CHANGED (longer, outline_with_segment_added (longer, &back, made));

  ck_assert_uint_eq (outline_node_count (closed), 4);
  ck_assert_int_eq (outline_node_kind (closed, 1), NODE_SMOOTH);
  ck_assert_int_eq (outline_node_kind (closed, 2), NODE_CORNER);
  ck_assert_int_eq (outline_check (longer, NULL), CORE_OPEN);
  ck_assert_int_eq (outline_check (closed, NULL), CORE_OK);
  ck_assert_int_eq (outline_with_segment_added (line, &off, &none), CORE_OFF_ITS_ARC);
  ck_assert_ptr_null (none);
  outline_unref (line);
  outline_unref (longer);
  outline_unref (closed);
}
END_TEST

START_TEST (no_change_takes_what_is_not_finite)
{
  Outline *wing = leaf_of_curves (), *made = NULL;

  ck_assert_int_eq (outline_with_node_at (wing, 1, (Point) { NAN, 0 }, &made), CORE_NOT_FINITE);
  ck_assert_int_eq (outline_with_node_at (wing, 1, (Point) { 0, INFINITY }, &made), CORE_NOT_FINITE);
  ck_assert_int_eq (outline_with_handle_at (wing, 1, HANDLE_AFTER, (Point) { -INFINITY, 0 }, &made), CORE_NOT_FINITE);
  ck_assert_int_eq (outline_with_node_inserted (wing, 1, NAN, &made), CORE_OUT_OF_RANGE);
  ck_assert_int_eq (outline_with_node_split (wing, 1, NAN, &made), CORE_NOT_FINITE);
  ck_assert_ptr_null (made);
  outline_unref (wing);
}
END_TEST

static void
add_node_tests (TCase *tests)
{
  tcase_add_test (tests, pulling_the_tip_of_an_ellipse_keeps_both_arcs_exact);
  tcase_add_test (tests, pulling_the_root_of_an_ellipse_keeps_its_arc_exact);
  tcase_add_test (tests, an_arc_turns_over_when_its_end_is_pulled_past_the_other);
  tcase_add_test (tests, an_arc_with_no_extent_to_stretch_becomes_a_curve_of_its_shape);
  tcase_add_test (tests, an_arc_squeezed_flat_becomes_a_curve);
  tcase_add_test (tests, handles_go_with_their_node);
  tcase_add_test (tests, a_curve_beside_a_line_stays_smooth_when_the_line_turns);
  tcase_add_test (tests, a_smooth_node_between_lines_that_no_longer_agree_is_a_corner);
  tcase_add_test (tests, at_a_smooth_node_the_other_handle_turns_and_keeps_its_length);
  tcase_add_test (tests, at_a_symmetric_node_the_other_handle_takes_the_length_too);
  tcase_add_test (tests, at_a_corner_the_other_handle_stays);
  tcase_add_test (tests, a_handle_that_continues_a_line_stays_on_it);
  tcase_add_test (tests, a_place_without_a_handle_has_none_to_move);
  tcase_add_test (tests, a_corner_between_curves_made_smooth_turns_both_handles);
  tcase_add_test (tests, a_corner_between_lines_made_smooth_makes_curves_of_them);
  tcase_add_test (tests, a_corner_beside_an_arc_made_smooth_keeps_the_arc);
  tcase_add_test (tests, a_node_made_symmetric_has_handles_alike_and_a_corner_again_keeps_its_shape);
}

int
main (void)
{
  TCase *tests = tcase_create ("changes");

  add_node_tests (tests);
  tcase_add_test (tests, a_segment_becomes_a_line_or_a_curve_of_the_same_shape);
  tcase_add_test (tests, an_arc_becomes_curves_that_lie_where_it_lay);
  tcase_add_test (tests, a_segment_made_an_arc_bulges_outwards_with_its_tangents_along_the_axes);
  tcase_add_test (tests, a_lone_segment_made_an_arc_bulges_towards_greater_y);
  tcase_add_test (tests, mapping_moves_and_stretches_every_place);
  tcase_add_test (tests, reversing_twice_gives_the_outline_back);
  tcase_add_test (tests, segments_are_added_behind_the_last_node);
  tcase_add_test (tests, no_change_takes_what_is_not_finite);
  return run_suite (suite_create ("outline changes"), tests);
}
