/* A leading edge is printed as two lines, and lettering stands in the outer one: a trace by few rough clicks keeps to its line. The truth is
 * what the test draws; no published source for the bound, half a per cent of the area, of which rough clicks at square corners take most. */
#include <math.h>
#include <stdbool.h>
#include "plan/trace.h"
#include "support/drawn-ink.h"
#include "support/run-suite.h"

enum { WIDTH = 1500, HEIGHT = 700, CLICKS = 4, HANDS = 3, LEADING = 2, MOST_LINES = 40, MOST_PLACES = 4 };
static const double SCALE = 5.2, SPAN = 262, DOUBLE = 3.3;       /* px a mm; mm */
static const Point AXIS = { 60, 60 };                            /* px: where the own axes begin; x runs down the picture */
static const Mapping paper = { .h = { 1 / 5.2, 0, 0, 0, 1 / 5.2, 0, 0, 0, 1 }, .lens_radius = 800 };

static Point
px (double x, double y)
{
  return (Point) { AXIS.x + SCALE * y, AXIS.y + SCALE * x };
}

/* The edges bend at station 93. */
static double
leading_edge (double y)
{
  return y < 93 ? 2 : 2 + 0.1 * (y - 93);
}

static double
trailing_edge (double y)
{
  return y < 93 ? 89 : 89 - 0.25 * (y - 93);
}

static double
true_area (void)
{
  const double tip = trailing_edge (SPAN) - leading_edge (SPAN);

  return 87 * 93 + (87 + tip) / 2 * (SPAN - 93);
}

typedef struct { DrawnLine lines[MOST_LINES]; Point places[MOST_LINES][MOST_PLACES]; size_t count; } Sheet;

static void
draw (Sheet *sheet, double width, size_t count, const Point places[])
{
  Point *own = sheet->places[sheet->count];

  for (size_t i = 0; i < count; i++)
    own[i] = px (places[i].x, places[i].y);
  sheet->lines[sheet->count++] = (DrawnLine) { own, count, width };
}

/* Strokes where letters stand, ribs between the spars and both lines of the leading edge. */
static Ink *
wing_with_lettering (double from, double to, double outer, double inner)
{
  Sheet sheet = { .count = 0 };
  const double tip_fore = leading_edge (SPAN), tip_aft = trailing_edge (SPAN);

  draw (&sheet, outer, 2, (Point[]) { { 2, 0 }, { 2, from } });
  draw (&sheet, outer, 3, (Point[]) { { 2, to }, { 2, 93 }, { tip_fore, SPAN } });
  draw (&sheet, outer, 2, (Point[]) { { tip_fore, SPAN }, { tip_aft, SPAN } });
  draw (&sheet, outer, 3, (Point[]) { { tip_aft, SPAN }, { 89, 93 }, { 89, 0 } });
  draw (&sheet, inner, 3, (Point[]) { { 2 + DOUBLE, 0 }, { 2 + DOUBLE, 93 }, { tip_fore + DOUBLE, SPAN } });
  for (double y = from + 1; y < to - 1; y += 1.9)
    draw (&sheet, 1.5, 3, (Point[]) { { 1, y }, { 2.9, y + 0.3 }, { 2.2, y + 1.1 } });
  for (double y = 30; y < SPAN; y += 32)
    draw (&sheet, inner, 2, (Point[]) { { leading_edge (y) + DOUBLE, y }, { trailing_edge (y), y } });
  return ink_of_lines (WIDTH, HEIGHT, sheet.lines, sheet.count);
}

static double
enclosed (const Trace *trace)
{
  double area = 0;

  for (size_t i = 1; i < trace->count; i++)
    area += (trace->polyline[i].x - trace->polyline[i - 1].x) * -(trace->polyline[i].y + trace->polyline[i - 1].y) / 2;
  return -area;
}

/* The four corners, each up to a millimetre off. */
static void
expect_area (const Ink *ink, int hand)
{
  const double aft = hand - 1, out = -1;
  const Point clicks[CLICKS] = { px (2 + aft, out), px (leading_edge (SPAN) + out, SPAN + aft),
                                 px (trailing_edge (SPAN) - aft, SPAN + out), px (89 - aft, -out) };
  const TraceRequest request = { .mapping = &paper, .frame = { .fore = { AXIS.x / SCALE, AXIS.y / SCALE }, .along = { 0, 1 }, .side = 1 },
                                 .clicks = clicks, .click_count = CLICKS, .click_sigma = 2, .ends_on_axis = true, .tolerance = NAN };
  Trace trace;

  ck_assert_int_eq (trace_outline (ink, &request, &trace), CORE_OK);
  const double off = 100 * (fabs (enclosed (&trace)) / true_area () - 1);
  trace_clear (&trace);
  ck_assert_msg (fabs (off) <= 0.5, "clicked %+.2f mm aft and %+.2f mm out: the area is off by %+.2f %%", aft, out, off);
}

START_TEST (four_rough_clicks_keep_to_the_outer_line_through_the_lettering_in_it)
{
  Ink *ink = wing_with_lettering (66, 83, 2.6, 1.6);

  expect_area (ink, _i);
  ink_unref (ink);
}
END_TEST

START_TEST (of_two_lines_as_dark_the_outer_one_is_kept_to)
{
  Ink *ink = wing_with_lettering (66, 83, 2, 2);

  expect_area (ink, _i);
  ink_unref (ink);
}
END_TEST

/* The leading edge goes on 3.3 mm aft of itself, from station 70 on; `way_over` leads there, or nothing does. */
static Ink *
wing_with_a_step (bool way_over)
{
  Sheet sheet = { .count = 0 };

  draw (&sheet, 2, 3, (Point[]) { { 2, 0 }, { 2, 66 }, way_over ? (Point) { 2 + DOUBLE, 70 } : (Point) { 2, 66 } });
  draw (&sheet, 2, 3, (Point[]) { { 2 + DOUBLE, 70 }, { 2 + DOUBLE, SPAN }, { 89, SPAN } });
  draw (&sheet, 2, 2, (Point[]) { { 89, SPAN }, { 89, 0 } });
  return ink_of_lines (WIDTH, HEIGHT, sheet.lines, sheet.count);
}

static const struct { bool way_over; double aside; } steps[] = { { false, DOUBLE }, { true, 0 } };

START_TEST (a_way_aside_over_bare_paper_is_told_and_a_step_that_is_printed_and_clicked_is_none)
{
  Ink *ink = wing_with_a_step (steps[_i].way_over);
  const Point all[] = { px (2, 0), px (2, 66), px (2 + DOUBLE, 70), px (2 + DOUBLE, SPAN), px (89, SPAN), px (89, 0) };
  const Point few[] = { all[0], all[3], all[4], all[5] };
  const TraceRequest request = { .mapping = &paper, .frame = { .fore = { AXIS.x / SCALE, AXIS.y / SCALE }, .along = { 0, 1 }, .side = 1 },
                                 .clicks = steps[_i].way_over ? all : few, .click_count = steps[_i].way_over ? 6 : 4,
                                 .click_sigma = 2, .ends_on_axis = true, .tolerance = NAN };
  Trace trace;

  ck_assert_int_eq (trace_outline (ink, &request, &trace), CORE_OK);
  ck_assert_double_eq_tol (trace.aside, steps[_i].aside, 0.2);
  if (steps[_i].aside > 0)
    ck_assert_double_eq_tol (trace.aside_at.y, 68, 3);
  trace_clear (&trace);
  ink_unref (ink);
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("line kept");
  TCase *tests = tcase_create ("double lines");

  tcase_add_loop_test (tests, four_rough_clicks_keep_to_the_outer_line_through_the_lettering_in_it, 0, LEADING);
  tcase_add_loop_test (tests, of_two_lines_as_dark_the_outer_one_is_kept_to, 0, HANDS);
  tcase_add_loop_test (tests, a_way_aside_over_bare_paper_is_told_and_a_step_that_is_printed_and_clicked_is_none, 0, sizeof steps / sizeof *steps);
  return run_suite (suite, tests);
}
