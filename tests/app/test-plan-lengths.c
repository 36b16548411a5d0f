/* Known lengths of a plan under a real hand: clicked, typed, dragged, undone. */
#include "app/plan-edit.h"
#include "support/plan-hand.h"

START_TEST (two_clicks_and_a_figure_make_a_known_length)
{
  begin ();
  g_autoptr (Aeroplane) before_it = aeroplane_ref (hand_aeroplane ());
  set_level_length ("80 mm");
  ck_assert_uint_eq (plan ()->length_count, 1);
  ck_assert_double_eq (length ()->mm, 80);
  /* Both ends cling to the crossings they were clicked beside. */
  assert_px (length ()->a, level_from, 0.5);
  assert_px (length ()->b, level_to, 0.5);
  gui_await (strip (), "By that length the whole picture is 120 × 90\u00a0mm, margins and all.");
  gui_await (strip (), "Click another length across the first: paper often stretches by half a per cent. Or go on with Square Up.");
  /* What the picture measures checks that figure, and tells nothing of a level line. */
  step ("Square Up");
  ck_assert_ptr_null (gui_find (strip (), "By that length the whole picture is 120 × 90\u00a0mm, margins and all."));
  undoes ("Set Known Length", before_it);
}
END_TEST

START_TEST (a_plan_made_larger_or_turned_stays_where_it_was_under_the_hand)
{
  Placing placing;

  begin ();
  const SheetView view = *trammel_sheet_canvas_view (hand_sheet ());
  ck_assert (trammel_plan_store_placing (plans (), &placing));
  const Point middle = placing_px (&placing, view_from_screen (&view, view.width / 2, view.height / 2));
  const Point before = seen_at (middle), beside_before = seen_at (point_add (middle, (Point) { 100, 0 }));
  set_level_length ("137 mm");
  ck_assert_double_lt (point_distance (seen_at (middle), before), 1);
  ck_assert_double_lt (point_distance (seen_at (point_add (middle, (Point) { 100, 0 })), beside_before), 1);
  add_view ();
  ck_assert_double_lt (point_distance (seen_at (middle), before), 1);
}
END_TEST

START_TEST (ctrl_lets_go_of_what_is_printed)
{
  begin ();
  gui_key_down ("Control_L");
  click_level ();
  gui_key_up ("Control_L");
  type_length ("80");
  assert_px (length ()->a, point_add (level_from, (Point) { 4, -5 }), 1.6);
  ck_assert_double_gt (point_distance (length ()->a, level_from), 3);
}
END_TEST

START_TEST (inches_and_fractions_are_understood_whatever_the_units)
{
  begin ();
  set_level_length ("12 5/8 in");
  ck_assert_double_eq_tol (length ()->mm, 12.625 * 25.4, 1e-9);
}
END_TEST

START_TEST (a_second_length_across_tells_how_the_paper_stretched)
{
  begin ();
  set_level_length ("80");
  g_autoptr (Aeroplane) before_it = aeroplane_ref (hand_aeroplane ());
  hand_look ((Point) { 40, 0 }, 4);
  click_px (upright_from);
  click_px (upright_to);
  type_length ("40.4");
  ck_assert_uint_eq (plan ()->length_count, 2);
  gui_await (strip (), "Paper has stretched: across 1.0\u00a0% more than along. Both are used.");
  undoes ("Set Known Length", before_it);
}
END_TEST

START_TEST (undo_takes_back_an_unfinished_length_click_by_click_before_the_length_before_it)
{
  begin ();
  g_autoptr (Aeroplane) before_it = aeroplane_ref (hand_aeroplane ());
  set_level_length ("80");
  hand_look ((Point) { 40, 0 }, 4);
  click_px (upright_from);
  click_px (upright_to);
  ck_assert (gui_wait (field_is_open, NULL));
  gtk_widget_activate_action (GTK_WIDGET (hand_window ()), "win.undo", NULL);
  ck_assert (!field_is_open (NULL));
  gui_key ("<Control>z");
  ck_assert_uint_eq (plan ()->length_count, 1);
  gui_key ("<Control>z");
  ck_assert (aeroplane_equal (hand_aeroplane (), before_it));
}
END_TEST

START_TEST (a_field_left_with_esc_makes_no_length)
{
  begin ();
  click_px (level_from);
  click_px (level_to);
  ck_assert (gui_wait (field_is_open, NULL));
  gui_type ("80");
  gui_key ("Escape");
  hand_move (on_sheet ((Point) { 500, 700 }));
  ck_assert_uint_eq (plan ()->length_count, 0);
  ck_assert_ptr_null (trammel_session_undo_label (hand_session ()));
  set_level_length ("80");
  assert_px (length ()->a, level_from, 0.5);
}
END_TEST

START_TEST (nothing_is_no_length)
{
  begin ();
  click_px (level_from);
  click_px (level_to);
  type_length ("0");
  ck_assert (field_is_open (NULL));
  gui_await (GTK_WIDGET (trammel_sheet_canvas_field (hand_sheet ())), "A known length must be above zero.");
  ck_assert_uint_eq (plan ()->length_count, 0);
}
END_TEST

START_TEST (an_end_is_dragged_typed_anew_nudged_and_deleted_by_hand_and_keys)
{
  const Point elsewhere = { 1000, 250 };
  Point before;

  begin ();
  set_level_length ("80");
  g_autoptr (Aeroplane) set = aeroplane_ref (hand_aeroplane ());
  /* While it is dragged nothing turns under the hand; it is made true anew when it is let go. */
  hand_look ((Point) { 40, 0 }, 4);
  hand_drag (on_sheet (level_to), on_sheet (elsewhere));
  assert_px (length ()->b, elsewhere, 4);         /* a screen pixel is two and a half of the picture here */
  undoes ("Move Known Length", set);
  /* The figure. */
  hand_click (on_sheet (point_mix (level_from, level_to, 0.5)));
  type_length ("82");
  ck_assert_double_eq (length ()->mm, 82);
  undoes ("Set Known Length", set);
  /* Keys. */
  before = length ()->b;
  gui_key ("Tab");
  gui_key ("Tab");
  gui_key ("Right");
  gui_key ("Right");
  assert_px (length ()->b, point_add (before, (Point) { 2, 0 }), 0.1);
  gui_wait_ms (900);
  undoes ("Move Known Length", set);
  gui_key ("Return");
  type_length ("81");
  ck_assert_double_eq (length ()->mm, 81);
  undoes ("Set Known Length", set);
  gui_key ("Delete");
  ck_assert_uint_eq (plan ()->length_count, 0);
  undoes ("Remove Known Length", set);
}
END_TEST

START_TEST (an_end_on_a_printed_tick_follows_a_small_drag_and_clings_to_another_tick_unless_ctrl_is_held)
{
  Point end;

  begin ();
  set_level_length ("80");
  end = length ()->b;
  hand_look (on_sheet (end), 10);
  /* Five pixels of the screen along the sheet: half a millimetre. */
  const Point at = on_sheet (end), moved = { at.x + 0.5, at.y };
  hand_drag (at, moved);
  assert_px (length ()->b, point_add (end, (Point) { 0, 5 }), 0.6);
  hand_drag (on_sheet (length ()->b), at);
  assert_px (length ()->b, end, 1);
  /* The upright line's end is a tick, too. */
  hand_look (on_sheet (point_mix (end, upright_to, 0.5)), 1.9);
  gui_key_down ("Control_L");
  hand_drag (on_sheet (length ()->b), on_sheet (point_add (upright_to, (Point) { 4, 3 })));
  gui_key_up ("Control_L");
  ck_assert_double_gt (point_distance (length ()->b, upright_to), 3);
}
END_TEST

START_TEST (esc_puts_a_dragged_end_back)
{
  begin ();
  set_level_length ("80");
  g_autoptr (Aeroplane) set = aeroplane_ref (hand_aeroplane ());
  hand_pull (on_sheet (level_to), on_sheet ((Point) { 1000, 250 }));
  gui_key ("Escape");
  hand_release ();
  ck_assert (aeroplane_equal (hand_aeroplane (), set));
}
END_TEST

START_TEST (undone_in_the_middle_of_a_drag_a_length_is_gone)
{
  begin ();
  g_autoptr (Aeroplane) before_it = aeroplane_ref (hand_aeroplane ());
  set_level_length ("80");
  hand_pull (on_sheet (level_to), on_sheet ((Point) { 1000, 250 }));
  gui_key ("<Control>z");
  hand_release ();
  ck_assert (aeroplane_equal (hand_aeroplane (), before_it));
}
END_TEST

START_TEST (the_sheet_is_not_locked_between_two_clicks)
{
  begin ();
  click_px (level_from);
  gui_scroll (GTK_WIDGET (hand_sheet ()), 300, 300, 1);
  gui_key ("<Control>plus");
  hand_await_layout ();
  click_px (level_to);
  type_length ("80");
  assert_px (length ()->a, level_from, 0.5);
  assert_px (length ()->b, level_to, 0.5);
}
END_TEST

START_TEST (an_end_clicked_on_a_sheet_seen_small_makes_a_length_no_surer_when_the_other_is_clicked_close_by)
{
  double far, near;

  begin ();
  hand_look (on_sheet (level_from), 1.9);
  far = plan_edit_click_sigma (hand_sheet (), level_from);
  click_px (level_from);
  hand_look (on_sheet (level_to), 15.2);
  near = plan_edit_click_sigma (hand_sheet (), level_to);
  click_px (level_to);
  type_length ("80");
  ck_assert_double_eq_tol (near, far / 8, 1e-6);
  ck_assert_double_eq_tol (length ()->sigma_a, far, 1e-3);
  ck_assert_double_eq_tol (length ()->sigma_b, near, 1e-3);
}
END_TEST

START_TEST (a_length_that_makes_a_sheet_of_no_size_is_taken_and_said)
{
  begin ();
  set_level_length ("4000");
  ck_assert_double_eq (length ()->mm, 4000);
  gui_await (strip (), "By that the whole picture would be 6000 × 4500\u00a0mm: look at the figure you typed, and its unit.");
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("known lengths");

  tcase_add_test (tests, two_clicks_and_a_figure_make_a_known_length);
  tcase_add_test (tests, a_plan_made_larger_or_turned_stays_where_it_was_under_the_hand);
  tcase_add_test (tests, ctrl_lets_go_of_what_is_printed);
  tcase_add_test (tests, inches_and_fractions_are_understood_whatever_the_units);
  tcase_add_test (tests, a_second_length_across_tells_how_the_paper_stretched);
  tcase_add_test (tests, undo_takes_back_an_unfinished_length_click_by_click_before_the_length_before_it);
  tcase_add_test (tests, a_field_left_with_esc_makes_no_length);
  tcase_add_test (tests, nothing_is_no_length);
  tcase_add_test (tests, an_end_is_dragged_typed_anew_nudged_and_deleted_by_hand_and_keys);
  tcase_add_test (tests, an_end_on_a_printed_tick_follows_a_small_drag_and_clings_to_another_tick_unless_ctrl_is_held);
  tcase_add_test (tests, esc_puts_a_dragged_end_back);
  tcase_add_test (tests, undone_in_the_middle_of_a_drag_a_length_is_gone);
  tcase_add_test (tests, the_sheet_is_not_locked_between_two_clicks);
  tcase_add_test (tests, an_end_clicked_on_a_sheet_seen_small_makes_a_length_no_surer_when_the_other_is_clicked_close_by);
  tcase_add_test (tests, a_length_that_makes_a_sheet_of_no_size_is_taken_and_said);
  return hand_run ("plan lengths", &tests, 1);
}
