/* A trace under the hand: its clicks, the line shown ahead of them, and how it ends. */
#include "support/trace-hand.h"

START_TEST (five_clicks_trace_the_wing_within_half_a_per_cent_of_its_area)
{
  g_autofree char *before = NULL;

  begin ();
  before = hand_text ();
  trace_with (clicks, 5, 1);
  expect_printed_wing ();
  ck_assert_int_eq (wing ()->role, ROLE_WING);
  ck_assert_str_eq (wing ()->traced, "view");
  ck_assert_str_eq (hand_selected (), wing ()->piece.id);
  hand_undoes ("Trace Wing", before);
}
END_TEST

START_TEST (ahead_of_the_last_click_a_proposal_clings_to_the_line_and_the_plate_says_how_sure)
{
  Point there = { 101.9, 40 };

  begin ();
  hand_click (clicks[0]);
  hand_move ((Point) { 103.1, 40 });
  ck_assert (gui_wait (proposal_reaches, &there));
  ck_assert_double_eq_tol (shown ()->proposal[shown ()->proposal_count - 1].x, 101.9, 0.3);
  ck_assert (!shown ()->by_hand);
  ck_assert_ptr_nonnull (hand_plate ("On the line, sure to 0.1\u00a0mm"));
  ck_assert_str_eq (hand_plate ("Station"), "40");
  ck_assert_uint_eq (aeroplane_count (hand_aeroplane (), PIECE_SURFACE), 0);
}
END_TEST

static bool
plate_says_it_passes (gpointer data)
{
  return hand_plate ("The line found passes about 3\u00a0mm from here") != NULL;
}

START_TEST (a_line_that_passes_the_pointer_far_off_is_not_said_to_be_sure)
{
  begin ();
  hand_look ((Point) { 120, 20 }, 10);      /* a hand misses by less there */
  hand_click (clicks[0]);
  hand_move ((Point) { 104.4, 40 });
  ck_assert (gui_wait (plate_says_it_passes, NULL));
  ck_assert_ptr_null (hand_plate ("On the line, sure to 0.1\u00a0mm"));
}
END_TEST

static void
assert_text_is (const char *before)
{
  g_autofree char *now = hand_text ();

  ck_assert_str_eq (now, before);
}

static bool
plate_says_lost (gpointer data)
{
  return hand_plate ("Line lost: click closer together") != NULL;
}

START_TEST (where_no_line_is_printed_the_plate_says_that_it_is_lost)
{
  begin ();
  hand_click ((Point) { 115, 10 });
  hand_move ((Point) { 118, 60 });
  ck_assert (gui_wait (plate_says_lost, NULL));
}
END_TEST

START_TEST (taken_back_a_click_leaves_no_word_of_a_line_lost_that_was_not_looked_for_anew)
{
  Point there = { 101.9, 40 };

  begin ();
  hand_click (clicks[0]);
  hand_move ((Point) { 103.1, 40 });
  ck_assert (gui_wait (proposal_reaches, &there));
  click_at_once ((Point) { 103.1, 40 });
  ck_assert (trammel_sheet_canvas_take_back (hand_sheet ()));
  ck_assert (!shown ()->lost);
  ck_assert (gui_wait (proposal_reaches, &there));
  ck_assert (!shown ()->lost);
}
END_TEST

START_TEST (nothing_is_lost_yet_directly_after_a_click_and_close_beside_it)
{
  Point there = { 112, 10 };

  begin ();
  hand_click ((Point) { 115, 10 });
  ck_assert_uint_eq (shown ()->click_count, 1);
  ck_assert (!plate_says_lost (NULL));
  hand_move (there);
  ck_assert (gui_wait (proposal_reaches, &there));
  ck_assert (!plate_says_lost (NULL));
  ck_assert (!shown ()->lost);
  ck_assert_str_eq (hand_plate ("Station"), "10");
}
END_TEST

START_TEST (backspace_takes_the_last_point_back_and_the_trace_goes_on_from_the_one_before)
{
  begin ();
  hand_click (clicks[0]);
  hand_click (clicks[1]);
  hand_click ((Point) { 118, 30 });
  ck_assert_uint_eq (shown ()->click_count, 3);
  gui_key ("BackSpace");
  ck_assert_uint_eq (shown ()->click_count, 2);
  trace_with (clicks + 2, 3, 1);
  expect_printed_wing ();
}
END_TEST

START_TEST (undo_takes_back_the_clicks_in_hand_before_the_step_that_is_finished)
{
  begin ();
  trace_with (clicks, 5, 1);
  hand_click (clicks[0]);
  hand_click (clicks[1]);
  gui_key ("<Control>z");
  ck_assert_uint_eq (shown ()->click_count, 1);
  gtk_widget_activate_action (GTK_WIDGET (hand_window ()), "win.undo", NULL);
  ck_assert_uint_eq (shown ()->click_count, 0);
  expect_printed_wing ();
  gui_key ("<Control>z");
  ck_assert_uint_eq (aeroplane_count (hand_aeroplane (), PIECE_SURFACE), 0);
}
END_TEST

START_TEST (with_ctrl_a_stretch_lets_go_of_the_line_and_is_kept_straight)
{
  Outline *printed = printed_wing ();
  size_t segment;
  double t;

  begin ();
  hand_click (clicks[0]);
  hand_click ((Point) { 107, 70 });
  gui_key_down ("Control_L");
  hand_move ((Point) { 129, 71 });
  ck_assert (shown ()->by_hand);
  hand_click ((Point) { 129.5, 70 });
  gui_key_up ("Control_L");
  trace_with (clicks + 3, 2, 1);
  ck_assert_double_lt (outline_nearest (wing ()->outline, (Point) { 118, 70 }, &segment, &t), 0.4);
  ck_assert_double_lt (area_of (wing ()->outline), 0.95 * area_of (printed));
  outline_unref (printed);
}
END_TEST

START_TEST (places_are_typed_by_station_and_aft_of_datum_as_in_other_tools)
{
  begin ();
  hand_move ((Point) { 110, 30 });
  gui_type ("0\t");
  gui_type ("100\n");
  ck_assert_uint_eq (shown ()->click_count, 1);
  gui_type ("60.2\t");
  gui_type ("104.7\n");
  ck_assert_double_eq_tol (shown ()->clicks[1].x, 104.7, 1e-6);
  ck_assert_double_eq_tol (shown ()->clicks[1].y, 60.2, 1e-6);
  trace_with (clicks + 2, 3, 1);
  expect_printed_wing ();
}
END_TEST

START_TEST (a_station_typed_lies_on_the_side_that_is_traced)
{
  begin_on ((DrawnPlan) { .port = 1, .shows = VIEW_WING, .side = VIEW_PORT });
  hand_click (clicks[0]);
  gui_type ("60\t");
  gui_type ("104.7\n");
  ck_assert_double_eq_tol (fabs (shown ()->clicks[1].y), 60, 1e-6);
  ck_assert (shown ()->clicks[0].y * shown ()->clicks[1].y >= 0);
}
END_TEST

START_TEST (return_ends_it_where_the_clicks_are)
{
  begin ();
  trace_with (clicks, 4, 1);
  hand_click ((Point) { 139.4, 2.6 });
  ck_assert (gui_wait (rests, NULL));
  if (aeroplane_count (hand_aeroplane (), PIECE_SURFACE) == 0)
    gui_key ("Return");
  ck_assert (gui_wait (rests, NULL));
  gui_settle ();
  expect_printed_wing ();
}
END_TEST

/* Esc in the middle of a trace. */
static void
leave_off (void)
{
  gui_key ("Escape");
  ck_assert (gui_wait (rests, NULL));
  gui_settle ();
}

START_TEST (esc_leaves_what_was_accepted_and_a_click_goes_on_with_it)
{
  begin ();
  hand_click (clicks[0]);
  hand_click (clicks[1]);
  hand_click (clicks[2]);
  leave_off ();
  ck_assert_int_eq (outline_check (wing ()->outline, NULL), CORE_OPEN);
  ck_assert_str_eq (trammel_sheet_canvas_tool (hand_sheet ())->kind->word, "outline");
  trace_with (clicks + 3, 2, 1);
  expect_printed_wing ();
}
END_TEST

START_TEST (esc_from_a_trace_begun_anew_leaves_the_finished_outline_as_it_was)
{
  g_autofree char *before = NULL;

  begin ();
  trace_with (clicks, 5, 1);
  before = hand_text ();
  hand_click (clicks[0]);
  hand_click (clicks[1]);
  leave_off ();
  assert_text_is (before);
  ck_assert_uint_eq (shown ()->click_count, 0);
}
END_TEST

START_TEST (a_click_where_an_unfinished_outline_began_begins_it_anew)
{
  begin ();
  hand_click (clicks[0]);
  hand_click (clicks[1]);
  leave_off ();
  hand_click ((Point) { clicks[0].x + 3, clicks[0].y });
  ck_assert_uint_eq (shown ()->click_count, 1);
  ck_assert (rests (NULL));
  trace_with (clicks + 1, 4, 1);
  expect_printed_wing ();
}
END_TEST

START_TEST (esc_leaves_an_unfinished_outline_as_it_was_when_another_was_begun)
{
  g_autofree char *before = NULL;

  begin ();
  for (size_t i = 0; i < 4; i++)
    hand_click (clicks[i]);
  leave_off ();
  before = hand_text ();
  hand_click (clicks[0]);
  hand_click (clicks[1]);
  leave_off ();
  assert_text_is (before);
}
END_TEST

static bool
line_is_accepted (gpointer data)
{
  return shown ()->accepted_count > 3;
}

START_TEST (a_click_faster_than_the_line_does_not_take_the_line_to_where_the_pointer_was)
{
  Point there = { 101.9, 40 };
  const ToolEvent on = event_at ((Point) { 104.4, 60 });
  Tool *tool;

  begin ();
  hand_click (clicks[0]);
  hand_move ((Point) { 103.1, 40 });
  ck_assert (gui_wait (proposal_reaches, &there));
  tool = trammel_sheet_canvas_tool (hand_sheet ());
  tool->kind->hover (tool, &on);
  tool->kind->press (tool, &on);
  tool->kind->click (tool, &on);
  ck_assert (gui_wait (line_is_accepted, NULL));
  ck_assert_double_gt (shown ()->accepted[shown ()->accepted_count - 1].y, 58);
}
END_TEST

START_TEST (beyond_the_picture_no_line_is_proposed)
{
  begin ();
  hand_click (clicks[0]);
  hand_move ((Point) { 103.1, 40 });
  ck_assert (shown ()->has_aim);
  hand_move ((Point) { 80, 20 });
  ck_assert (!shown ()->has_aim);
  ck_assert_uint_eq (shown ()->proposal_count, 0);
}
END_TEST

START_TEST (a_slender_body_s_outline_ends_only_on_its_axis_and_aft_of_the_last_click)
{
  begin_on ((DrawnPlan) { .starboard = 1, .shows = VIEW_BODY_TOP, .side = VIEW_BOTH });
  hand_click ((Point) { 100.4, 5 });
  hand_click ((Point) { 120, 14 });
  hand_move ((Point) { 130, 5 });
  ck_assert (!shown ()->has_ring);
  hand_move ((Point) { 110, 0.5 });
  ck_assert (!shown ()->has_ring);
  hand_move ((Point) { 150, 0.5 });
  ck_assert (shown ()->has_ring);
}
END_TEST

START_TEST (while_h_is_held_the_pointer_says_only_how_far)
{
  Point there = { 101.9, 40 };

  begin ();
  hand_click (clicks[0]);
  hand_click ((Point) { 100.5, 15 });
  gui_key_down ("h");
  hand_move ((Point) { 104.5, 40 });
  ck_assert (gui_wait (proposal_reaches, &there));
  ck_assert_double_eq_tol (shown ()->proposal[shown ()->proposal_count - 1].x, 101.9, 0.4);
  hand_click ((Point) { 104.5, 40 });
  gui_key_up ("h");
  ck_assert_uint_eq (shown ()->click_count, 3);
  ck_assert_double_eq_tol (shown ()->clicks[2].x, 101.9, 0.4);
  gui_key ("BackSpace");
  ck_assert_uint_eq (shown ()->click_count, 2);
}
END_TEST

int
main (void)
{
  TCase *tcase = tcase_create ("trace");

  tcase_add_test (tcase, five_clicks_trace_the_wing_within_half_a_per_cent_of_its_area);
  tcase_add_test (tcase, ahead_of_the_last_click_a_proposal_clings_to_the_line_and_the_plate_says_how_sure);
  tcase_add_test (tcase, a_line_that_passes_the_pointer_far_off_is_not_said_to_be_sure);
  tcase_add_test (tcase, where_no_line_is_printed_the_plate_says_that_it_is_lost);
  tcase_add_test (tcase, taken_back_a_click_leaves_no_word_of_a_line_lost_that_was_not_looked_for_anew);
  tcase_add_test (tcase, nothing_is_lost_yet_directly_after_a_click_and_close_beside_it);
  tcase_add_test (tcase, backspace_takes_the_last_point_back_and_the_trace_goes_on_from_the_one_before);
  tcase_add_test (tcase, undo_takes_back_the_clicks_in_hand_before_the_step_that_is_finished);
  tcase_add_test (tcase, with_ctrl_a_stretch_lets_go_of_the_line_and_is_kept_straight);
  tcase_add_test (tcase, places_are_typed_by_station_and_aft_of_datum_as_in_other_tools);
  tcase_add_test (tcase, a_station_typed_lies_on_the_side_that_is_traced);
  tcase_add_test (tcase, return_ends_it_where_the_clicks_are);
  tcase_add_test (tcase, esc_leaves_what_was_accepted_and_a_click_goes_on_with_it);
  tcase_add_test (tcase, esc_from_a_trace_begun_anew_leaves_the_finished_outline_as_it_was);
  tcase_add_test (tcase, a_click_where_an_unfinished_outline_began_begins_it_anew);
  tcase_add_test (tcase, esc_leaves_an_unfinished_outline_as_it_was_when_another_was_begun);
  tcase_add_test (tcase, a_click_faster_than_the_line_does_not_take_the_line_to_where_the_pointer_was);
  tcase_add_test (tcase, beyond_the_picture_no_line_is_proposed);
  tcase_add_test (tcase, a_slender_body_s_outline_ends_only_on_its_axis_and_aft_of_the_last_click);
  tcase_add_test (tcase, while_h_is_held_the_pointer_says_only_how_far);
  return hand_run ("app trace-window", &tcase, 1);
}
