#include <check.h>
#include "geometry/segment.h"
#include "support/random.h"
#include "support/run-suite.h"

typedef struct { const char *what; Point from; Segment segment; } Stretch;

static const Stretch stretches[] = {
  { .what = "a line", .from = { 3.5, -7.25 }, .segment = { .kind = SEGMENT_LINE, .to = { 41.25, 93.75 } } },
  { .what = "a curve", .from = { 3.5, -7.25 },
    .segment = { .kind = SEGMENT_CURVE, .to = { 41.25, 93.75 }, .control1 = { 31.5, 8.5 }, .control2 = { -11.25, 71.5 } } },
  { .what = "a curve that turns twice", .from = { 0, 0 },
    .segment = { .kind = SEGMENT_CURVE, .to = { 90, 31 }, .control1 = { 20.5, 150 }, .control2 = { 61.25, -120 } } },
  { .what = "a curve with a loop", .from = { 0, 0 },
    .segment = { .kind = SEGMENT_CURVE, .to = { 100, 0 }, .control1 = { 300, 200 }, .control2 = { -200, 200 } } },
  { .what = "a quarter ellipse", .from = { 110, 0 },
    .segment = { .kind = SEGMENT_ARC, .to = { 150, 320 }, .centre = { 150, 0 }, .rx = 40, .ry = 320 } },
  { .what = "half an ellipse", .from = { 110, 10 },
    .segment = { .kind = SEGMENT_ARC, .to = { 190, 10 }, .centre = { 150, 10 }, .rx = 40, .ry = 75 } },
  /* 3-4-5: both ends lie on the ellipse exactly. */
  { .what = "a long arc over the tip", .from = { 40 - 24, 24 },
    .segment = { .kind = SEGMENT_ARC, .to = { 40 + 32, 18 }, .centre = { 40, 0 }, .rx = 40, .ry = 30 } },
  { .what = "an arc whose ends are rounded off its ellipse", .from = { 15.998, 24.001 },
    .segment = { .kind = SEGMENT_ARC, .to = { 72.001, 17.998 }, .centre = { 40, 0 }, .rx = 40, .ry = 30 } },
};

enum { STRETCHES = sizeof stretches / sizeof *stretches };

static Point
at (const Stretch *stretch, double t)
{
  return segment_at (stretch->from, &stretch->segment, t);
}

START_TEST (a_stretch_begins_and_ends_exactly_at_its_nodes)
{
  const Stretch *stretch = &stretches[_i];
  const Point first = at (stretch, 0), last = at (stretch, 1);

  ck_assert (first.x == stretch->from.x && first.y == stretch->from.y);
  ck_assert (last.x == stretch->segment.to.x && last.y == stretch->segment.to.y);
  ck_assert_double_lt (point_distance (at (stretch, 1e-12), first), 1e-8);       /* and does not jump there */
  ck_assert_double_lt (point_distance (at (stretch, 1 - 1e-12), last), 1e-8);
}
END_TEST

START_TEST (a_quarter_ellipse_is_evaluated_by_its_angle)
{
  const Stretch *quarter = &stretches[4];

  for (double t = 0.03125; t < 1; t += 0.0625)
    {
      const Point place = at (quarter, t);
      ck_assert_double_eq_tol (place.x, 150 - 40 * cos (t * M_PI / 2), 1e-12 * 150);
      ck_assert_double_eq_tol (place.y, 320 * sin (t * M_PI / 2), 1e-12 * 320);
    }
}
END_TEST

START_TEST (an_arc_goes_the_shorter_way_in_either_direction)
{
  const Stretch *over = &stretches[6];
  const Stretch back = { .from = over->segment.to, .segment = segment_arc ((Point) { 40, 0 }, 40, 30, over->from) };

  ck_assert_double_gt (at (over, 0.5).y, 24);
  ck_assert_double_gt (at (&back, 0.5).y, 24);
  ck_assert_double_lt (point_distance (at (over, 0.25), at (&back, 0.75)), 1e-12 * 40);
}
END_TEST

START_TEST (half_an_ellipse_lies_on_the_side_of_greater_y)
{
  const Segment forward = segment_arc ((Point) { 150, 10 }, 40, 75, (Point) { 190, 10 });
  const Segment backward = segment_arc ((Point) { 150, 10 }, 40, 75, (Point) { 110, 10 });
  const Segment slanted = segment_arc ((Point) { 0, 0 }, 50, 50, (Point) { 30, -40 });
  const Segment rising = segment_arc ((Point) { 0, 0 }, 50, 50, (Point) { 30, 40 });

  ck_assert_double_eq_tol (segment_at ((Point) { 110, 10 }, &forward, 0.5).y, 85, 1e-12 * 85);
  ck_assert_double_eq_tol (segment_at ((Point) { 190, 10 }, &backward, 0.5).y, 85, 1e-12 * 85);
  ck_assert_double_eq_tol (segment_at ((Point) { -30, 40 }, &slanted, 0.5).y, 30, 1e-12 * 50);
  ck_assert_double_eq_tol (segment_at ((Point) { -30, -40 }, &rising, 0.5).y, 30, 1e-12 * 50);
}
END_TEST

START_TEST (half_an_ellipse_between_two_stations_lies_on_the_side_of_greater_x)
{
  const Segment up = segment_arc ((Point) { 150, 10 }, 40, 75, (Point) { 150, 85 });

  ck_assert_double_eq_tol (segment_at ((Point) { 150, -65 }, &up, 0.5).x, 190, 1e-12 * 190);
}
END_TEST

START_TEST (an_arc_whose_ends_are_off_its_ellipse_stays_an_ellipse_through_both)
{
  const Stretch *rounded = &stretches[7], *exact = &stretches[6];

  for (double t = 0; t <= 1; t += 0.125)   /* never further from the exact one than the ends are, 0.0022 */
    ck_assert_double_lt (point_distance (at (rounded, t), at (exact, t)), 0.003);
}
END_TEST

START_TEST (the_slope_is_the_derivative)
{
  const Stretch *stretch = &stretches[_i];
  const double h = 1e-5;      /* the difference is then right to h² of the third derivative and 1e-16 / h of the place */

  for (double t = 0.0625; t < 1; t += 0.125)
    {
      const Point slope = segment_slope (stretch->from, &stretch->segment, t);
      const Point difference = point_scale (point_sub (at (stretch, t + h), at (stretch, t - h)), 0.5 / h);
      ck_assert_msg (point_distance (slope, difference) < 1e-6 * 320, "%s at %g", stretch->what, t);
    }
}
END_TEST

START_TEST (the_two_parts_of_a_stretch_run_where_it_ran)
{
  const Stretch *stretch = &stretches[_i];

  for (double t = 0; t <= 1; t += 0.15625)
    {
      Segment first, second;
      segment_split (stretch->from, &stretch->segment, t, &first, &second);
      ck_assert_int_eq (first.kind, stretch->segment.kind);
      ck_assert_int_eq (second.kind, stretch->segment.kind);
      ck_assert_double_lt (point_distance (first.to, at (stretch, t)), 1e-13 * 320);
      for (double part = 0; part <= 1; part += 0.1875)
        {
          const Point before = segment_at (stretch->from, &first, part), after = segment_at (first.to, &second, part);
          ck_assert_double_lt (point_distance (before, at (stretch, t * part)), 1e-11 * 320);
          ck_assert_double_lt (point_distance (after, at (stretch, t + (1 - t) * part)), 1e-11 * 320);
        }
    }
}
END_TEST

START_TEST (a_reversed_stretch_runs_the_same_way_back)
{
  const Stretch *stretch = &stretches[_i];
  const Segment back = segment_reversed (stretch->from, &stretch->segment);

  for (double t = 0; t <= 1; t += 0.09375)
    ck_assert_double_lt (point_distance (segment_at (stretch->segment.to, &back, t), at (stretch, 1 - t)), 1e-12 * 320);
}
END_TEST

START_TEST (the_box_holds_the_stretch_and_no_more)
{
  enum { PLACES = 4000 };     /* a turn then lies within (1/8000)² of the bend from a sample */
  const Stretch *stretch = &stretches[_i];
  const Box box = segment_bounds (stretch->from, &stretch->segment);
  Box seen = { .min = stretch->from, .max = stretch->from };

  for (int i = 0; i <= PLACES; i++)
    {
      const Point place = at (stretch, (double) i / PLACES);
      seen.min = (Point) { fmin (seen.min.x, place.x), fmin (seen.min.y, place.y) };
      seen.max = (Point) { fmax (seen.max.x, place.x), fmax (seen.max.y, place.y) };
    }
  ck_assert_double_le (box.min.x, seen.min.x + 1e-12);
  ck_assert_double_le (box.min.y, seen.min.y + 1e-12);
  ck_assert_double_ge (box.max.x, seen.max.x - 1e-12);
  ck_assert_double_ge (box.max.y, seen.max.y - 1e-12);
  ck_assert_double_lt (point_distance (box.min, seen.min), 1e-3);
  ck_assert_double_lt (point_distance (box.max, seen.max), 1e-3);
}
END_TEST

START_TEST (y_turns_where_its_slope_is_nothing)
{
  const size_t expected[STRETCHES] = { 0, 0, 2, 1, 0, 1, 1, 1 };
  const Stretch *stretch = &stretches[_i];
  double t[2];
  const size_t count = segment_y_turns (stretch->from, &stretch->segment, t);

  ck_assert_msg (count == expected[_i], "%s: %zu turns", stretch->what, count);
  for (size_t i = 0; i < count; i++)
    {
      ck_assert (t[i] > 0 && t[i] < 1);
      ck_assert_double_lt (fabs (segment_slope (stretch->from, &stretch->segment, t[i]).y), 1e-10 * 320);
      ck_assert (i == 0 || t[i] > t[i - 1]);
    }
}
END_TEST

START_TEST (a_stretch_meets_a_station_where_it_says)
{
  const Stretch *stretch = &stretches[_i];

  for (double y = -119.5; y < 321; y += 0.75)
    {
      double t[3];
      const size_t count = segment_at_station (stretch->from, &stretch->segment, y, t);
      size_t changes = 0;

      for (size_t i = 0; i < count; i++)
        ck_assert_msg (fabs (at (stretch, t[i]).y - y) < 1e-9, "%s at %g", stretch->what, y);
      for (int i = 0; i < 500; i++)         /* as often as it changes from below to above */
        changes += (at (stretch, i / 500.0).y < y) != (at (stretch, (i + 1) / 500.0).y < y);
      ck_assert_msg (count >= changes && count <= 3, "%s at %g: %zu meetings, %zu changes", stretch->what, y, count, changes);
    }
}
END_TEST

START_TEST (a_station_through_an_end_or_a_turn_meets_it_once)
{
  const Stretch *half = &stretches[5];
  double t[3];

  ck_assert_uint_eq (segment_at_station (half->from, &half->segment, 85, t), 1);
  ck_assert_double_eq_tol (t[0], 0.5, 1e-7);       /* a square root of rounding */
  ck_assert_uint_eq (segment_at_station (half->from, &half->segment, 10, t), 2);
  ck_assert (t[0] == 0 && t[1] == 1);
  ck_assert_uint_eq (segment_at_station (half->from, &half->segment, 85.001, t), 0);
  ck_assert_uint_eq (segment_at_station (half->from, &half->segment, 9.999, t), 0);
}
END_TEST

START_TEST (a_line_along_a_station_meets_it_at_both_ends_and_a_point_is_nearest_at_its_beginning)
{
  const Segment level = segment_line ((Point) { 31, 40 }), point = segment_line ((Point) { 7, 40 });
  double t[3], distance;

  ck_assert_uint_eq (segment_at_station ((Point) { 7, 40 }, &level, 40, t), 2);
  ck_assert (t[0] == 0 && t[1] == 1);
  ck_assert_uint_eq (segment_at_station ((Point) { 7, 40 }, &level, 40.5, t), 0);
  ck_assert_double_eq (segment_nearest ((Point) { 7, 40 }, &point, (Point) { 10, 44 }, &distance), 0);
  ck_assert_double_eq (distance, 5);
}
END_TEST

START_TEST (no_place_is_nearer_than_the_nearest)
{
  const Stretch *stretch = &stretches[_i];
  Random random = { .state = 20240229 };

  for (int again = 0; again < 60; again++)
    {
      const Point point = { random_between (&random, -150, 350), random_between (&random, -200, 400) };
      double distance, least = INFINITY;
      const double t = segment_nearest (stretch->from, &stretch->segment, point, &distance);

      for (int i = 0; i <= 1000; i++)
        least = fmin (least, point_distance (at (stretch, i / 1000.0), point));
      ck_assert_msg (distance <= least + 1e-9, "%s: %g, but %g is nearer", stretch->what, distance, least);
      ck_assert_double_eq_tol (point_distance (at (stretch, t), point), distance, 1e-12 * 400);
    }
}
END_TEST

/* A quarter circle is π r / 2; a quarter ellipse of axes √2 : 1 is a E(1/2), E(1/2) = 1.3506438810 by Abramowitz and
 * Stegun, Handbook of Mathematical Functions, table 17.1 (ten digits); y = x² from 0 to 1 is √5 / 2 + asinh(2) / 4. */
START_TEST (lengths_agree_with_closed_forms)
{
  const double r = 71.25;
  const Segment circle = segment_arc ((Point) { 10, 20 }, r, r, (Point) { 10, 20 + r });
  const Segment ellipse = segment_arc ((Point) { 10, 20 }, r * M_SQRT2, r, (Point) { 10, 20 + r });
  const Segment parabola = segment_curve ((Point) { 1.0 / 3, 0 }, (Point) { 2.0 / 3, 1.0 / 3 }, (Point) { 1, 1 });
  const Segment line = segment_line ((Point) { 3, 4 });

  ck_assert_double_eq_tol (segment_length ((Point) { 10 - r, 20 }, &circle), M_PI * r / 2, 1e-9 * r);
  ck_assert_double_eq_tol (segment_length ((Point) { 10 - r * M_SQRT2, 20 }, &ellipse), r * M_SQRT2 * 1.3506438810, 1e-9 * r);
  ck_assert_double_eq_tol (segment_length ((Point) { 0, 0 }, &parabola), sqrt (5) / 2 + asinh (2) / 4, 1e-9);
  ck_assert_double_eq (segment_length ((Point) { 0, 0 }, &line), 5);
}
END_TEST

START_TEST (the_parts_of_a_stretch_are_as_long_as_the_whole)
{
  const Stretch *stretch = &stretches[_i];
  const double whole = segment_length (stretch->from, &stretch->segment);
  Segment first, second;

  segment_split (stretch->from, &stretch->segment, 0.3125, &first, &second);
  ck_assert_double_eq_tol (segment_length (stretch->from, &first) + segment_length (first.to, &second), whole, 2e-9 * whole);
}
END_TEST

START_TEST (an_arc_as_curves_stays_within_3e_4_of_its_larger_semi_axis)
{
  for (size_t k = 4; k < STRETCHES; k++)
    {
      const Stretch *arc = &stretches[k];
      const double allowed = 3e-4 * fmax (arc->segment.rx, arc->segment.ry);
      Segment curves[4];
      const size_t count = segment_as_curves (arc->from, &arc->segment, curves);
      Point from = arc->from;

      ck_assert (count >= 1 && count <= 4);
      for (size_t i = 0; i < count; from = curves[i++].to)
        for (double t = 0; t <= 1; t += 0.0625)
          {
            double distance;
            segment_nearest (arc->from, &arc->segment, segment_at (from, &curves[i], t), &distance);
            ck_assert_msg (distance <= allowed, "%s: %g off", arc->what, distance);
          }
      ck_assert (from.x == arc->segment.to.x && from.y == arc->segment.to.y);
    }
}
END_TEST

START_TEST (a_line_and_a_curve_as_curves_are_themselves)
{
  for (size_t k = 0; k < 4; k++)
    {
      Segment curves[4];

      ck_assert_uint_eq (segment_as_curves (stretches[k].from, &stretches[k].segment, curves), 1);
      ck_assert_int_eq (curves[0].kind, stretches[k].segment.kind);
      ck_assert_double_eq (curves[0].control1.x, stretches[k].segment.control1.x);
      ck_assert_double_eq (curves[0].to.y, stretches[k].segment.to.y);
    }
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("segments");

  tcase_add_loop_test (tests, a_stretch_begins_and_ends_exactly_at_its_nodes, 0, STRETCHES);
  tcase_add_test (tests, a_quarter_ellipse_is_evaluated_by_its_angle);
  tcase_add_test (tests, an_arc_goes_the_shorter_way_in_either_direction);
  tcase_add_test (tests, half_an_ellipse_lies_on_the_side_of_greater_y);
  tcase_add_test (tests, half_an_ellipse_between_two_stations_lies_on_the_side_of_greater_x);
  tcase_add_test (tests, an_arc_whose_ends_are_off_its_ellipse_stays_an_ellipse_through_both);
  tcase_add_loop_test (tests, the_slope_is_the_derivative, 0, STRETCHES);
  tcase_add_loop_test (tests, the_two_parts_of_a_stretch_run_where_it_ran, 0, STRETCHES);
  tcase_add_loop_test (tests, a_reversed_stretch_runs_the_same_way_back, 0, STRETCHES);
  tcase_add_loop_test (tests, the_box_holds_the_stretch_and_no_more, 0, STRETCHES);
  tcase_add_loop_test (tests, y_turns_where_its_slope_is_nothing, 0, STRETCHES);
  tcase_add_loop_test (tests, a_stretch_meets_a_station_where_it_says, 0, STRETCHES);
  tcase_add_test (tests, a_station_through_an_end_or_a_turn_meets_it_once);
  tcase_add_test (tests, a_line_along_a_station_meets_it_at_both_ends_and_a_point_is_nearest_at_its_beginning);
  tcase_add_loop_test (tests, no_place_is_nearer_than_the_nearest, 0, STRETCHES);
  tcase_add_test (tests, lengths_agree_with_closed_forms);
  tcase_add_loop_test (tests, the_parts_of_a_stretch_are_as_long_as_the_whole, 0, STRETCHES);
  tcase_add_test (tests, an_arc_as_curves_stays_within_3e_4_of_its_larger_semi_axis);
  tcase_add_test (tests, a_line_and_a_curve_as_curves_are_themselves);
  return run_suite (suite_create ("segment"), tests);
}
