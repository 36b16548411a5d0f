#include <check.h>
#include "geometry/outline.h"
#include "geometry/planform.h"
#include "support/changed.h"
#include "support/run-suite.h"
#include "support/shapes.h"

START_TEST (an_inserted_node_lies_on_its_segment_and_leaves_the_shape)
{
  Outline *wing = mixed_wing ();

  for (size_t segment = 0; segment < 5; segment++)
    {
      const Point from = outline_node (wing, segment), place = segment_at (from, outline_segment (wing, segment), 0.3125);
      Outline *more = CHANGED (wing, outline_with_node_inserted (wing, segment, 0.3125, made));

      ck_assert_uint_eq (outline_node_count (more), 7);
      assert_place (outline_node (more, segment + 1), place.x, place.y);
      assert_place (outline_node (more, segment + 2), outline_node (wing, segment + 1).x, outline_node (wing, segment + 1).y);
      ck_assert_int_eq (outline_segment (more, segment)->kind, outline_segment (wing, segment)->kind);
      ck_assert_int_eq (outline_segment (more, segment + 1)->kind, outline_segment (wing, segment)->kind);
      ck_assert_int_eq (outline_node_kind (more, segment + 2), outline_node_kind (wing, segment + 1));
      outline_unref (more);
    }
  outline_unref (wing);
}
END_TEST

START_TEST (an_inserted_node_is_smooth_on_a_bend_and_a_corner_on_a_line)
{
  Outline *wing = mixed_wing (), *none = NULL;
  Outline *on_line = CHANGED (wing, outline_with_node_inserted (wing, 0, 0.5, made));
  Outline *on_curve = CHANGED (wing, outline_with_node_inserted (wing, 1, 0.5, made));

  ck_assert_int_eq (outline_node_kind (on_line, 1), NODE_CORNER);
  ck_assert_int_eq (outline_node_kind (on_curve, 2), NODE_SMOOTH);
  ck_assert_int_eq (outline_with_node_inserted (wing, 0, 0, &none), CORE_OUT_OF_RANGE);
  ck_assert_int_eq (outline_with_node_inserted (wing, 0, 1, &none), CORE_OUT_OF_RANGE);
  ck_assert_ptr_null (none);
  outline_unref (wing);
  outline_unref (on_line);
  outline_unref (on_curve);
}
END_TEST

/* The larger side is 407; what comes back is the same to 1e-6 of it. */
START_TEST (a_node_inserted_and_removed_gives_the_segment_back)
{
  Outline *wing = mixed_wing ();

  for (size_t segment = 0; segment < 5; segment++)
    for (double t = 0.0625; t < 1; t += 0.21875)
      {
        Outline *more = CHANGED (wing, outline_with_node_inserted (wing, segment, t, made));
        Outline *back = CHANGED (more, outline_without_node (more, segment + 1, made));
        const Segment *old = outline_segment (wing, segment), *got = outline_segment (back, segment);

        ck_assert_uint_eq (outline_segment_count (back), 5);
        ck_assert_int_eq (got->kind, old->kind);
        for (double at = 0; at <= 1; at += 0.0625)
          {
            const Point place = segment_at (outline_node (wing, segment), old, at);
            ck_assert_double_lt (point_distance (segment_at (outline_node (back, segment), got, at), place), 1e-6 * 407);
          }
        outline_unref (more);
        outline_unref (back);
      }
  outline_unref (wing);
}
END_TEST

/* A cubic cut in two places, and the node between the two cuts taken out: still a part of that cubic. */
START_TEST (pieces_of_one_curve_join_into_a_piece_of_it)
{
  Outline *leaf = leaf_of_curves ();
  Outline *one = CHANGED (leaf, outline_with_node_inserted (leaf, 0, 0.25, made));
  Outline *two = CHANGED (one, outline_with_node_inserted (one, 1, 0.5, made));
  Outline *back = CHANGED (two, outline_without_node (two, 1, made));

  for (double at = 0; at <= 1; at += 0.125)
    {
      double distance;
      const Point place = segment_at (outline_node (back, 0), outline_segment (back, 0), at);
      segment_nearest (outline_node (leaf, 0), outline_segment (leaf, 0), place, &distance);
      ck_assert_double_lt (distance, 1e-6 * 121.5);
    }
  outline_unref (leaf);
  outline_unref (one);
  outline_unref (two);
  outline_unref (back);
}
END_TEST

START_TEST (a_node_between_unlike_segments_leaves_a_curve_with_the_outer_tangents)
{
  Outline *wing = mixed_wing ();
  Outline *fewer = CHANGED (wing, outline_without_node (wing, 2, made));
  const Segment *joined = outline_segment (fewer, 1);
  const Point from = outline_node (fewer, 1), begins = point_sub (joined->control1, from), ends = point_sub (joined->to, joined->control2);

  ck_assert_int_eq (joined->kind, SEGMENT_CURVE);
  assert_place (joined->to, 112.5, 407);
  ck_assert_double_eq_tol (begins.x * 50.25 - begins.y * 4, 0, 1e-9 * 407 * 50);      /* as the curve left: 4, 50.25 */
  ck_assert (begins.y > 0 && ends.x > 0);
  ck_assert_double_eq_tol (ends.y, 0, 1e-9 * 407);                                    /* as the arc arrived: along x */
  for (double at = 0; at <= 1; at += 0.0625)
    {
      double distance;
      size_t segment;
      double t;
      distance = outline_nearest (wing, segment_at (from, joined, at), &segment, &t);
      ck_assert_double_lt (distance, 0.02 * 407);      /* as near as one cubic comes to the kink that was there */
    }
  outline_unref (wing);
  outline_unref (fewer);
}
END_TEST

START_TEST (the_fitted_curve_lies_closest_among_its_neighbours)
{
  const Segment edges[] = { segment_curve ((Point) { 0, 60 }, (Point) { 20, 120 }, (Point) { 60, 130 }),
                            segment_curve ((Point) { 130, 147.5 }, (Point) { 150, 80 }, (Point) { 170, 0 }) };
  Outline *outline = outline_from ((Point) { 0, 0 }, edges, 2);
  Outline *fitted = CHANGED (outline, outline_without_node (outline, 1, made));
  double squares[5] = { 0 };

  for (int k = 0; k < 5; k++)       /* as it is; then either handle 2 % longer or shorter */
    {
      Segment curve = *outline_segment (fitted, 0);
      const double longer = k % 2 ? 1.02 : 0.98;
      if (k == 1 || k == 2)
        curve.control1 = point_scale (curve.control1, longer);
      else if (k > 2)
        curve.control2 = point_mix (curve.to, curve.control2, longer);
      for (double t = 0; t <= 2; t += 0.015625)
        {
          double distance;
          const Point place = t <= 1 ? segment_at ((Point) { 0, 0 }, &edges[0], t) : segment_at (edges[0].to, &edges[1], t - 1);
          segment_nearest ((Point) { 0, 0 }, &curve, place, &distance);
          squares[k] += distance * distance;
        }
      ck_assert_double_ge (squares[k], squares[0]);
    }
  outline_unref (outline);
  outline_unref (fitted);
}
END_TEST

START_TEST (two_lines_join_into_a_line_and_an_end_takes_its_segment_along)
{
  const Point nodes[] = { { 0, 0 }, { 0, 90 }, { 60, 95 }, { 70, 0 } };
  Outline *box = polygon_from (nodes, 4);
  Outline *middle = CHANGED (box, outline_without_node (box, 1, made));
  Outline *first = CHANGED (box, outline_without_node (box, 0, made));
  Outline *last = CHANGED (box, outline_without_node (box, 3, made));

  ck_assert_int_eq (outline_segment (middle, 0)->kind, SEGMENT_LINE);
  assert_place (outline_node (middle, 1), 60, 95);
  assert_place (outline_node (first, 0), 0, 90);
  assert_place (outline_node (first, 2), 70, 0);
  assert_place (outline_node (last, 2), 60, 95);
  ck_assert_uint_eq (outline_node_count (last), 3);
  outline_unref (box);
  outline_unref (middle);
  outline_unref (first);
  outline_unref (last);
}
END_TEST

START_TEST (the_last_two_nodes_stay)
{
  const Point nodes[] = { { 0, 0 }, { 0, 90 } };
  Outline *line = polygon_from (nodes, 2), *none = NULL;

  ck_assert_int_eq (outline_without_node (line, 0, &none), CORE_TOO_FEW_NODES);
  ck_assert_int_eq (outline_without_node (line, 1, &none), CORE_TOO_FEW_NODES);
  ck_assert_int_eq (outline_with_nodes_joined (line, 0, &none), CORE_TOO_FEW_NODES);
  ck_assert_ptr_null (none);
  outline_unref (line);
}
END_TEST

START_TEST (a_split_corner_is_cut_off_at_its_length_along_both_edges)
{
  const Point nodes[] = { { 0, 0 }, { 0, 90 }, { 60, 90 }, { 60, 0 } };
  Outline *box = polygon_from (nodes, 4);
  Outline *cut = CHANGED (box, outline_with_node_split (box, 1, 12.5, made));
  Outline *far_cut = CHANGED (box, outline_with_node_split (box, 1, 1000, made));

  ck_assert_uint_eq (outline_node_count (cut), 5);
  assert_place (outline_node (cut, 1), 0, 77.5);
  assert_place (outline_node (cut, 2), 12.5, 90);
  ck_assert_int_eq (outline_segment (cut, 1)->kind, SEGMENT_LINE);
  assert_place (outline_node (far_cut, 1), 0, 45);        /* at most half of either edge */
  assert_place (outline_node (far_cut, 2), 30, 90);
  outline_unref (box);
  outline_unref (cut);
  outline_unref (far_cut);
}
END_TEST

START_TEST (a_split_measures_along_the_bend_and_the_rest_lies_where_it_lay)
{
  Outline *wing = mixed_wing ();
  Outline *cut = CHANGED (wing, outline_with_node_split (wing, 3, 21.5, made));
  Segment gone;

  ck_assert_uint_eq (outline_node_count (cut), 7);
  ck_assert_int_eq (outline_segment (cut, 2)->kind, SEGMENT_ARC);
  ck_assert_int_eq (outline_segment (cut, 3)->kind, SEGMENT_LINE);
  gone = segment_arc ((Point) { 112.5, 321.5 }, 60, 85.5, (Point) { 112.5, 407 });
  ck_assert_double_eq_tol (segment_length (outline_node (cut, 3), &gone), 21.5, 1e-8 * 407);
  for (double at = 0; at <= 1; at += 0.25)
    {
      double distance;
      const Point place = segment_at (outline_node (cut, 4), outline_segment (cut, 4), at);
      segment_nearest (outline_node (wing, 3), outline_segment (wing, 3), place, &distance);
      ck_assert_double_lt (distance, 1e-9 * 407);
    }
  outline_unref (wing);
  outline_unref (cut);
}
END_TEST

START_TEST (a_split_beside_a_segment_without_length_cuts_nothing_from_it)
{
  const Point nodes[] = { { 0, 0 }, { 0, 90 }, { 0, 90 }, { 60, 90 }, { 60, 0 } };
  Outline *box = polygon_from (nodes, 5);
  Outline *cut = CHANGED (box, outline_with_node_split (box, 1, 12.5, made));

  assert_place (outline_node (cut, 1), 0, 77.5);
  assert_place (outline_node (cut, 2), 0, 90);
  outline_unref (box);
  outline_unref (cut);
}
END_TEST

START_TEST (only_a_node_with_two_neighbours_is_split)
{
  Outline *wing = mixed_wing (), *none = NULL;

  ck_assert_int_eq (outline_with_node_split (wing, 0, 5, &none), CORE_OUT_OF_RANGE);
  ck_assert_int_eq (outline_with_node_split (wing, 5, 5, &none), CORE_OUT_OF_RANGE);
  ck_assert_int_eq (outline_with_node_split (wing, 2, 0, &none), CORE_OUT_OF_RANGE);
  ck_assert_int_eq (outline_with_node_split (wing, 2, -5, &none), CORE_OUT_OF_RANGE);
  ck_assert_ptr_null (none);
  outline_unref (wing);
}
END_TEST

START_TEST (joined_nodes_meet_in_their_middle)
{
  Outline *wing = mixed_wing ();
  Outline *joined = CHANGED (wing, outline_with_nodes_joined (wing, 1, made));
  Outline *at_root = CHANGED (wing, outline_with_nodes_joined (wing, 0, made));

  ck_assert_uint_eq (outline_node_count (joined), 5);
  assert_place (outline_node (joined, 1), (13.5 + 52.5) / 2, (171.25 + 321.5) / 2);
  ck_assert_int_eq (outline_segment (joined, 0)->kind, SEGMENT_LINE);
  ck_assert_int_eq (outline_segment (joined, 1)->kind, SEGMENT_ARC);        /* stretched about its other end */
  assert_place (outline_segment (joined, 1)->centre, 112.5, (171.25 + 321.5) / 2);
  assert_place (outline_node (at_root, 0), 6.75, 85.625);
  ck_assert_int_eq (outline_segment (at_root, 0)->kind, SEGMENT_CURVE);
  outline_unref (wing);
  outline_unref (joined);
  outline_unref (at_root);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("nodes");

  tcase_add_test (tests, an_inserted_node_lies_on_its_segment_and_leaves_the_shape);
  tcase_add_test (tests, an_inserted_node_is_smooth_on_a_bend_and_a_corner_on_a_line);
  tcase_add_test (tests, a_node_inserted_and_removed_gives_the_segment_back);
  tcase_add_test (tests, pieces_of_one_curve_join_into_a_piece_of_it);
  tcase_add_test (tests, a_node_between_unlike_segments_leaves_a_curve_with_the_outer_tangents);
  tcase_add_test (tests, the_fitted_curve_lies_closest_among_its_neighbours);
  tcase_add_test (tests, two_lines_join_into_a_line_and_an_end_takes_its_segment_along);
  tcase_add_test (tests, the_last_two_nodes_stay);
  tcase_add_test (tests, a_split_corner_is_cut_off_at_its_length_along_both_edges);
  tcase_add_test (tests, a_split_measures_along_the_bend_and_the_rest_lies_where_it_lay);
  tcase_add_test (tests, a_split_beside_a_segment_without_length_cuts_nothing_from_it);
  tcase_add_test (tests, only_a_node_with_two_neighbours_is_split);
  tcase_add_test (tests, joined_nodes_meet_in_their_middle);
  return run_suite (suite_create ("outline nodes"), tests);
}
