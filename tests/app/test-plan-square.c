/* Squaring a plan up under a real hand: a level line, a rectangle, a straight line. */
#include "support/plan-hand.h"

static double
turn_of (Point a, Point b)
{
  Mapping mapping;

  ck_assert (trammel_plan_store_mapping (plans (), &mapping, NULL, NULL));
  const Point from = mapping_to_mm (&mapping, a), to = mapping_to_mm (&mapping, b);

  return atan2 (to.y - from.y, to.x - from.x);
}

START_TEST (a_line_dragged_along_the_print_levels_the_sheet_when_it_is_let_go)
{
  begin ();
  g_autoptr (Aeroplane) before_it = aeroplane_ref (hand_aeroplane ());
  ck_assert_double_gt (fabs (turn_of (level_from, level_to)), 0.009);
  step ("Square Up");
  hand_pull (on_sheet ((Point) { 300, 406 }), on_sheet ((Point) { 900, 406 }));
  ck_assert_double_gt (fabs (turn_of (level_from, level_to)), 0.009);
  hand_release ();
  /* Level is what is printed there, not the hand's own line. */
  ck_assert_double_lt (fabs (turn_of (level_from, level_to)), 0.0005);
  undoes ("Level the Plan", before_it);
}
END_TEST

static double
side (size_t from, size_t to)
{
  Mapping mapping;

  ck_assert (trammel_plan_store_mapping (plans (), &mapping, NULL, NULL));
  return point_distance (mapping_to_mm (&mapping, corners[from]), mapping_to_mm (&mapping, corners[to]));
}

static void
click_corners (void)
{
  step ("Square Up");
  gui_click (gui_await (strip (), "Four Corners"));
  for (int i = 0; i < 4; i++)
    click_px (point_add (corners[i], (Point) { 3, -3 }));
}

START_TEST (four_corners_square_a_photograph_up_once_it_looks_right)
{
  begin_with (new_plan (true));
  g_autoptr (Aeroplane) before_it = aeroplane_ref (hand_aeroplane ());
  click_corners ();
  /* Offered: seen at once, and no step yet. */
  type_length ("200");
  type_length ("120");
  ck_assert_double_eq_tol (side (0, 1), 200, 0.5);
  ck_assert_ptr_null (trammel_session_undo_label (hand_session ()));
  gui_click (gui_await (strip (), "Looks Right"));
  gui_settle ();
  ck_assert_double_eq_tol (side (0, 1), 200, 0.1);
  ck_assert_double_eq_tol (side (1, 2), 120, 0.1);
  ck_assert_double_eq_tol (side (0, 2), hypot (200, 120), 0.15);
  /* Its four printed sides are known to be straight. */
  ck_assert_uint_eq (plan ()->straight_count, 4);
  undoes ("Square Up", before_it);
}
END_TEST

START_TEST (esc_puts_an_offered_rectangle_back)
{
  begin_with (new_plan (true));
  g_autoptr (Aeroplane) before_it = aeroplane_ref (hand_aeroplane ());
  click_corners ();
  type_length ("200");
  ck_assert (gui_wait (field_is_open, NULL));
  gui_key ("Escape");
  gui_key ("Escape");
  ck_assert (aeroplane_equal (hand_aeroplane (), before_it));
  ck_assert_ptr_null (trammel_session_undo_label (hand_session ()));
}
END_TEST

START_TEST (a_straight_line_is_clicked_and_ended_with_return)
{
  begin_with (new_plan (true));
  click_corners ();
  type_length ("200");
  type_length ("120");
  gui_key ("Return");
  ck_assert_str_eq (trammel_session_undo_label (hand_session ()), "Square Up");
  g_autoptr (Aeroplane) before_it = aeroplane_ref (hand_aeroplane ());
  gui_click (gui_await (strip (), "Straight Line"));
  hand_look (on_sheet ((Point) { 600, 450 }), 2.5);
  for (int i = 1; i < 4; i++)
    click_px ((Point) { 300 + 150 * i, 500 });
  gui_key ("Return");
  ck_assert_uint_eq (plan ()->straight_count, 5);
  ck_assert_uint_eq (plan ()->straight[4].count, 3);
  undoes ("Add Straight Line", before_it);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("square up");

  tcase_add_test (tests, a_line_dragged_along_the_print_levels_the_sheet_when_it_is_let_go);
  tcase_add_test (tests, four_corners_square_a_photograph_up_once_it_looks_right);
  tcase_add_test (tests, esc_puts_an_offered_rectangle_back);
  tcase_add_test (tests, a_straight_line_is_clicked_and_ended_with_return);
  return hand_run ("plan square", &tests, 1);
}
