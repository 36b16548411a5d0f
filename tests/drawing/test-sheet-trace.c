/* A trace being laid, and where an outline leaves its printed line, as the sheet shows them. */
#include "support/easel.h"
#include "support/run-suite.h"

static Easel *easel;

static void
set_up (void)
{
  easel = easel_new (aeroplane_new ());
}

static void
tear_down (void)
{
  easel_free (easel);
}

static Point
px (double x, double y)
{
  return view_to_screen (&easel->view, (Point) { x, y });
}

/* A row of px across a line that runs across the sheet at x, mm, between two stations. */
static Box
band_at (double x, double from, double to, double half)
{
  const Point a = px (x, from), b = px (x, to);

  return (Box) { { a.x, a.y - half }, { b.x, b.y + half } };
}

static double
share (Box box, Colour colour)
{
  Canvas canvas = easel_painted (easel, 1);
  const double found = canvas_share (&canvas, box, colour);

  canvas_clear (&canvas);
  return found;
}

static const Point accepted[] = { { 100, 20 }, { 100, 120 } }, ahead[] = { { 100, 120 }, { 100, 220 } };

START_TEST (what_is_accepted_is_a_line_and_the_proposal_a_broken_one_and_both_stand_at_port_broken_too)
{
  const SheetTrace trace = { .accepted = accepted, .accepted_count = 2, .proposal = ahead, .proposal_count = 2 };
  const Colour colour = easel->look.selection;

  easel->overlay.trace = &trace;
  const double line = share (band_at (100, 25, 115, 1), colour), proposed = share (band_at (100, 125, 215, 1), colour);
  const double port = share (band_at (100, -215, -125, 1), colour);
  ck_assert_double_gt (line, 0.6);
  ck_assert_double_gt (proposed, 0.15);
  ck_assert_double_lt (proposed, 0.8 * line);
  ck_assert_double_gt (port, 0.15);
}
END_TEST

START_TEST (a_fins_trace_stands_on_one_side_alone)
{
  const SheetTrace trace = { .accepted = accepted, .accepted_count = 2, .one_sided = true };

  easel->overlay.trace = &trace;
  ck_assert_double_lt (share (band_at (100, -115, -25, 1), easel->look.selection), 0.01);
}
END_TEST

START_TEST (the_proposal_lies_in_a_washed_corridor_17_px_wide_unless_it_is_drawn_by_hand)
{
  SheetTrace trace = { .proposal = ahead, .proposal_count = 2 };
  const Point inside = point_add (px (100, 170), (Point) { 0, 7 }), outside = point_add (px (100, 170), (Point) { 0, 11 });
  Canvas canvas = easel_painted (easel, 1);
  const Colour ground = canvas_at (&canvas, inside.x, inside.y);

  canvas_clear (&canvas);
  easel->overlay.trace = &trace;
  canvas = easel_painted (easel, 1);
  ck_assert_double_gt (colour_distance (canvas_at (&canvas, inside.x, inside.y), ground), 0.04);
  ck_assert_double_lt (colour_distance (canvas_at (&canvas, outside.x, outside.y), ground), 0.04);
  canvas_clear (&canvas);
  trace.by_hand = true;
  canvas = easel_painted (easel, 1);
  ck_assert_double_lt (colour_distance (canvas_at (&canvas, inside.x, inside.y), ground), 0.04);
  canvas_clear (&canvas);
}
END_TEST

START_TEST (a_lost_line_is_proposed_in_the_warning_colour)
{
  const SheetTrace trace = { .proposal = ahead, .proposal_count = 2, .lost = true };

  easel->overlay.trace = &trace;
  ck_assert_double_gt (share (band_at (100, 125, 215, 1), easel->look.warning), 0.15);
}
END_TEST

START_TEST (a_bar_stands_where_the_outline_is_far_off_its_line_and_none_where_it_keeps_to_it)
{
  const SheetDeparture spots[] = { { { 100, 60 }, { 100.1, 60 }, false }, { { 100, 160 }, { 101, 160 }, true } };
  const SheetDepartures departures = { spots, 2 };
  const Point kept = px (100, 60), off = px (100, 160);

  easel->overlay.departures = &departures;
  ck_assert_double_gt (share ((Box) { { off.x - 2, off.y }, { off.x + 2, off.y + 5 } }, easel->look.warning), 0.4);
  ck_assert_double_lt (share ((Box) { { kept.x - 3, kept.y - 6 }, { kept.x + 3, kept.y + 6 } }, easel->look.warning), 0.01);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("trace");

  tcase_add_checked_fixture (tests, set_up, tear_down);
  tcase_add_test (tests, what_is_accepted_is_a_line_and_the_proposal_a_broken_one_and_both_stand_at_port_broken_too);
  tcase_add_test (tests, a_fins_trace_stands_on_one_side_alone);
  tcase_add_test (tests, the_proposal_lies_in_a_washed_corridor_17_px_wide_unless_it_is_drawn_by_hand);
  tcase_add_test (tests, a_lost_line_is_proposed_in_the_warning_colour);
  tcase_add_test (tests, a_bar_stands_where_the_outline_is_far_off_its_line_and_none_where_it_keeps_to_it);
  return run_suite (suite_create ("drawing sheet-trace"), tests);
}
