/* The path of a cutter beside the edges that it shall leave. */
#include "drawing/kerf.h"
#include "geometry/stretch.h"
#include "drawing/flat-corners.h"
#include "support/run-suite.h"

static double
area_of (const GArray *polygon)
{
  double sum = 0;

  for (guint i = 0; i < polygon->len; i++)
    {
      const Point a = g_array_index (polygon, Point, i), b = g_array_index (polygon, Point, (i + 1) % polygon->len);
      sum += (a.x * b.y - b.x * a.y) / 2;
    }
  return sum;
}

static double
round_of (const GArray *polygon)
{
  double sum = 0;

  for (guint i = 0; i < polygon->len; i++)
    sum += point_distance (g_array_index (polygon, Point, i), g_array_index (polygon, Point, (i + 1) % polygon->len));
  return sum;
}

static double
nearest (const GArray *polygon, Point place)
{
  double least = INFINITY;

  for (guint i = 0; i < polygon->len; i++)
    {
      const Point a = g_array_index (polygon, Point, i), way = point_sub (g_array_index (polygon, Point, (i + 1) % polygon->len), a);
      const double t = point_dot (point_sub (place, a), way) / point_dot (way, way);
      least = fmin (least, point_distance (place, point_add (a, point_scale (way, CLAMP (t, 0, 1)))));
    }
  return least;
}

static bool
cross (Point a, Point b, Point c, Point d)
{
  const double of_c = point_cross (point_sub (b, a), point_sub (c, a)), of_d = point_cross (point_sub (b, a), point_sub (d, a));
  const double of_a = point_cross (point_sub (d, c), point_sub (a, c)), of_b = point_cross (point_sub (d, c), point_sub (b, c));

  return of_c * of_d < 0 && of_a * of_b < 0;
}

static bool
crosses_itself (const GArray *polygon)
{
  const guint n = polygon->len;

  for (guint i = 0; i < n; i++)
    for (guint k = i + 2; k < n; k++)
      if (cross (g_array_index (polygon, Point, i), g_array_index (polygon, Point, i + 1), g_array_index (polygon, Point, k),
                 g_array_index (polygon, Point, (k + 1) % n)))
        return true;
  return false;
}

static void
turn_round (Point *corners, size_t count)
{
  for (size_t i = 0; i < count / 2; i++)
    {
      const Point kept = corners[i];
      corners[i] = corners[count - 1 - i];
      corners[count - 1 - i] = kept;
    }
}

/* The corners of a line's polygon. */
static GArray *
corners_of (Point start, const Segment segments[], size_t count)
{
  const FlatLine line = { FLAT_CUT, true, start, (Segment *) segments, count };
  GArray *corners = g_array_new (FALSE, FALSE, sizeof (Point));

  flat_line_corners (&line, 0.002, corners);
  return corners;
}

static const double kerfs[] = { 0.1, 0.2, 0.5 };
static const Point square[] = { { 0, 0 }, { 40, 0 }, { 40, 40 }, { 0, 40 } };

START_TEST (a_square_grows_by_half_the_kerf_on_each_side_and_keeps_its_corners_whichever_way_it_runs)
{
  const double by = kerfs[_i] / 2;

  for (int round = 0; round < 2; round++)
    {
      Point corners[4];
      memcpy (corners, square, sizeof square);
      if (round == 1)
        turn_round (corners, 4);
      g_autoptr (GArray) moved = kerf_polygon (corners, 4, by);
      ck_assert_uint_eq (moved->len, 4);
      for (guint i = 0; i < 4; i++)
        {
          const Point was = corners[i], is = g_array_index (moved, Point, i);
          ck_assert_double_eq_tol (is.x, was.x > 0 ? 40 + by : -by, 1e-12);
          ck_assert_double_eq_tol (is.y, was.y > 0 ? 40 + by : -by, 1e-12);
        }
    }
}
END_TEST

START_TEST (an_opening_shrinks_by_half_the_kerf_on_each_side_and_is_left_alone_where_the_cut_is_wider)
{
  FlatPiece *piece = flat_piece_new ("Former", NULL);
  flat_piece_add_box (piece, FLAT_OPENING, (Box) { { 10, 10 }, { 33, 22.5 } });
  flat_piece_add_box (piece, FLAT_OPENING, (Box) { { 50, 10 }, { 50.15, 30 } });
  g_autoptr (FlatPiece) moved = kerf_piece (piece, 0.2);
  const Box bay = segment_bounds (g_array_index (moved->lines, FlatLine, 0).start, &g_array_index (moved->lines, FlatLine, 0).segments[1]);
  FlatPiece *slot = flat_piece_new ("Slot", NULL);

  ck_assert_double_eq_tol (bay.max.x, 32.9, 1e-12);
  ck_assert_double_eq_tol (bay.max.y, 22.4, 1e-12);
  ck_assert_double_eq_tol (bay.min.x, 10.1, 1e-12);
  flat_piece_add_line (slot, FLAT_OPENING, true, g_array_index (moved->lines, FlatLine, 1).start, g_array_index (moved->lines, FlatLine, 1).segments, 3);
  ck_assert_double_eq (flat_piece_bounds (slot).min.x, 50);
  ck_assert_double_eq (flat_piece_bounds (slot).max.y, 30);
  flat_piece_free (slot);
  flat_piece_free (piece);
}
END_TEST

START_TEST (a_circles_radius_grows_by_half_the_kerf)
{
  const Segment circle[] = { segment_arc ((Point) { 50, 60 }, 30, 30, (Point) { 50, 90 }), segment_arc ((Point) { 50, 60 }, 30, 30, (Point) { 20, 60 }),
                             segment_arc ((Point) { 50, 60 }, 30, 30, (Point) { 50, 30 }), segment_arc ((Point) { 50, 60 }, 30, 30, (Point) { 80, 60 }) };
  g_autoptr (GArray) corners = corners_of ((Point) { 80, 60 }, circle, 4);
  const double by = kerfs[_i] / 2;
  g_autoptr (GArray) moved = kerf_polygon ((const Point *) (gpointer) corners->data, corners->len, by);

  ck_assert_uint_eq (moved->len, corners->len);
  for (guint i = 0; i < moved->len; i++)
    ck_assert_double_eq_tol (point_distance (g_array_index (moved, Point, i), (Point) { 50, 60 }), 30 + by, 0.0001);
}
END_TEST

/* Steiner's formula for a convex shape and the shape at most r away from it: A(r) = A + U r + pi r² (Federer, Geometric Measure Theory, 1969;
 * planar case). Its corners are round there; one that stays a corner and turns by 2u adds r² tan u where it had r² u. */
START_TEST (a_convex_shape_grows_as_steiners_formula_has_it)
{
  const Point convex[] = { { 0, 0 }, { 90, -12 }, { 160, 4 }, { 171, 60 }, { 80, 92 }, { -15, 40 } };
  const double r = kerfs[_i] / 2;
  g_autoptr (GArray) corners = g_array_new (FALSE, FALSE, sizeof (Point));
  double told;

  g_array_append_vals (corners, convex, G_N_ELEMENTS (convex));
  told = area_of (corners) + round_of (corners) * r + M_PI * r * r;
  for (size_t i = 0; i < 6; i++)
    {
      const Point before = point_sub (convex[(i + 1) % 6], convex[i]), after = point_sub (convex[(i + 2) % 6], convex[(i + 1) % 6]);
      const double half = atan2 (point_cross (before, after), point_dot (before, after)) / 2;
      told += r * r * (tan (half) - half);
    }
  g_autoptr (GArray) moved = kerf_polygon (convex, 6, r);
  ck_assert_double_eq_tol (area_of (moved), told, 1e-9);
}
END_TEST

START_TEST (a_cut_never_comes_nearer_to_an_edge_than_half_the_kerf_even_at_a_tip_as_sharp_as_a_trailing_edge)
{
  const Point sharp[] = { { 0, 0 }, { 200, 6 }, { 0, 12 } };
  const double by = kerfs[_i] / 2;
  g_autoptr (GArray) moved = kerf_polygon (sharp, 3, by);
  const double reach = nearest (moved, sharp[1]);

  ck_assert_uint_eq (moved->len, 4);           /* the tip is cut off square */
  for (size_t i = 0; i < 3; i++)
    ck_assert_double_ge (nearest (moved, sharp[i]), by - 1e-9);
  ck_assert_double_le (reach, 4 * by + 1e-9);
  ck_assert (!crosses_itself (moved));
}
END_TEST

/* A notch with a floor of many short sides: the path has no room for them in the corners. */
START_TEST (an_inner_corner_does_not_cross_itself)
{
  const Segment notched[] = { segment_line ((Point) { 100, 0 }), segment_line ((Point) { 100, 50 }), segment_line ((Point) { 60, 50 }),
                              segment_line ((Point) { 60, 30.1 }), segment_arc ((Point) { 59.9, 30.1 }, 0.1, 0.1, (Point) { 59.9, 30 }),
                              segment_curve ((Point) { 55, 29.5 }, (Point) { 45, 29.5 }, (Point) { 40, 30 }),
                              segment_curve ((Point) { 40.02, 30.3 }, (Point) { 40.3, 30.6 }, (Point) { 40, 50 }), segment_line ((Point) { 0, 50 }) };
  g_autoptr (GArray) corners = corners_of ((Point) { 0, 0 }, notched, G_N_ELEMENTS (notched));
  const double by = kerfs[_i] / 2;

  for (int round = 0; round < 2; round++)
    {
      g_autoptr (GArray) moved = kerf_polygon ((const Point *) (gpointer) corners->data, corners->len, by);
      ck_assert_ptr_nonnull (moved);
      ck_assert (!crosses_itself (moved));
      for (guint i = 0; i < corners->len; i++)
        ck_assert_double_ge (nearest (moved, g_array_index (corners, Point, i)), by - 1e-6);
      ck_assert_double_eq_tol (nearest (moved, (Point) { 80, 50 }), by, 1e-9);
      turn_round ((Point *) (gpointer) corners->data, corners->len);
    }
}
END_TEST

START_TEST (lines_that_are_no_edges_stay_and_so_does_everything_without_a_kerf)
{
  const double kerf = _i == 0 ? 0 : 0.3;
  FlatPiece *piece = flat_piece_new ("Wing", "flat");
  const Segment bow = segment_curve ((Point) { 5, 9 }, (Point) { 8, 9 }, (Point) { 20, 3 });

  flat_piece_add_straight (piece, FLAT_HINGE, (Point) { 1, 2 }, (Point) { 30, 2 });
  flat_piece_add_line (piece, _i == 0 ? FLAT_CUT : FLAT_MARK, true, (Point) { 0, 0 }, &bow, 1);
  flat_piece_add_line (piece, FLAT_CUT, false, (Point) { 0, 0 }, &bow, 1);
  flat_piece_add_words (piece, FLAT_MARK, 3, (Point) { 4, 5 }, "here");
  g_autoptr (FlatPiece) moved = kerf_piece (piece, kerf);
  ck_assert_str_eq (moved->remark, "flat");
  ck_assert_uint_eq (moved->lines->len, 3);
  ck_assert_uint_eq (moved->words->len, 1);
  for (guint i = 0; i < 3; i++)
    {
      const FlatLine *was = &g_array_index (piece->lines, FlatLine, i), *is = &g_array_index (moved->lines, FlatLine, i);
      ck_assert_uint_eq (is->count, 1);
      ck_assert_mem_eq (is->segments, was->segments, sizeof (Segment));
      ck_assert (is->closed == was->closed && is->purpose == was->purpose);
    }
  flat_piece_free (piece);
}
END_TEST

START_TEST (an_elliptical_wings_path_is_half_the_kerf_from_its_outline_all_round)
{
  const Segment wing[] = { segment_arc ((Point) { 40, 0 }, 40, 320, (Point) { 40, 320 }), segment_arc ((Point) { 40, 0 }, 90, 320, (Point) { 130, 0 }) };
  g_autoptr (GArray) corners = corners_of ((Point) { 0, 0 }, wing, 2);
  const double by = kerfs[_i] / 2;
  g_autoptr (GArray) moved = kerf_polygon ((const Point *) (gpointer) corners->data, corners->len, by);

  for (double t = 0; t <= 1; t += 1.0 / 512)
    {
      ck_assert_double_eq_tol (nearest (moved, segment_at ((Point) { 0, 0 }, &wing[0], t)), by, 0.003);
      ck_assert_double_eq_tol (nearest (moved, segment_at (wing[0].to, &wing[1], t)), by, 0.003);
    }
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("kerf");
  TCase *tests = tcase_create ("kerf");
  const int all = G_N_ELEMENTS (kerfs);

  tcase_add_loop_test (tests, a_square_grows_by_half_the_kerf_on_each_side_and_keeps_its_corners_whichever_way_it_runs, 0, all);
  tcase_add_test (tests, an_opening_shrinks_by_half_the_kerf_on_each_side_and_is_left_alone_where_the_cut_is_wider);
  tcase_add_loop_test (tests, a_circles_radius_grows_by_half_the_kerf, 0, all);
  tcase_add_loop_test (tests, a_convex_shape_grows_as_steiners_formula_has_it, 0, all);
  tcase_add_loop_test (tests, a_cut_never_comes_nearer_to_an_edge_than_half_the_kerf_even_at_a_tip_as_sharp_as_a_trailing_edge, 0, all);
  tcase_add_loop_test (tests, an_inner_corner_does_not_cross_itself, 0, all);
  tcase_add_loop_test (tests, lines_that_are_no_edges_stay_and_so_does_everything_without_a_kerf, 0, 2);
  tcase_add_loop_test (tests, an_elliptical_wings_path_is_half_the_kerf_from_its_outline_all_round, 0, all);
  return run_suite (suite, tests);
}
