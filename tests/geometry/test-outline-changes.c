#include <check.h>
#include "geometry/outline.h"
#include "support/changed.h"
#include "support/run-suite.h"
#include "support/shapes.h"

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

int
main (void)
{
  TCase *tests = tcase_create ("changes");

  tcase_add_test (tests, mapping_moves_and_stretches_every_place);
  tcase_add_test (tests, reversing_twice_gives_the_outline_back);
  tcase_add_test (tests, segments_are_added_behind_the_last_node);
  tcase_add_test (tests, no_change_takes_what_is_not_finite);
  return run_suite (suite_create ("outline changes"), tests);
}
