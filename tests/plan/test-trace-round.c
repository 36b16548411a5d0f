/* Bodies from the side, traced round with few clicks: their ends are cut straight across. The truth is what the test draws; no published
 * source: the bounds are what the product promises. */
#include <math.h>
#include "plan/trace.h"
#include "support/drawn-ink.h"
#include "support/run-suite.h"

enum { WIDTH = 1420, HEIGHT = 660, STEPS = 60, CORNERS = 4, ROUND = 4 * STEPS + 3, MOST_CLICKS = 10, MOST_LINES = 5 };
static const double SCALE = 6;                       /* px a mm */
static const Point AXIS = { 90, 330 };               /* px: where the own axes begin; x runs to the right, y up */
static const Mapping paper = { .h = { 1 / 6.0, 0, 0, 0, 1 / 6.0, 0, 0, 0, 1 }, .lens_radius = 900 };

/* A firewall 46 mm high and a stern post of 10 mm, raked a little. */
static const Point nose_top = { 0.5, 25 }, nose_foot = { -0.5, -21 }, tail_top = { 200, 6 }, tail_foot = { 201.5, -4 };
static const Point *const corners[CORNERS] = { &nose_top, &nose_foot, &tail_top, &tail_foot };

static Point
px (Point own)
{
  return (Point) { AXIS.x + SCALE * own.x, AXIS.y - SCALE * own.y };
}

static Point
bent (const Point by[4], double t)
{
  const double u = 1 - t, a = u * u * u, b = 3 * u * u * t, c = 3 * u * t * t, d = t * t * t;

  return (Point) { a * by[0].x + b * by[1].x + c * by[2].x + d * by[3].x, a * by[0].y + b * by[1].y + c * by[2].y + d * by[3].y };
}

/* A place of the upper and of the lower line, by the share of its way aft. */
static Point
upper (double share)
{
  const Point fore[] = { nose_top, { 20, 29 }, { 45, 40 }, { 75, 40 } }, aft[] = { { 75, 40 }, { 110, 40 }, { 165, 11 }, tail_top };

  return share < 0.5 ? bent (fore, 2 * share) : bent (aft, 2 * share - 1);
}

static Point
lower (double share)
{
  const Point fore[] = { nose_foot, { 15, -23 }, { 40, -27 }, { 80, -27 } }, aft[] = { { 80, -27 }, { 120, -27 }, { 165, -9 }, tail_foot };

  return share < 0.5 ? bent (fore, 2 * share) : bent (aft, 2 * share - 1);
}

/* The whole outline, own mm, over the top first. */
static void
draw_round (Point places[ROUND])
{
  size_t count = 0;

  for (int i = 0; i <= 2 * STEPS; i++)
    places[count++] = upper (i / (2.0 * STEPS));
  for (int i = 2 * STEPS; i >= 0; i--)
    places[count++] = lower (i / (2.0 * STEPS));
  places[count] = places[0];
}

/* What else is printed there. */
typedef enum { NOTHING, DATUM_LINE, LONGERONS, FIN } Beside;

static Ink *
sheet_with (Beside beside)
{
  static Point outline[ROUND], other[2][2 * STEPS + 1];
  DrawnLine lines[MOST_LINES] = { { outline, ROUND, 2.7 } };
  size_t count = 1;

  draw_round (outline);
  for (int i = 0; i < ROUND; i++)
    outline[i] = px (outline[i]);
  for (int i = 0; i <= 2 * STEPS; i++)
    {
      const double share = 0.02 + 0.96 * i / (2.0 * STEPS);
      other[0][i] = px (point_add (upper (share), (Point) { 0, -3.2 }));
      other[1][i] = px (point_add (lower (share), (Point) { 0, 3.2 }));
    }
  const Point datum[] = { px ((Point) { -12, 0 }), px ((Point) { 214, 0 }) };
  /* The stern post goes on as the fin's. */
  const Point fin[] = { px (tail_top), px ((Point) { 193.25, 51 }), px ((Point) { 180, 51 }), px (upper (0.85)) };
  if (beside == DATUM_LINE)
    lines[count++] = (DrawnLine) { datum, 2, 1.8 };
  for (int i = 0; i < 2 && beside == LONGERONS; i++)
    lines[count++] = (DrawnLine) { other[i], 2 * STEPS + 1, 2.1 };
  if (beside == FIN)
    lines[count++] = (DrawnLine) { fin, 4, 2.7 };
  return ink_of_lines (WIDTH, HEIGHT, lines, count);
}

/* Where a person clicks, own mm; the first click is clicked again at the end. */
typedef struct { const char *because; Point places[MOST_CLICKS]; size_t count; } Hand;

static Hand
hand_of (int way)
{
  const Point nose = point_mix (nose_top, nose_foot, 0.45), tail = point_mix (tail_top, tail_foot, 0.5);
  const Hand hands[] = {
    { "one click at each end", { nose, upper (0.4), upper (0.7), tail, lower (0.5) }, 5 },
    { "begun at the tail", { tail, lower (0.7), lower (0.3), nose, upper (0.3), upper (0.6) }, 6 },
    { "one corner of each end", { nose_top, upper (0.4), upper (0.75), tail_top, lower (0.7), lower (0.35) }, 6 },
    { "begun on the top", { upper (0.5), tail, lower (0.5), nose_foot, nose_top }, 5 },
    { "all corners", { nose_top, upper (0.45), tail_top, tail_foot, lower (0.5), nose_foot }, 6 },
    { "all corners, begun between two", { nose, nose_top, upper (0.3), upper (0.7), tail_top, tail_foot, lower (0.5), nose_foot }, 8 },
  };

  return hands[way];
}
enum { HANDS = 6 };

static Trace
traced (const Ink *ink, const Hand *hand, bool backwards)
{
  static const Point misses[] = { { 2, -2 }, { -2, 1 }, { 1, 2 }, { -1, -2 }, { 2, 1 } };
  Point clicks[MOST_CLICKS + 1];

  for (size_t i = 0; i <= hand->count; i++)
    {
      const size_t at = (backwards ? hand->count - i : i) % hand->count;
      clicks[i] = point_add (px (hand->places[at]), misses[at % (sizeof misses / sizeof *misses)]);
    }
  const TraceRequest request = { .mapping = &paper, .frame = { .fore = { AXIS.x / SCALE, AXIS.y / SCALE }, .along = { 1, 0 }, .side = 1 },
                                 .clicks = clicks, .click_count = hand->count + 1, .click_sigma = 2.5, .goes_round = true, .tolerance = NAN };
  TraceRequest placed = request;
  Trace trace;

  placed.frame.side = axis_frame_own (&request.frame, mapping_to_mm (&paper, px ((Point) { 0, 10 }))).y > 0 ? 1 : -1;
  ck_assert_msg (trace_outline (ink, &placed, &trace) == CORE_OK, "%s: no outline", hand->because);
  return trace;
}

static double
enclosed (const Point places[], size_t count)
{
  double sum = 0;

  for (size_t i = 0; i < count; i++)
    {
      const Point next = places[(i + 1) % count];
      sum += places[i].x * next.y - next.x * places[i].y;
    }
  return fabs (sum) / 2;
}

static void
expect_body (const Trace *trace, const char *because)
{
  Point truth[ROUND];
  size_t segment;
  double t;

  draw_round (truth);
  for (int i = 0; i < CORNERS; i++)
    {
      const double off = outline_nearest (trace->outline, *corners[i], &segment, &t);
      ck_assert_msg (off <= 0.5, "%s: %.2f mm off the corner at %.0f, %.0f", because, off, corners[i]->x, corners[i]->y);
    }
  ck_assert_msg (trace->spur == 0, "%s: a spur at %.0f", because, trace->spur_at.x);
  const double area = 100 * (enclosed (trace->polyline, trace->count) / enclosed (truth, ROUND - 1) - 1);
  ck_assert_msg (fabs (area) <= 0.5, "%s: area %+.2f %%", because, area);
}

static void
trace_every_way (Beside beside)
{
  Ink *ink = sheet_with (beside);

  for (int way = 0; way < HANDS; way++)
    {
      const Hand hand = hand_of (way);
      Trace trace = traced (ink, &hand, (way + (int) beside) % 2);
      expect_body (&trace, hand.because);
      trace_clear (&trace);
    }
  ink_unref (ink);
}

START_TEST (a_body_traced_with_few_clicks_keeps_its_blunt_ends_wherever_it_was_begun)
{
  trace_every_way ((Beside) _i);
}
END_TEST

START_TEST (a_body_begins_at_its_nose_and_runs_over_its_top_first)
{
  Ink *ink = sheet_with (NOTHING);

  for (int way = 0; way < HANDS; way++)
    {
      const Hand hand = hand_of (way);
      Trace trace = traced (ink, &hand, false);
      ck_assert_double_lt (outline_node (trace.outline, 0).x, 1.5);
      ck_assert_double_gt (segment_at (outline_node (trace.outline, 0), outline_segment (trace.outline, 0), 0.5).y, 0);
      trace_clear (&trace);
    }
  ink_unref (ink);
}
END_TEST

/* The fin's root is from upper (0.85) to the stern post; its top is 45 mm above the post's. */
START_TEST (an_outline_that_runs_up_a_fin_and_back_is_said_to)
{
  const Hand hand = { "over the fin", { point_mix (nose_top, nose_foot, 0.45), upper (0.4), upper (0.82), { 180, 51 }, { 193, 51 },
                                        point_mix (tail_top, tail_foot, 0.5), lower (0.5) }, 7 };
  Ink *ink = sheet_with (FIN);
  Trace trace = traced (ink, &hand, _i);

  ck_assert_double_eq_tol (trace.spur, 51 - upper (0.85).y, 8);
  ck_assert_double_eq_tol (trace.spur_at.x, 0.5 * (upper (0.85).x + tail_top.x), 10);
  trace_clear (&trace);
  ink_unref (ink);
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("trace round");
  TCase *tests = tcase_create ("bodies from the side");

  tcase_add_loop_test (tests, a_body_traced_with_few_clicks_keeps_its_blunt_ends_wherever_it_was_begun, NOTHING, FIN + 1);
  tcase_add_loop_test (tests, an_outline_that_runs_up_a_fin_and_back_is_said_to, false, true + 1);
  tcase_add_test (tests, a_body_begins_at_its_nose_and_runs_over_its_top_first);
  return run_suite (suite, tests);
}
