/* A trace by the keyboard: where the key cursor clicks, what its clicks cling to, and where the keys then go. */
#include "app/panel.h"
#include "support/trace-hand.h"
#include <string.h>

static Point
cursor (void)
{
  const SheetOverlay *overlay = trammel_sheet_canvas_overlay (hand_sheet ());

  ck_assert (overlay->has_cursor);
  return overlay->cursor;
}

/* Sets the key cursor down within a step of a place, by keys from where it is: over a plan by a px of the screen, with Shift by ten. */
static void
step_to (Point place)
{
  const double px = 1 / trammel_sheet_canvas_view (hand_sheet ())->scale;

  if (!trammel_sheet_canvas_overlay (hand_sheet ())->has_cursor)
    gui_key ("Left");
  while (fabs (place.y - cursor ().y) >= 10 * px)
    gui_key (place.y > cursor ().y ? "<Shift>Right" : "<Shift>Left");
  while (fabs (place.y - cursor ().y) >= px)
    gui_key (place.y > cursor ().y ? "Right" : "Left");
  while (fabs (place.x - cursor ().x) >= 10 * px)
    gui_key (place.x > cursor ().x ? "<Shift>Down" : "<Shift>Up");
  while (fabs (place.x - cursor ().x) >= px)
    gui_key (place.x > cursor ().x ? "Down" : "Up");
}

static void
begin_by_keys (void)
{
  begin ();
  hand_move ((Point) { 100, 1 });
  step_to ((Point) { 100, 0 });
  gui_key ("Return");
  ck_assert_uint_eq (shown ()->click_count, 1);
}

static bool
panel_is_shown (gpointer data)
{
  GtkWidget *panel = gui_find_type (GTK_WIDGET (hand_window ()), TRAMMEL_TYPE_PANEL);

  return panel != NULL && gtk_widget_get_mapped (panel);
}

START_TEST (the_key_cursor_clings_to_the_line_as_the_pointer_does)
{
  Point there = { 101.9, 40 };

  begin_by_keys ();
  step_to ((Point) { 103, 40 });
  ck_assert (!shown ()->by_hand);
  ck_assert (gui_wait (proposal_reaches, &there));
  ck_assert_double_eq_tol (shown ()->proposal[shown ()->proposal_count - 1].x, 101.9, 0.3);
  ck_assert_ptr_nonnull (hand_plate ("On the line, sure to 0.1\u00a0mm"));
}
END_TEST

START_TEST (clicks_of_the_key_cursor_trace_the_wing_and_return_ends_nothing_else)
{
  begin_by_keys ();
  step_to ((Point) { 105, 60 });
  gui_key ("Return");
  step_to ((Point) { 116, 85 });
  gui_key ("Return");
  step_to ((Point) { 133, 60 });
  gui_key ("Return");
  step_to ((Point) { 140, 0 });
  gui_key ("Return");
  ck_assert (gui_wait (rests, NULL));
  gui_settle ();
  expect_printed_wing ();
}
END_TEST

START_TEST (with_ctrl_the_key_cursor_lets_go_of_the_line)
{
  begin_by_keys ();
  step_to ((Point) { 103, 40 });
  gui_key_down ("Control_L");
  ck_assert (shown ()->by_hand);
  gui_key_up ("Control_L");
  ck_assert (!shown ()->by_hand);
  gui_key ("<Control>Return");
  ck_assert_uint_eq (shown ()->click_count, 2);
  ck_assert_uint_eq (shown ()->accepted_count, 2);
}
END_TEST

START_TEST (the_key_cursor_stays_at_its_place_when_a_strip_closes_and_the_sheet_is_fitted)
{
  Point place = { 103, 40 };

  begin ();
  trammel_window_tell (hand_window (), "A remark.");
  gui_wait_ms (400);
  hand_move ((Point) { 100, 1 });
  step_to (place);
  place = cursor ();
  gtk_widget_activate_action (GTK_WIDGET (hand_window ()), "win.close-strip", NULL);
  gui_wait_ms (400);
  gui_key ("Right");
  gui_key ("Return");
  gui_settle ();
  gui_key ("<Shift>Right");
  gui_settle ();
  gui_key ("<Shift>Left");
  gui_settle ();
  gui_key ("Left");
  ck_assert_double_lt (point_distance (cursor (), place), 1e-9);
  trammel_sheet_canvas_fit (hand_sheet (), false);
  hand_await_layout ();
  ck_assert_double_lt (point_distance (cursor (), place), 1e-9);
  ck_assert_double_lt (point_distance (shown ()->aim, place), 1e-9);
  hand_move ((Point) { 120, 20 });
  ck_assert (!trammel_sheet_canvas_overlay (hand_sheet ())->has_cursor);
}
END_TEST

START_TEST (return_leaves_the_keyboard_on_the_sheet_also_when_the_trace_has_ended_by_itself)
{
  begin ();
  trace_with (clicks, 5, 1);
  gui_key ("Return");
  gui_wait_ms (500);
  ck_assert (gtk_widget_has_focus (GTK_WIDGET (hand_sheet ())));
  ck_assert (!panel_is_shown (NULL));
}
END_TEST

START_TEST (the_strip_says_what_click_ends_a_trace)
{
  begin ();
  hand_click (clicks[0]);
  ck_assert_ptr_nonnull (strstr (trammel_sheet_canvas_hint (hand_sheet ()), "A click on the centre line or Return ends it"));
  begin_on ((DrawnPlan) { .starboard = 1, .shows = VIEW_BODY_SIDE, .side = VIEW_BOTH });
  hand_click (clicks[0]);
  ck_assert_ptr_nonnull (strstr (trammel_sheet_canvas_hint (hand_sheet ()), "A click where it began or Return ends it"));
}
END_TEST

START_TEST (over_a_plan_the_key_cursor_steps_a_pixel_of_the_screen_and_ten_with_shift_and_the_strip_says_so)
{
  begin ();
  hand_move ((Point) { 100, 1 });
  gui_key ("Right");
  for (int zoomed = 0; zoomed < 2; zoomed++) {
    const double px = 1 / trammel_sheet_canvas_view (hand_sheet ())->scale;
    const Point from = cursor ();

    gui_key ("Down");
    ck_assert_double_eq_tol (cursor ().x, from.x + px, 1e-6);
    gui_key ("<Shift>Right");
    ck_assert_double_eq_tol (cursor ().y, from.y + 10 * px, 1e-6);
    trammel_sheet_canvas_zoom_middle (hand_sheet (), 4);
    hand_await_layout ();
  }
  ck_assert_ptr_nonnull (strstr (trammel_sheet_canvas_hint (hand_sheet ()), "Arrows step a pixel of the screen, with Shift ten"));
}
END_TEST

START_TEST (return_clicks_at_the_key_cursor_however_little_it_moved_and_a_second_time_there_it_ends)
{
  begin_by_keys ();
  ck_assert_ptr_null (strstr (trammel_sheet_canvas_hint (hand_sheet ()), "or Return ends it"));
  ck_assert_ptr_nonnull (strstr (trammel_sheet_canvas_hint (hand_sheet ()), "Return clicks; again at the same place"));
  trammel_sheet_canvas_zoom_middle (hand_sheet (), 4);
  hand_await_layout ();
  step_to ((Point) { 103, 40 });
  gui_key ("Return");
  gui_key ("<Shift>Right");
  gui_key ("Return");
  ck_assert_uint_eq (shown ()->click_count, 3);
  gui_key ("Return");
  ck_assert (gui_wait (rests, NULL));
  gui_settle ();
  ck_assert_uint_eq (aeroplane_count (hand_aeroplane (), PIECE_SURFACE), 1);
}
END_TEST

static const char *
tool_in_hand (void)
{
  return trammel_sheet_canvas_tool (hand_sheet ())->kind->word;
}

START_TEST (after_a_menu_is_closed_letters_choose_tools_on_the_sheet)
{
  begin ();
  trace_with (clicks, 5, 1);
  gui_click (gui_await (GTK_WIDGET (hand_window ()), "Main menu"));
  gui_key ("Escape");
  gui_settle ();
  ck_assert (gtk_widget_has_focus (GTK_WIDGET (hand_sheet ())));
  gui_key ("h");
  ck_assert_str_eq (tool_in_hand (), "hinge");
  ck_assert (gtk_widget_has_focus (GTK_WIDGET (hand_sheet ())));
}
END_TEST

START_TEST (the_sheet_has_the_keyboard_again_after_the_help_was_read)
{
  begin ();
  hand_click (clicks[0]);
  gui_click (gui_await (GTK_WIDGET (hand_window ()), "Main menu"));
  gui_click (gui_await (GTK_WIDGET (hand_window ()), "Help"));
  gui_await_window ("Help");
  gui_key ("Escape");
  gui_present (GTK_WINDOW (hand_window ()));
  gui_settle ();
  ck_assert (!gui_window_is_there ("Help"));
  ck_assert (gtk_widget_has_focus (GTK_WIDGET (hand_sheet ())));
  ck_assert_uint_eq (shown ()->click_count, 1);
}
END_TEST

START_TEST (letters_typed_in_a_field_of_the_panel_choose_no_tool)
{
  GtkWidget *panel;

  begin ();
  trace_with (clicks, 5, 1);
  g_action_group_change_action_state (G_ACTION_GROUP (hand_window ()), "show-panel", g_variant_new_boolean (TRUE));
  ck_assert (gui_wait (panel_is_shown, NULL));
  panel = gui_find_type (GTK_WIDGET (hand_window ()), TRAMMEL_TYPE_PANEL);
  gtk_widget_grab_focus (gui_find_type (panel, GTK_TYPE_TEXT));
  gui_key ("h");
  ck_assert_str_eq (tool_in_hand (), "outline");
  gui_key ("Escape");
  g_action_group_change_action_state (G_ACTION_GROUP (hand_window ()), "show-panel", g_variant_new_boolean (FALSE));
}
END_TEST

static double
off_wing (Point place)
{
  size_t segment;
  double t;

  return outline_nearest (wing ()->outline, place, &segment, &t);
}

/* Its leading edge is printed as two lines 3 mm apart. */
START_TEST (beside_a_double_line_what_is_shown_ahead_is_what_the_click_gives)
{
  static const Point inner[][2] = { { { 3, 0 }, { 10, 85 } } };
  const Point edge[] = { { 101.9, 4 }, { 103.5, 30 }, { 107.5, 72 } };
  Outline *printed = polygon_from ((Point[]) { { 0, 0 }, { 7, 85 }, { 40, 85 }, { 45, 0 } }, 4);
  Point there = edge[2];
  g_autoptr (GArray) ahead = g_array_new (FALSE, FALSE, sizeof (Point));
  guint apart = 0;

  begin_over ((DrawnPlan) { .starboard = 1, .shows = VIEW_WING, .side = VIEW_STARBOARD, .inner = inner, .inner_count = 1, .outline = printed });
  hand_click (edge[0]);
  hand_click (edge[1]);
  hand_move (edge[2]);
  ck_assert (gui_wait (proposal_reaches, &there));
  gui_settle ();
  g_array_append_vals (ahead, shown ()->proposal, (guint) shown ()->proposal_count);
  hand_click (edge[2]);
  gui_key ("Return");
  ck_assert (gui_wait (rests, NULL));
  gui_settle ();
  for (guint i = 0; i < ahead->len; i++)
    apart += off_wing (g_array_index (ahead, Point, i)) > 0.2;
  ck_assert_uint_gt (ahead->len, 100);
  ck_assert_uint_lt (apart, ahead->len / 20);
  outline_unref (printed);
}
END_TEST

int
main (void)
{
  TCase *tcase = tcase_create ("trace");

  tcase_add_test (tcase, the_key_cursor_clings_to_the_line_as_the_pointer_does);
  tcase_add_test (tcase, clicks_of_the_key_cursor_trace_the_wing_and_return_ends_nothing_else);
  tcase_add_test (tcase, with_ctrl_the_key_cursor_lets_go_of_the_line);
  tcase_add_test (tcase, the_key_cursor_stays_at_its_place_when_a_strip_closes_and_the_sheet_is_fitted);
  tcase_add_test (tcase, return_leaves_the_keyboard_on_the_sheet_also_when_the_trace_has_ended_by_itself);
  tcase_add_test (tcase, the_strip_says_what_click_ends_a_trace);
  tcase_add_test (tcase, after_a_menu_is_closed_letters_choose_tools_on_the_sheet);
  tcase_add_test (tcase, letters_typed_in_a_field_of_the_panel_choose_no_tool);
  tcase_add_test (tcase, over_a_plan_the_key_cursor_steps_a_pixel_of_the_screen_and_ten_with_shift_and_the_strip_says_so);
  tcase_add_test (tcase, return_clicks_at_the_key_cursor_however_little_it_moved_and_a_second_time_there_it_ends);
  tcase_add_test (tcase, the_sheet_has_the_keyboard_again_after_the_help_was_read);
  tcase_add_test (tcase, beside_a_double_line_what_is_shown_ahead_is_what_the_click_gives);
  return hand_run ("app trace-keys", &tcase, 1);
}
