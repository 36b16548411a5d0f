/* Squaring a plan up under a real hand: a level line, a rectangle, a straight line. */
#include "app/plan-edit.h"
#include "app/plan-making.h"
#include "app/plan-misfit.h"
#include "document/changes.h"
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
  await_look ();
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
  await_look ();
  ck_assert_double_eq_tol (side (0, 1), 200, 0.1);
  ck_assert_double_eq_tol (side (1, 2), 120, 0.1);
  ck_assert_double_eq_tol (side (0, 2), hypot (200, 120), 0.15);
  /* Its four printed sides are known to be straight. */
  ck_assert_uint_eq (plan ()->straight_count, 4);
  undoes ("Square Up", before_it);
}
END_TEST

START_TEST (beside_a_rectangle_a_length_only_checks_and_the_strip_says_so_and_by_how_much_it_differs)
{
  Plan *made = new_plan (true);
  const PlanLength known = { .a = corners[0], .b = corners[1], .mm = 200 };
  MappingMisfit misfit = { .maker = MADE_BY_RECTANGLE, .length_count = 1, .lengths = { { .residual_percent = 1.25 } }, .scale_x = 0.3,
                           .scale_y = 0.3 };

  made->has_corners = true;
  memcpy (made->corners, corners, sizeof corners);
  made->corners_width = 200;
  made->corners_height = 120;
  begin_with (made);
  trammel_session_do (hand_session (), change_plan (hand_aeroplane (), "sheet", plan_with_length (plan (), known)), "Add");
  gui_await (strip (), "The rectangle gives the scale, and a length only checks it: click both ends of one, or go on with View.");
  g_autofree char *more = plan_misfit_words (plan (), &misfit, true, (Units) { LENGTH_MM, MASS_G });
  ck_assert_str_eq (more, "By the rectangle the length 200\u00a0mm measures 1.3\u00a0% more, no more than clicks there may.");
  misfit.lengths[0].residual_percent = -0.5;
  g_autofree char *less = plan_misfit_words (plan (), &misfit, true, (Units) { LENGTH_MM, MASS_G });
  ck_assert_str_eq (less, "By the rectangle the length 200\u00a0mm measures 0.5\u00a0% less, no more than clicks there may.");
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
  await_look ();
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

/* Looking for what is printed takes its time on a fine scan; until then the hand is free. */

static void
level_under_way (void)
{
  begin ();
  plan_making_level (hand_sheet (), level_from, level_to, false);
  ck_assert (plan_look_is_busy (hand_sheet ()));
  ck_assert (!trammel_plan_store_plan (plans ())->has_level);
}

START_TEST (a_level_line_is_looked_for_while_the_hand_is_free_and_then_levels_the_sheet)
{
  level_under_way ();
  ck_assert (plan ()->has_level);
  ck_assert_str_eq (trammel_session_undo_label (hand_session ()), "Level the Plan");
}
END_TEST

START_TEST (undo_or_esc_meanwhile_keep_it_from_coming_and_undo_nothing_else)
{
  level_under_way ();
  ck_assert (_i ? trammel_sheet_canvas_take_back (hand_sheet ()) : trammel_sheet_canvas_tool (hand_sheet ())->kind->cancel (
                                                                       trammel_sheet_canvas_tool (hand_sheet ())));
  gui_wait_ms (300);
  ck_assert (!plan ()->has_level);
  ck_assert_ptr_null (trammel_session_undo_label (hand_session ()));
}
END_TEST

START_TEST (what_was_looked_for_on_a_plan_that_is_another_by_then_is_dropped_and_said_so)
{
  Plan *locked;

  level_under_way ();
  locked = (Plan *) piece_dup (&trammel_plan_store_plan (plans ())->piece);
  locked->locked = !locked->locked;
  plan_edit_do (hand_sheet (), locked, "Lock Plan in Place");
  ck_assert (!plan ()->has_level);
  gui_await (strip (), "The plan was changed meanwhile, and that was dropped: do it again.");
}
END_TEST

START_TEST (an_axis_is_looked_for_while_the_hand_is_free_too)
{
  begin ();
  step ("View");
  plan_making_view (hand_sheet (), upright_from, upright_to, false);
  ck_assert (plan_look_is_busy (hand_sheet ()));
  ck_assert_uint_eq (trammel_plan_store_plan (plans ())->view_count, 0);
  ck_assert_uint_eq (plan ()->view_count, 1);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("square up");

  tcase_add_test (tests, a_line_dragged_along_the_print_levels_the_sheet_when_it_is_let_go);
  tcase_add_test (tests, four_corners_square_a_photograph_up_once_it_looks_right);
  tcase_add_test (tests, beside_a_rectangle_a_length_only_checks_and_the_strip_says_so_and_by_how_much_it_differs);
  tcase_add_test (tests, esc_puts_an_offered_rectangle_back);
  tcase_add_test (tests, a_straight_line_is_clicked_and_ended_with_return);
  tcase_add_test (tests, a_level_line_is_looked_for_while_the_hand_is_free_and_then_levels_the_sheet);
  tcase_add_loop_test (tests, undo_or_esc_meanwhile_keep_it_from_coming_and_undo_nothing_else, 0, 2);
  tcase_add_test (tests, what_was_looked_for_on_a_plan_that_is_another_by_then_is_dropped_and_said_so);
  tcase_add_test (tests, an_axis_is_looked_for_while_the_hand_is_free_too);
  return hand_run ("plan square", &tests, 1);
}
