#include <check.h>
#include <stdlib.h>
#include <time.h>
#include "geometry/outline.h"
#include "geometry/shapes.h"
#include "support/run-suite.h"
#include "support/shapes.h"

enum { MOST = 10 };

typedef struct {
  const char *what;
  Point start;
  size_t count;
  Segment segments[MOST];
} Run;

#define LINE(x, y)                 { .kind = SEGMENT_LINE, .to = { x, y } }
#define CURVE(x1, y1, x2, y2, x, y) { .kind = SEGMENT_CURVE, .control1 = { x1, y1 }, .control2 = { x2, y2 }, .to = { x, y } }
#define ARC(cx, cy, a, b, x, y)    { .kind = SEGMENT_ARC, .centre = { cx, cy }, .rx = a, .ry = b, .to = { x, y } }

static OutlineFault
fault_of (const Run *run)
{
  Outline *outline = outline_from (run->start, run->segments, run->count);
  OutlineFault fault;

  ck_assert_int_eq (outline_check (outline, &fault), fault.status);
  ck_assert_int_eq (outline_check (outline, NULL), fault.status);
  outline_unref (outline);
  return fault;
}

/* Each was once, or might be, taken for a crossing: common practice, no source. */
static const Run sound[] = {
  { .what = "a triangle", .count = 2, .segments = { LINE (31.5, 207), LINE (103.25, 0) } },
  { .what = "an ellipse whose two arcs share the tip", .start = { 110, 0 }, .count = 2,
    .segments = { ARC (150, 0, 40, 320, 150, 320), ARC (150, 0, 90, 320, 240, 0) } },
  { .what = "half an ellipse in one arc", .start = { 60, 0 }, .count = 1, .segments = { ARC (150, 0, 90, 320, 240, 0) } },
  { .what = "a crescent that ends in a cusp", .count = 2,
    .segments = { ARC (160, 0, 160, 400, 160, 400), ARC (160, 0, 40, 400, 120, 0) } },
  { .what = "a cusp of two arcs whose bends differ by a thousandth", .count = 2,
    .segments = { ARC (160, 0, 160, 400, 160, 400), ARC (160, 0, 159.84, 400, 0.16, 0) } },
  { .what = "a cusp of two curves that leave the tip along one line", .count = 2,
    .segments = { CURVE (0, 150, 40, 290, 90, 340), CURVE (70, 320, 60, 180, 80, 0) } },
  { .what = "a pointed root: the closing line has no length", .start = { 20, 0 }, .count = 3,
    .segments = { LINE (0, 150), LINE (45, 170), LINE (20, 0) } },
  { .what = "a pointed root between two curves that touch each other there", .start = { 20, 0 }, .count = 3,
    .segments = { CURVE (20, 50, 0, 100, 0, 150), LINE (45, 170), CURVE (45, 100, 20, 70, 20, 0) } },
  { .what = "a segment without length in the middle of an edge", .count = 4,
    .segments = { LINE (10, 140), LINE (10, 140), LINE (20, 300), LINE (130, 0) } },
  { .what = "two segments without length at the tip", .count = 4,
    .segments = { LINE (10, 140), LINE (10, 140), LINE (10, 140), LINE (130, 0) } },
  { .what = "a curve whose handles have no length", .count = 3,
    .segments = { CURVE (0, 0, 10, 240, 10, 240), CURVE (10, 240, 60, 240, 60, 240), LINE (130, 0) } },
  { .what = "the end of an arc that touches a straight edge from inside", .count = 3,
    .segments = { LINE (0, 200), ARC (0, 125, 60, 75, 0, 50), LINE (40, 0) } },
  { .what = "two edges that touch in one node", .count = 5,     /* the trailing edge's notch reaches the leading edge */
    .segments = { LINE (0, 100), LINE (0, 200), LINE (90, 200), LINE (0, 100), LINE (90, 0) } },
  { .what = "an edge that runs along the closing line before it leaves it", .start = { 0, 0 }, .count = 4,
    .segments = { LINE (10, 0), LINE (20, 60), LINE (200, 60), LINE (220, 0) } },
  { .what = "smooth neighbours that hardly bend", .count = 4,
    .segments = { CURVE (0, 50, 0.01, 100, 0.02, 150), CURVE (0.03, 200, 0.04, 250, 0.05, 300), LINE (80, 300), LINE (100, 0) } },
  { .what = "two parts that run along one another and part again on their own sides", .count = 9,
    .segments = { LINE (50, 50), LINE (50, 150), LINE (0, 200), LINE (0, 250), LINE (100, 250), LINE (100, 200), LINE (50, 150),
                  LINE (50, 50), LINE (100, 0) } },
  { .what = "a parallel strip a hair wide", .count = 3, .segments = { LINE (300, 300), LINE (300.01, 300), LINE (0.01, 0) } },
};

START_TEST (a_sound_outline_has_no_fault)
{
  const OutlineFault fault = fault_of (&sound[_i]);

  ck_assert_msg (fault.status == CORE_OK || fault.status == CORE_MULTI_VALUED, "%s: %s", sound[_i].what, core_status_sentence (fault.status));
}
END_TEST

enum { SOUND = sizeof sound / sizeof *sound };

static const struct { Run run; size_t a, b; Point place; } crossing[] = {
  { .run = { .what = "a bow tie", .count = 3, .segments = { LINE (100, 80), LINE (0, 80), LINE (100, 0) } }, .a = 0, .b = 2, .place = { 50, 40 } },
  { .run = { .what = "a bow tie of unequal halves", .count = 3, .segments = { LINE (120, 90), LINE (0, 90), LINE (60, 0) } },
    .a = 0, .b = 2, .place = { 40, 30 } },
  { .run = { .what = "an edge through the node of another", .count = 5,
             .segments = { LINE (0, 100), LINE (40, 60), LINE (-20, 40), LINE (-30, 100), LINE (70, 0) } },
    .a = 0, .b = 2, .place = { 0, 140.0 / 3 } },
  { .run = { .what = "two edges that pass through one another in two nodes", .count = 6,
             .segments = { LINE (50, 50), LINE (100, 100), LINE (0, 100), LINE (50, 50), LINE (100, 0), LINE (200, 0) } },
    .a = 0, .b = 3, .place = { 50, 50 } },
  { .run = { .what = "a curve with a loop of its own", .count = 1, .segments = { CURVE (300, 200, -200, 200, 100, 0) } },
    .a = 0, .b = 0, .place = { 50, 37.5 } },
  { .run = { .what = "an arc that bulges through a straight edge", .count = 4,
             .segments = { LINE (0, 200), LINE (50, 200), ARC (50, 100, 60, 100, -10, 100), LINE (80, 0) } },
    .a = 0, .b = 2, .place = { 0, 155.27707983925665 } },    /* 100 + 100 √(1 - (50/60)²) */
  { .run = { .what = "a node pulled through the closing line", .count = 3, .segments = { LINE (0, 100), LINE (50, -7), LINE (100, 0) } },
    .a = 1, .b = 3, .place = { 100.0 / 2.14, 0 } },
  { .run = { .what = "two parts that run along one another and part on each other's side", .count = 7,
             .segments = { LINE (50, 50), LINE (50, 150), LINE (100, 200), LINE (0, 200), LINE (50, 150), LINE (50, 50), LINE (100, 0) } },
    .place = { NAN, NAN } },
  { .run = { .what = "a bow tie, one edge of which is a curve that doubles back upon itself at both ends", .count = 3,
             .segments = { CURVE (-30, -24, 130, 104, 100, 80), LINE (0, 80), LINE (100, 0) } }, .a = 0, .b = 2, .place = { 50, 40 } },
  { .run = { .what = "a loop of a thousandth of the wing", .count = 6,
             .segments = { LINE (0, 100), LINE (0.2, 100.2), LINE (0, 100.2), LINE (0.2, 100), LINE (50, 200), LINE (90, 0) } },
    .a = 1, .b = 3, .place = { 0.1, 100.1 } },
  { .run = { .what = "neighbours that meet again behind their node", .count = 3,
             .segments = { LINE (0, 100), CURVE (-40, 60, 60, 60, -30, 20), LINE (80, 0) } }, .a = 0, .b = 1, .place = { NAN, NAN } },
};

enum { CROSSING = sizeof crossing / sizeof *crossing };

START_TEST (an_outline_that_crosses_itself_says_where)
{
  const OutlineFault fault = fault_of (&crossing[_i].run);
  const char *what = crossing[_i].run.what;

  ck_assert_msg (fault.status == CORE_CROSSES_ITSELF, "%s: %s", what, core_status_sentence (fault.status));
  if (isnan (crossing[_i].place.x))
    return;
  ck_assert_msg (fault.segment_a == crossing[_i].a && fault.segment_b == crossing[_i].b, "%s: %zu and %zu", what, fault.segment_a, fault.segment_b);
  ck_assert_msg (point_distance (fault.place, crossing[_i].place) < 1e-6, "%s: at %.9g, %.9g", what, fault.place.x, fault.place.y);
}
END_TEST

/* The place of the crossing is published by nobody; that it lies on both segments shows it right. */
START_TEST (the_place_of_a_crossing_lies_on_both_segments)
{
  const Run *run = &crossing[_i].run;
  const OutlineFault fault = fault_of (run);
  const size_t two[2] = { fault.segment_a, fault.segment_b };

  for (size_t k = 0; k < 2; k++)
    {
      const Segment closing = segment_line (run->start);
      const Segment *segment = two[k] < run->count ? &run->segments[two[k]] : &closing;
      double distance;

      segment_nearest (two[k] ? run->segments[two[k] - 1].to : run->start, segment, fault.place, &distance);
      ck_assert_msg (distance < 1e-6, "%s: %g off segment %zu", run->what, distance, two[k]);
    }
}
END_TEST

static CoreStatus
status_mapped (const Run *run, Point scale, Point shift)
{
  Outline *outline = outline_from (run->start, run->segments, run->count), *mapped = NULL;
  CoreStatus status;

  ck_assert_int_eq (outline_mapped (outline, scale, shift, &mapped), CORE_OK);
  status = outline_check (mapped, NULL);
  outline_unref (outline);
  outline_unref (mapped);
  return status;
}

/* Nothing depends on the unit of length; from far away, rounding is still far less than what counts as touching. */
START_TEST (size_and_place_change_nothing_about_a_fault)
{
  const Run *run = _i < (int) SOUND ? &sound[_i] : &crossing[_i - (int) SOUND].run;
  const CoreStatus wanted = fault_of (run).status;

  ck_assert_msg (status_mapped (run, (Point) { 1e-8, 1e-8 }, (Point) { 0, 0 }) == wanted, "%s, tiny", run->what);
  ck_assert_msg (status_mapped (run, (Point) { 3.7e8, 3.7e8 }, (Point) { 0, 0 }) == wanted, "%s, huge", run->what);
  ck_assert_msg (status_mapped (run, (Point) { 1.3, 0.7 }, (Point) { 20345.678, 9876.54 }) == wanted, "%s, far away", run->what);
}
END_TEST

START_TEST (an_outline_whose_ends_stand_at_different_stations_is_open)
{
  const Run run = { .count = 2, .segments = { LINE (10, 300), LINE (120, 0.001) } };
  const Run nearly = { .count = 2, .segments = { LINE (10, 300), LINE (120, 0.0002) } };
  const OutlineFault fault = fault_of (&run);

  ck_assert_int_eq (fault.status, CORE_OPEN);
  ck_assert_double_eq (fault.place.x, 120);
  ck_assert_double_eq (fault.place.y, 0.001);
  ck_assert_int_eq (fault_of (&nearly).status, CORE_OK);     /* less than 1e-6 of the box */
}
END_TEST

/* A leading edge drawn in a zigzag: the straight line from its last node to its first passes through it. */
START_TEST (a_closing_line_that_nobody_drew_crosses_nothing)
{
  const Run zigzag = { .count = 3, .segments = { LINE (50, 50), LINE (0, 100), LINE (60, 150) } };
  const Run carried_on = { .count = 4, .segments = { LINE (50, 50), LINE (0, 100), LINE (60, 150), LINE (90, 0) } };
  const Run knotted = { .count = 4, .segments = { LINE (50, 50), LINE (0, 100), LINE (60, 150), LINE (20, 10) } };
  const OutlineFault fault = fault_of (&zigzag), knot = fault_of (&knotted);

  ck_assert_int_eq (fault.status, CORE_OPEN);
  ck_assert_double_eq (fault.place.x, 60);
  ck_assert_double_eq (fault.place.y, 150);
  ck_assert_int_eq (fault_of (&carried_on).status, CORE_OK);
  ck_assert_int_eq (knot.status, CORE_CROSSES_ITSELF);
  ck_assert_uint_lt (knot.segment_b, 4);
}
END_TEST

START_TEST (an_outline_at_one_station_has_no_span)
{
  const Run along = { .start = { 10, 40 }, .count = 3, .segments = { LINE (60, 40), LINE (30, 40), LINE (130, 40) } };
  const Run point = { .start = { 10, 40 }, .count = 2, .segments = { LINE (10, 40), LINE (10, 40) } };

  ck_assert_int_eq (fault_of (&along).status, CORE_NO_SPAN);
  ck_assert_int_eq (fault_of (&point).status, CORE_NO_SPAN);
}
END_TEST

START_TEST (an_outline_that_comes_back_as_it_went_has_no_area)
{
  const Run straight = { .count = 2, .segments = { LINE (31, 207), LINE (0, 0) } };
  const Run cranked = { .count = 4, .segments = { LINE (31, 107), LINE (12, 207), LINE (31, 107), LINE (0, 0) } };
  const Run curved = { .count = 2, .segments = { CURVE (10, 40, -30, 80, 25, 210), CURVE (-30, 80, 10, 40, 0, 0) } };
  const Run hair = { .count = 2, .segments = { LINE (0, 400), LINE (3e-7, 0) } };

  ck_assert_int_eq (fault_of (&straight).status, CORE_NO_AREA);
  ck_assert_int_eq (fault_of (&cranked).status, CORE_NO_AREA);
  ck_assert_int_eq (fault_of (&curved).status, CORE_NO_AREA);
  ck_assert_int_eq (fault_of (&hair).status, CORE_NO_AREA);
}
END_TEST

START_TEST (stations_met_more_than_twice_are_told_with_their_foremost_place)
{
  /* A forked tip: between stations 150 and 200 a station line meets four edges. */
  const Run fork = { .count = 5, .segments = { LINE (0, 200), LINE (30, 150), LINE (60, 220), LINE (90, 220), LINE (100, 0) } };
  const OutlineFault fault = fault_of (&fork);

  ck_assert_int_eq (fault.status, CORE_MULTI_VALUED);
  ck_assert_double_eq (fault.station_from, 150);
  ck_assert_double_eq (fault.station_to, 200);
  ck_assert_double_eq (fault.place.x, 0);
  ck_assert (fault.place.y > 150 && fault.place.y < 200);
}
END_TEST

START_TEST (of_several_faults_the_first_in_order_is_told)
{
  const Run crosses_and_open = { .count = 3, .segments = { LINE (100, 80), LINE (0, 80), LINE (100, 20) } };
  const Run open_and_forked = { .count = 5, .segments = { LINE (0, 200), LINE (30, 150), LINE (60, 220), LINE (90, 220), LINE (100, 9) } };

  ck_assert_int_eq (fault_of (&crosses_and_open).status, CORE_CROSSES_ITSELF);
  ck_assert_int_eq (fault_of (&open_and_forked).status, CORE_OPEN);
}
END_TEST

/* Nodes along a half ellipse, moved in and out by turns like a traced edge. */
static Outline *
toothed_outline (size_t count, double depth)
{
  Segment *segments = malloc (count * sizeof *segments);
  Outline *made = NULL;

  for (size_t i = 0; i < count; i++)
    {
      const double angle = M_PI * (1 - (double) (i + 1) / (double) count), reach = i + 1 < count ? 1 - depth * (double) (i % 2) : 1;
      segments[i] = segment_line ((Point) { 150 + 120 * reach * cos (angle), i + 1 < count ? 400 * reach * sin (angle) : 0 });
    }
  ck_assert_int_eq (outline_new ((Point) { 30, 0 }, segments, count, NULL, &made), CORE_OK);
  free (segments);
  return made;
}

/* 50 ms for 10,000 segments in an optimised build; the bound here is on the growth, which the machine's speed does not
 * touch: sixteen times as many must not take more than sixty times as long. */
START_TEST (a_check_takes_time_nearly_in_proportion_to_the_segments)
{
  double seconds[2];

  for (int k = 0; k < 2; k++)
    {
      const size_t count = k ? 10000 : 625;
      double best = INFINITY;

      for (int again = 0; again < 3; again++)
        {
          const clock_t begin = clock ();
          Outline *outline = toothed_outline (count, 1e-5);
          OutlineFault fault;

          outline_check (outline, &fault);
          best = fmin (best, (double) (clock () - begin) / CLOCKS_PER_SEC);
          ck_assert_int_ne (fault.status, CORE_CROSSES_ITSELF);
          outline_unref (outline);
        }
      seconds[k] = best;
    }
  ck_assert_msg (seconds[1] < 60 * fmax (seconds[0], 1e-4), "%g s for 10,000 segments, %g s for 625", seconds[1], seconds[0]);
}
END_TEST

START_TEST (ten_thousand_segments_upon_one_another_come_to_an_end)
{
  enum { COUNT = 10000 };
  Segment *segments = malloc (COUNT * sizeof *segments);
  Outline *made = NULL;

  for (size_t i = 0; i < COUNT; i++)
    segments[i] = segment_line (i % 2 ? (Point) { 0, 0 } : (Point) { 30, 200 });
  ck_assert_int_eq (outline_new ((Point) { 0, 0 }, segments, COUNT, NULL, &made), CORE_OK);
  ck_assert_int_eq (outline_check (made, NULL), CORE_NO_AREA);
  outline_unref (made);
  free (segments);
}
END_TEST

static Suite *
outline_check_suite (TCase *tests)
{
  tcase_add_loop_test (tests, a_sound_outline_has_no_fault, 0, SOUND);
  tcase_add_loop_test (tests, size_and_place_change_nothing_about_a_fault, 0, SOUND + CROSSING);
  tcase_add_loop_test (tests, an_outline_that_crosses_itself_says_where, 0, CROSSING);
  tcase_add_loop_test (tests, the_place_of_a_crossing_lies_on_both_segments, 0, CROSSING);
  tcase_add_test (tests, an_outline_whose_ends_stand_at_different_stations_is_open);
  tcase_add_test (tests, a_closing_line_that_nobody_drew_crosses_nothing);
  tcase_add_test (tests, an_outline_at_one_station_has_no_span);
  tcase_add_test (tests, an_outline_that_comes_back_as_it_went_has_no_area);
  tcase_add_test (tests, stations_met_more_than_twice_are_told_with_their_foremost_place);
  tcase_add_test (tests, of_several_faults_the_first_in_order_is_told);
  tcase_add_test (tests, a_check_takes_time_nearly_in_proportion_to_the_segments);
  tcase_add_test (tests, ten_thousand_segments_upon_one_another_come_to_an_end);
  return suite_create ("outline check");
}

int
main (void)
{
  TCase *tests = tcase_create ("faults");

  return run_suite (outline_check_suite (tests), tests);
}
