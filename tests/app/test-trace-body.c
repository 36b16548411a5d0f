/* Where a body traced from above ends: beside its axis, whichever way it was ended. What is printed is drawn by the test. */
#include "support/trace-hand.h"

static const Point pointed[] = { { 0, 0 }, { 3, 9 }, { 15, 11 }, { 50, 0 } };
static const Point blunt[] = { { 0, 0 }, { 3, 9 }, { 15, 11 }, { 50, 1.5 }, { 50, 0 } };

static void
begin_on_body (const Point printed[], size_t count, double scale)
{
  DrawnPlan plan = { .starboard = 1, .port = 1, .shows = VIEW_BODY_TOP, .side = VIEW_BOTH, .outline = polygon_from (printed, count) };

  trammel_session_open (hand_session (), aeroplane_on_plan (&plan), NULL);
  outline_unref ((Outline *) plan.outline);
  gtk_widget_activate_action (GTK_WIDGET (hand_window ()), "win.empty-sheet", NULL);
  ck_assert (gui_wait (ink_is_there, NULL));
  trammel_sheet_canvas_set_tool (hand_sheet (), "outline");
  hand_look ((Point) { 125, 0 }, scale);
  gui_settle ();
}

static const Outline *
body (void)
{
  ck_assert_uint_eq (aeroplane_count (hand_aeroplane (), PIECE_BODY), 1);
  return aeroplane_body (hand_aeroplane (), 0)->outline;
}

static void
trace_body (const Point printed[], size_t count, Point tail, double scale)
{
  begin_on_body (printed, count, scale);
  hand_click ((Point) { 100.4, 0.4 });
  hand_click ((Point) { 103.2, 9 });
  hand_click ((Point) { 115, 11 });
  hand_click (tail);
}

static void
await_body (void)
{
  ck_assert (gui_wait (rests, NULL));
  gui_settle ();
}

static void
expect_node (size_t from_end, Point wanted, double tolerance)
{
  const Point got = outline_node (body (), outline_node_count (body ()) - 1 - from_end);

  ck_assert_msg (point_distance (got, wanted) <= tolerance, "(%g, %g), wanted (%g, %g)", got.x, got.y, wanted.x, wanted.y);
}

START_TEST (a_tail_printed_blunt_stays_blunt_and_ends_on_the_axis)
{
  trace_body (blunt, G_N_ELEMENTS (blunt), (Point) { 150, 1.5 }, 3);
  await_body ();
  expect_node (1, (Point) { 150, 1.5 }, 0.3);
  expect_node (0, (Point) { 150, 0 }, 0.3);
  ck_assert_double_eq (outline_node (body (), outline_node_count (body ()) - 1).y, 0);
}
END_TEST

START_TEST (a_tail_printed_pointed_comes_out_pointed)
{
  trace_body (pointed, G_N_ELEMENTS (pointed), (Point) { 149.8, 0.3 }, 3);
  await_body ();
  expect_node (0, (Point) { 150, 0 }, 0.3);
  expect_node (1, (Point) { 115, 11 }, 0.5);
}
END_TEST

static const char *const keys[] = { "Return", "Escape" };

/* Seen so large that the click itself is not near enough to end it. */
START_TEST (a_body_clicked_to_its_tail_beside_the_axis_is_whole_whoever_ends_it)
{
  trace_body (blunt, G_N_ELEMENTS (blunt), (Point) { 150, 1.5 }, 6);
  ck_assert_uint_eq (aeroplane_count (hand_aeroplane (), PIECE_BODY), 0);
  gui_key (keys[_i]);
  await_body ();
  ck_assert_double_eq (outline_node (body (), 0).y, 0);
  expect_node (1, (Point) { 150, 1.5 }, 0.3);
  expect_node (0, (Point) { 150, 0 }, 0.3);
}
END_TEST

START_TEST (a_body_left_on_the_way_stays_unfinished)
{
  trace_body (blunt, G_N_ELEMENTS (blunt), (Point) { 140, 4.2 }, 6);
  gui_key ("Escape");
  await_body ();
  ck_assert_double_gt (outline_node (body (), outline_node_count (body ()) - 1).y, 3.5);
}
END_TEST

int
main (void)
{
  TCase *tcase = tcase_create ("trace");

  tcase_add_test (tcase, a_tail_printed_blunt_stays_blunt_and_ends_on_the_axis);
  tcase_add_test (tcase, a_tail_printed_pointed_comes_out_pointed);
  tcase_add_loop_test (tcase, a_body_clicked_to_its_tail_beside_the_axis_is_whole_whoever_ends_it, 0, G_N_ELEMENTS (keys));
  tcase_add_test (tcase, a_body_left_on_the_way_stays_unfinished);
  return hand_run ("app trace-body", &tcase, 1);
}
