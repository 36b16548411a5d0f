/* Stretches between clicks: followed, drawn by hand, held to a line; where an outline's ends go; how sure a stretch is. The truth is what
 * the test draws. */
#include <math.h>
#include <stdlib.h>
#include "plan/stretch.h"
#include "plan/sureness.h"
#include "plan/trace.h"
#include "support/drawn-ink.h"
#include "support/run-suite.h"
#include "support/shapes.h"

enum { WIDTH = 700, HEIGHT = 360 };
static const double SCALE = 6;                       /* px a mm */
static const Point AXIS = { 60, 60 };                /* px: where the own axes begin; x runs down the picture */
static const Mapping paper = { .h = { 1 / 6.0, 0, 0, 0, 1 / 6.0, 0, 0, 0, 1 }, .lens_radius = 400 };

static Point
px (double x, double y)
{
  return (Point) { AXIS.x + SCALE * y, AXIS.y + SCALE * x };
}

static TraceRequest
request_for (const Point clicks[], size_t count)
{
  return (TraceRequest) { .mapping = &paper, .frame = { .fore = { AXIS.x / SCALE, AXIS.y / SCALE }, .along = { 0, 1 }, .side = 1 },
                          .clicks = clicks, .click_count = count, .click_sigma = 2, .tolerance = NAN };
}

static Trace
traced (const Ink *ink, const TraceRequest *request)
{
  Trace trace;

  ck_assert_int_eq (trace_outline (ink, request, &trace), CORE_OK);
  return trace;
}

static double
off_outline (const Trace *trace, double x, double y)
{
  size_t segment;
  double t;

  return outline_nearest (trace->outline, (Point) { x, y }, &segment, &t);
}

/* A leading edge with a bulge forward between stations 30 and 60. */
static Ink *
edge_with_bulge (void)
{
  const Point places[] = { px (10, 0), px (10, 30), px (8, 38), px (8, 52), px (10, 60), px (10, 95) };
  const DrawnLine line = { places, sizeof places / sizeof *places, 3 };

  return ink_of_lines (WIDTH, HEIGHT, &line, 1);
}

START_TEST (a_stretch_drawn_by_hand_stays_straight_and_the_others_cling_to_the_line)
{
  const Point clicks[] = { px (10, 2), px (10, 30), px (10, 60), px (10, 92) };
  const bool drawn[] = { false, true, false };
  Ink *ink = edge_with_bulge ();
  TraceRequest request = request_for (clicks, sizeof clicks / sizeof *clicks);
  Trace trace = traced (ink, &request);

  ck_assert_double_lt (off_outline (&trace, 8, 45), 0.1);
  trace_clear (&trace);
  request.drawn = drawn;
  trace = traced (ink, &request);
  ck_assert_double_lt (off_outline (&trace, 10, 45), 0.1);
  ck_assert_double_lt (off_outline (&trace, 10, 15), 0.1);
  ck_assert_double_lt (off_outline (&trace, 10, 80), 0.1);
  trace_clear (&trace);
  ink_unref (ink);
}
END_TEST

START_TEST (a_trace_all_drawn_by_hand_needs_no_line)
{
  const Point clicks[] = { px (2, 0), px (4, 60), px (20, 60), px (22, 0) };
  const bool drawn[] = { true, true, true };
  const DrawnLine elsewhere = { (Point[]) { px (40, 0), px (40, 90) }, 2, 3 };
  Ink *ink = ink_of_lines (WIDTH, HEIGHT, &elsewhere, 1);
  TraceRequest request = request_for (clicks, sizeof clicks / sizeof *clicks);
  Trace trace;

  request.drawn = drawn;
  request.ends_on_axis = true;
  trace = traced (ink, &request);
  ck_assert_uint_eq (outline_segment_count (trace.outline), 3);
  for (size_t i = 0; i < sizeof clicks / sizeof *clicks; i++)
    ck_assert_double_lt (point_distance (outline_node (trace.outline, i), (Point[]) { { 2, 0 }, { 4, 60 }, { 20, 60 }, { 22, 0 } }[i]), 0.1);
  trace_clear (&trace);
  ink_unref (ink);
}
END_TEST

START_TEST (the_ends_of_a_root_off_the_centre_line_stand_at_one_station)
{
  const Point corners[] = { px (5, 12), px (8, 90), px (24, 90), px (30, 12), px (5, 12) };
  const Point clicks[] = { px (5, 11.6), px (8, 90), px (24, 90), px (30, 12.5) };
  const DrawnLine line = { corners, sizeof corners / sizeof *corners, 3 };
  Ink *ink = ink_of_lines (WIDTH, HEIGHT, &line, 1);
  TraceRequest request = request_for (clicks, sizeof clicks / sizeof *clicks);
  Trace trace;

  request.ends_on_axis = true;
  request.root = 12;
  trace = traced (ink, &request);
  const size_t last = outline_node_count (trace.outline) - 1;
  ck_assert_double_eq (outline_node (trace.outline, 0).y, 12);
  ck_assert_double_eq (outline_node (trace.outline, last).y, 12);
  ck_assert_double_eq_tol (outline_node (trace.outline, 0).x, 5, 0.15);
  ck_assert_double_eq_tol (outline_node (trace.outline, last).x, 30, 0.15);
  ck_assert_int_eq (outline_check (trace.outline, NULL), CORE_OK);
  trace_clear (&trace);
  ink_unref (ink);
}
END_TEST

/* A body from the side, nose at the left end of its axis: 80 long, 12 above and 8 below. */
static size_t
side_of_body (Point *places)
{
  size_t count = 0;

  for (int i = 0; i <= 360; i++)
    {
      const double turn = i * M_PI / 180, high = sin (turn) > 0 ? 12 : 8;
      places[count++] = px (42 - 40 * cos (turn), 25 + high * sin (turn));
    }
  return count;
}

START_TEST (a_body_from_the_side_runs_over_its_top_first_whichever_way_it_was_clicked)
{
  Point places[400], clicks[9];
  const DrawnLine line = { places, side_of_body (places), 3 };
  Ink *ink = ink_of_lines (WIDTH, HEIGHT, &line, 1);

  for (int way = 0; way < 2; way++)
    {
      for (int i = 0; i <= 8; i++)
        clicks[i] = places[way == 0 ? 45 * i : 360 - 45 * i];
      TraceRequest request = request_for (clicks, 9);
      request.frame.fore.x = px (0, 25).x / SCALE;
      request.goes_round = true;
      Trace trace = traced (ink, &request);
      const Outline *outline = trace.outline;
      const Point half = segment_at (outline_node (outline, 0), outline_segment (outline, 0), 0.5);
      const Point first = outline_node (outline, 0), last = outline_node (outline, outline_node_count (outline) - 1);
      ck_assert_double_gt (half.y, 0);
      ck_assert_double_eq (first.x, last.x);
      ck_assert_double_eq (first.y, last.y);
      ck_assert_double_lt (off_outline (&trace, 42, 12), 0.15);
      ck_assert_double_lt (off_outline (&trace, 42, -8), 0.15);
      trace_clear (&trace);
    }
  ink_unref (ink);
}
END_TEST

START_TEST (a_bodys_blunt_nose_is_kept_though_a_line_is_printed_ahead_of_it)
{
  static const Point ends[] = { { 5, 0 }, { 5, 6 }, { 30, 16 }, { 60, 12 }, { 92, 4 }, { 92, 0.5 }, { 60, -9 }, { 30, -12 }, { 5, -7.5 }, { 5, 0 } };
  enum { COUNT = sizeof ends / sizeof *ends };
  const Point ahead[] = { px (2, 8), px (2, 45) };
  Point corners[COUNT], clicks[COUNT];

  for (size_t i = 0; i < COUNT; i++)
    {
      corners[i] = px (ends[i].x, 26 + ends[i].y);
      clicks[i] = point_add (corners[i], (Point) { i % 2 ? 2 : -2, i % 3 ? 2 : -1 });
    }
  const DrawnLine lines[] = { { corners, COUNT, 2.5 }, { ahead, 2, 3 } };
  Ink *ink = ink_of_lines (WIDTH, 640, lines, 2);
  TraceRequest request = request_for (clicks, COUNT);
  request.frame.fore.x = px (0, 26).x / SCALE;
  request.goes_round = true;
  request.click_sigma = 6;
  Trace trace = traced (ink, &request);
  for (size_t i = 0; i < COUNT; i++)
    ck_assert_double_lt (off_outline (&trace, ends[i].x, ends[i].y), 0.7);
  ck_assert_double_lt (off_outline (&trace, 5, -3), 0.2);
  ck_assert_double_gt (outline_bounds (trace.outline).min.x, 4.6);
  trace_clear (&trace);
  ink_unref (ink);
}
END_TEST

/* Two lines side by side, 1.4 mm apart. */
static Point
followed_end (bool holds_on)
{
  const Point one[] = { px (10, 0), px (10, 95) }, other[] = { px (11.4, 0), px (11.4, 95) };
  const DrawnLine lines[] = { { one, 2, 2 }, { other, 2, 2 } };
  const Point clicks[] = { px (10, 5), px (10, 30), px (11.8, 80) };
  const FollowOptions options = { .px_per_mm = SCALE, .click_sigma = 2, .holds_on = holds_on };
  Ink *ink = ink_of_lines (WIDTH, HEIGHT, lines, 2);
  FollowedLine line;

  ck_assert_int_eq (follow_line (ink, clicks, 3, &options, &line), CORE_OK);
  const Point end = line.places[line.count - 1];
  followed_line_clear (&line);
  ink_unref (ink);
  return end;
}

START_TEST (held_to_the_present_line_it_stays_there_though_the_pointer_lies_on_the_next)
{
  ck_assert_double_eq_tol (followed_end (false).y, px (11.4, 80).y, 1);
  ck_assert_double_eq_tol (followed_end (true).y, px (10, 80).y, 1);
}
END_TEST

START_TEST (a_clean_line_is_sure_to_a_fraction_of_a_pixel_and_a_gap_is_lost)
{
  const Point fore[] = { px (10, 0), px (10, 45) }, aft[] = { px (10, 75), px (10, 95) };
  const DrawnLine lines[] = { { fore, 2, 3 }, { aft, 2, 3 } };
  const Point clicks[] = { px (10, 2), px (10, 92) };
  const FollowOptions options = { .px_per_mm = SCALE, .click_sigma = 2 };
  Ink *ink = ink_of_lines (WIDTH, HEIGHT, lines, 2);
  FollowedLine line;

  ck_assert_int_eq (follow_line (ink, clicks, 2, &options, &line), CORE_OK);
  const Sureness seen = sureness_of (&line, 0, followed_line_nearest (&line, px (10, 43)), SCALE);
  const Sureness gap = sureness_of (&line, followed_line_nearest (&line, px (10, 48)), followed_line_nearest (&line, px (10, 72)), SCALE);
  ck_assert_double_lt (seen.lost, 0.05);
  ck_assert_double_lt (seen.sigma, 0.25);
  ck_assert_double_gt (gap.lost, 0.9);
  followed_line_clear (&line);
  ink_unref (ink);
}
END_TEST

/* A slightly bent edge across a sheet of 10 px a mm. */
static Stretch
stretch_of (double px_a_mm, double length)
{
  const Mapping mapping = { .h = { 1 / px_a_mm, 0, 0, 0, 1 / px_a_mm, 0, 0, 0, 1 }, .lens_radius = 2000 };
  Point places[101];
  const DrawnLine line = { places, 101, 0.5 * px_a_mm };
  const int width = (int) ((length + 30) * px_a_mm), height = (int) (40 * px_a_mm);
  Stretch stretch;

  for (int i = 0; i <= 100; i++)
    places[i] = (Point) { (5 + i * (length + 20) / 100) * px_a_mm, (20 + 3 * sin (i / 100.0 * M_PI)) * px_a_mm };
  Ink *ink = ink_of_lines (width, height, &line, 1);
  const StretchRequest request = { .mapping = &mapping, .behind = { places[5] }, .behind_count = 1, .from = places[10],
                                   .to = point_add (places[90], (Point) { 0, px_a_mm }), .click_sigma = px_a_mm };
  ck_assert_int_eq (stretch_follow (ink, &request, &stretch), CORE_OK);
  for (size_t i = 0; i < stretch.count; i++)
    {
      const double along = (stretch.places[i].x / px_a_mm - 5) / (length + 20);
      ck_assert_double_eq_tol (stretch.places[i].y / px_a_mm, 20 + 3 * sin (along * M_PI), 0.2);
    }
  ck_assert_double_eq_tol (stretch.places[0].x / px_a_mm, places[10].x / px_a_mm, 1.5);
  ck_assert_double_eq_tol (stretch.places[stretch.count - 1].x / px_a_mm, places[90].x / px_a_mm, 1.5);
  ink_unref (ink);
  return stretch;
}

START_TEST (a_short_stretch_is_looked_at_pixel_by_pixel_a_long_one_more_coarsely_and_both_lie_on_the_line)
{
  Stretch near = stretch_of (10, 30), far = stretch_of (10, 180);

  ck_assert_double_lt (near.lost, 0.05);
  ck_assert_double_lt (far.lost, 0.05);
  ck_assert_double_lt (near.sigma, 0.05);
  ck_assert_uint_gt (near.count, 200);
  ck_assert_uint_lt (far.count, 900);
  stretch_clear (&near);
  stretch_clear (&far);
}
END_TEST

/* A tip between two clicks: a stretch that knows where the line goes on ends beside its click, and the line about the tip is seen. */
START_TEST (between_its_neighbours_a_stretch_is_seen_where_alone_it_is_lost)
{
  Point places[61];
  for (int i = 0; i <= 60; i++)
    places[i] = px (30 + 24 * sin (M_PI * (i - 30) / 60.0), 20 + 70 * cos (M_PI * (i - 30) / 60.0));
  const DrawnLine line = { places, 61, 3 };
  StretchRequest request = { .mapping = &paper, .behind = { places[1] }, .behind_count = 1, .from = places[22], .to = places[42],
                             .click_sigma = 3, .ahead = places[58], .has_ahead = true };
  Ink *ink = ink_of_lines (WIDTH, HEIGHT, &line, 1);
  Stretch between, alone;

  ck_assert_int_eq (stretch_follow (ink, &request, &between), CORE_OK);
  request.behind_count = 0;
  request.has_ahead = false;
  ck_assert_int_eq (stretch_follow (ink, &request, &alone), CORE_OK);
  ck_assert_double_lt (between.lost, 0.1);
  ck_assert_double_gt (alone.lost, between.lost);
  ck_assert_double_lt (point_distance (between.places[0], places[22]), 4);
  ck_assert_double_lt (point_distance (between.places[between.count - 1], places[42]), 4);
  stretch_clear (&between);
  stretch_clear (&alone);
  ink_unref (ink);
}
END_TEST

/* An edge along station 0 to 60 that is not printed from 40 to 46. */
START_TEST (a_stretch_tells_how_far_its_line_passes_the_pointer_and_a_gap_is_no_miss)
{
  const struct { Point to; double missed; } asked[] = { { px (10.5, 30), 0.5 }, { px (12.6, 30), 2.6 }, { px (10, 43), 0 }, { px (10.6, 43), 0.6 } };
  const DrawnLine lines[] = { { (Point[]) { px (10, 0), px (10, 40) }, 2, 3 }, { (Point[]) { px (10, 46), px (10, 60) }, 2, 3 } };
  Ink *ink = ink_of_lines (WIDTH, HEIGHT, lines, 2);

  for (size_t i = 0; i < sizeof asked / sizeof *asked; i++)
    {
      const StretchRequest request = { .mapping = &paper, .from = px (10, 2), .to = asked[i].to, .click_sigma = 3 };
      Stretch stretch;

      ck_assert_int_eq (stretch_follow (ink, &request, &stretch), CORE_OK);
      ck_assert_double_eq_tol (stretch.missed, asked[i].missed, 0.35);
      stretch_clear (&stretch);
    }
  ink_unref (ink);
}
END_TEST

START_TEST (a_stretch_beyond_the_picture_is_refused)
{
  const DrawnLine line = { (Point[]) { px (10, 0), px (10, 90) }, 2, 3 };
  const StretchRequest request = { .mapping = &paper, .from = { 2000, 2000 }, .to = { 2300, 2100 }, .click_sigma = 3 };
  Ink *ink = ink_of_lines (WIDTH, HEIGHT, &line, 1);
  Stretch stretch;

  ck_assert_int_eq (stretch_follow (ink, &request, &stretch), CORE_OUT_OF_RANGE);
  ink_unref (ink);
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("plan trace-stretches");
  TCase *tcase = tcase_create ("stretches");

  tcase_add_test (tcase, a_stretch_drawn_by_hand_stays_straight_and_the_others_cling_to_the_line);
  tcase_add_test (tcase, a_trace_all_drawn_by_hand_needs_no_line);
  tcase_add_test (tcase, the_ends_of_a_root_off_the_centre_line_stand_at_one_station);
  tcase_add_test (tcase, a_body_from_the_side_runs_over_its_top_first_whichever_way_it_was_clicked);
  tcase_add_test (tcase, a_bodys_blunt_nose_is_kept_though_a_line_is_printed_ahead_of_it);
  tcase_add_test (tcase, held_to_the_present_line_it_stays_there_though_the_pointer_lies_on_the_next);
  tcase_add_test (tcase, a_clean_line_is_sure_to_a_fraction_of_a_pixel_and_a_gap_is_lost);
  tcase_add_test (tcase, a_short_stretch_is_looked_at_pixel_by_pixel_a_long_one_more_coarsely_and_both_lie_on_the_line);
  tcase_add_test (tcase, between_its_neighbours_a_stretch_is_seen_where_alone_it_is_lost);
  tcase_add_test (tcase, a_stretch_tells_how_far_its_line_passes_the_pointer_and_a_gap_is_no_miss);
  tcase_add_test (tcase, a_stretch_beyond_the_picture_is_refused);
  return run_suite (suite, tcase);
}
