/* What is seen of the print while a line is followed on it. */
#include "support/trace-hand.h"

static bool
is_bare (void)
{
  const SheetScene scene = trammel_sheet_canvas_scene (hand_sheet ());

  return scene.print != NULL && scene.print->bare;
}

START_TEST (while_a_line_is_followed_outlines_let_the_print_through_and_with_v_held_it_is_seen_alone)
{
  begin ();
  ck_assert_str_eq (trammel_sheet_canvas_scene (hand_sheet ()).print->view, "view");
  hand_click (clicks[0]);
  gui_key_down ("v");
  ck_assert (is_bare ());
  gui_key_up ("v");
  ck_assert (!is_bare ());
  ck_assert_uint_eq (shown ()->click_count, 1);
  gui_key ("Escape");
  gui_key ("Escape");
  ck_assert_ptr_null (trammel_sheet_canvas_scene (hand_sheet ()).print);
  gui_key_down ("v");
  ck_assert (is_bare ());
  gui_key_up ("v");
}
END_TEST

START_TEST (what_is_under_the_pointer_is_enlarged_while_a_line_is_followed_and_e_hides_it)
{
  const SheetOverlay *overlay = trammel_sheet_canvas_overlay (hand_sheet ());

  begin ();
  hand_move ((Point) { 80, 20 });
  ck_assert (!overlay->has_magnified);
  hand_click (clicks[0]);
  hand_move ((Point) { 103.1, 40 });
  ck_assert (overlay->has_magnified);
  ck_assert_double_lt (point_distance (overlay->magnified, (Point) { 103.1, 40 }), 0.3);
  gui_key ("e");
  ck_assert (!overlay->has_magnified);
  hand_move ((Point) { 104, 50 });
  ck_assert (!overlay->has_magnified);
  gui_key ("e");
  ck_assert (overlay->has_magnified);
  ck_assert_uint_eq (shown ()->click_count, 1);
  hand_move ((Point) { 80, 20 });
  ck_assert (!overlay->has_magnified);
}
END_TEST

int
main (void)
{
  TCase *tcase = tcase_create ("print");

  tcase_add_test (tcase, while_a_line_is_followed_outlines_let_the_print_through_and_with_v_held_it_is_seen_alone);
  tcase_add_test (tcase, what_is_under_the_pointer_is_enlarged_while_a_line_is_followed_and_e_hides_it);
  return hand_run ("app trace-print", &tcase, 1);
}
