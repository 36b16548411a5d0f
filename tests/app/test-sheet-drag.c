/* Pulling things on the sheet of a real window: what follows the hand, what holds it back, and that Esc puts all of it back. */
#include <math.h>
#include "support/sheet-hand.h"

static const Point battery = { 124, 0 };
static const double toolkit_mm = 1e-4;    /* the toolkit hands px on in single precision */

static SheetOverlay *
overlay (void)
{
  return trammel_sheet_canvas_overlay (hand_sheet ());
}

/* Expects the document as it was. */
static void
expect_text (const char *text)
{
  g_autofree char *now = hand_text ();

  ck_assert_str_eq (now, text);
}

START_TEST (a_battery_slides_along_its_rail_in_one_step_that_undo_names)
{
  g_autofree char *before = hand_text ();

  hand_drag (battery, (Point) { 105, 17 });
  ck_assert_double_eq (hand_part ("battery")->x, 105);
  ck_assert_double_eq (hand_part ("battery")->y, 0);
  hand_undoes ("Move Battery 2S 450", before);
}
END_TEST

/* The sheet is seen at 4 px a millimetre. */
START_TEST (a_pull_of_three_pixels_moves_a_part_and_one_of_two_does_not)
{
  g_autofree char *before = hand_text ();

  hand_drag (battery, (Point) { battery.x - 0.5, 0 });
  expect_text (before);
  hand_drag (battery, (Point) { battery.x - 0.75, 0 });
  ck_assert_double_lt (hand_part ("battery")->x, battery.x);
}
END_TEST

START_TEST (a_battery_stops_at_the_end_of_its_rail_while_the_hand_goes_on)
{
  hand_drag (battery, (Point) { 60, 0 });
  ck_assert_double_eq (hand_part ("battery")->x, 82);
}
END_TEST

START_TEST (ctrl_takes_a_battery_off_its_rail_and_letting_go_puts_it_back_on)
{
  hand_pull (battery, (Point) { 105, 30 });
  gui_key_down ("Control_L");
  ck_assert_double_eq_tol (hand_part ("battery")->y, 30, toolkit_mm);
  gui_key_up ("Control_L");
  ck_assert_double_eq (hand_part ("battery")->y, 0);
  hand_release ();
}
END_TEST

START_TEST (the_plate_says_how_wide_the_body_is_where_a_part_does_not_fit)
{
  hand_pull ((Point) { 163, 0 }, (Point) { 163, 22 });
  ck_assert_ptr_nonnull (hand_plate ("Wide here"));
  ck_assert_double_eq_tol (atof (hand_plate ("Wide here")), 47, 2);
  ck_assert_ptr_null (hand_plate ("Balance"));
  ck_assert_ptr_nonnull (hand_plate ("Static margin"));
  hand_release ();
}
END_TEST

START_TEST (the_plate_says_to_which_side_a_part_is_held)
{
  hand_pull ((Point) { 163, 0 }, (Point) { 163, -12 });
  ck_assert_str_eq (hand_plate ("Off centre"), "12 to port");
  hand_move ((Point) { 163, 8 });
  ck_assert_str_eq (hand_plate ("Off centre"), "8 to starboard");
  hand_release ();
}
END_TEST

START_TEST (the_plate_says_place_balance_and_margin_while_a_battery_is_pulled)
{
  hand_pull (battery, (Point) { 105, 0 });
  ck_assert_str_eq (hand_plate ("Aft of datum"), "105");
  ck_assert_str_eq (hand_plate ("Off centre"), "0");
  ck_assert_ptr_nonnull (hand_plate ("Balance"));
  ck_assert_ptr_nonnull (strchr (hand_plate ("Static margin"), '%'));
  hand_release ();
  ck_assert_ptr_null (hand_plate ("Aft of datum"));
}
END_TEST

START_TEST (esc_in_a_drag_restores_the_document_to_the_last_byte_and_leaves_no_step)
{
  g_autofree char *before = hand_text ();

  hand_pull (battery, (Point) { 100, 0 });
  ck_assert_double_eq (hand_part ("battery")->x, 100);
  gui_key ("Escape");
  expect_text (before);
  hand_move ((Point) { 90, 0 });
  hand_release ();
  expect_text (before);
  ck_assert_ptr_null (trammel_session_undo_label (hand_session ()));
}
END_TEST

START_TEST (an_undo_during_a_drag_ends_the_drag_and_what_was_undone_stays_so)
{
  g_autofree char *before = hand_text ();
  const Aeroplane *now = trammel_session_aeroplane (hand_session ());

  trammel_session_do (hand_session (), aeroplane_without (now, aeroplane_find (now, "receiver")), "Delete Receiver");
  hand_pull (battery, (Point) { 100, 0 });
  trammel_session_undo (hand_session ());
  hand_move ((Point) { 90, 0 });
  hand_release ();
  expect_text (before);
  ck_assert_str_eq (trammel_session_redo_label (hand_session ()), "Delete Receiver");
}
END_TEST

START_TEST (a_node_goes_to_whole_millimetres_and_with_ctrl_wherever_the_hand_is)
{
  hand_look ((Point) { 157, 300 }, 4);
  hand_click ((Point) { 157, 320 });
  hand_drag ((Point) { 157, 320 }, (Point) { 160.25, 311.25 });
  ck_assert_double_eq (hand_node ("wing", 1).x, 160);
  ck_assert_double_eq (hand_node ("wing", 1).y, 311);
  hand_pull ((Point) { 160, 311 }, (Point) { 163.25, 308.5 });
  gui_key_down ("Control_L");
  ck_assert_double_eq_tol (hand_node ("wing", 1).x, 163.25, toolkit_mm);
  ck_assert_double_eq_tol (hand_node ("wing", 1).y, 308.5, toolkit_mm);
  gui_key_up ("Control_L");
  gui_key ("Escape");
  hand_release ();
  ck_assert_double_eq (hand_node ("wing", 1).y, 311);
}
END_TEST

START_TEST (snapping_switched_off_leaves_a_node_where_the_hand_is)
{
  hand_look ((Point) { 157, 300 }, 4);
  hand_click ((Point) { 157, 320 });
  gui_key ("<Control>g");
  hand_drag ((Point) { 157, 320 }, (Point) { 160.25, 311.75 });
  ck_assert_double_eq_tol (hand_node ("wing", 1).x, 160.25, toolkit_mm);
  ck_assert_double_eq_tol (hand_node ("wing", 1).y, 311.75, toolkit_mm);
}
END_TEST

/* The tailplane's tip stands at station 118. */
START_TEST (the_guide_to_another_node_is_shown_before_the_release)
{
  hand_look ((Point) { 157, 118 }, 4);
  trammel_session_select (hand_session (), selection_of ("wing"));
  trammel_settings_set_flag (trammel_session_settings (hand_session ()), SNAPPING, true);
  hand_look ((Point) { 157, 220 }, 2);
  hand_click ((Point) { 157, 320 });
  hand_pull ((Point) { 157, 320 }, (Point) { 165, 119 });
  ck_assert_double_eq (overlay ()->guide_y, 118);
  ck_assert_double_eq (hand_node ("wing", 1).y, 118);
  hand_release ();
  ck_assert (isnan (overlay ()->guide_y));
}
END_TEST

START_TEST (shift_holds_the_direction_a_node_has_gone_furthest_in)
{
  hand_look ((Point) { 157, 300 }, 4);
  hand_click ((Point) { 157, 320 });
  gui_key_down ("Shift_L");
  hand_pull ((Point) { 157, 320 }, (Point) { 160, 300 });
  ck_assert_double_eq (hand_node ("wing", 1).x, 157);
  ck_assert_double_eq (hand_node ("wing", 1).y, 300);
  gui_key_up ("Shift_L");
  ck_assert_double_eq (hand_node ("wing", 1).x, 160);
  hand_release ();
}
END_TEST

START_TEST (a_node_on_the_centre_line_stays_on_it)
{
  hand_look ((Point) { 242, 0 }, 4);
  trammel_session_select (hand_session (), selection_of ("wing"));
  hand_drag ((Point) { 242, 0 }, (Point) { 250, 20 });
  ck_assert_double_eq (hand_node ("wing", 2).x, 250);
  ck_assert_double_eq (hand_node ("wing", 2).y, 0);
}
END_TEST

START_TEST (a_node_of_the_port_half_is_pulled_mirrored)
{
  hand_look ((Point) { 157, -300 }, 4);
  hand_click ((Point) { 157, -320 });
  hand_drag ((Point) { 157, -320 }, (Point) { 150, -330 });
  ck_assert_double_eq (hand_node ("wing", 1).x, 150);
  ck_assert_double_eq (hand_node ("wing", 1).y, 330);
}
END_TEST

START_TEST (no_node_is_pulled_across_the_centre_line)
{
  hand_look ((Point) { 414, 60 }, 4);
  trammel_session_select (hand_session (), selection_of_node ("tail", false, 1));
  hand_drag ((Point) { 414, 118 }, (Point) { 414, -10 });
  ck_assert_double_eq (hand_node ("tail", 1).y, 0);
}
END_TEST

/* The body's second node is smooth: its handles keep one direction. */
START_TEST (pulling_a_handle_turns_the_one_across_a_smooth_node)
{
  const Outline *outline;
  Point before, after, other;

  hand_look ((Point) { 20, 0 }, 8);
  trammel_session_select (hand_session (), selection_of_node ("body", false, 1));
  outline = aeroplane_body_by_id (hand_aeroplane (), "body")->outline;
  ck_assert (outline_handle (outline, 1, HANDLE_AFTER, &before));
  hand_drag (before, (Point) { before.x, before.y + 6 });
  outline = aeroplane_body_by_id (hand_aeroplane (), "body")->outline;
  outline_handle (outline, 1, HANDLE_AFTER, &after);
  outline_handle (outline, 1, HANDLE_BEFORE, &other);
  ck_assert_double_gt (after.y, before.y + 4);
  ck_assert_double_eq_tol (atan2 (after.y - 13.5, after.x - 20), atan2 (13.5 - other.y, 20 - other.x), 1e-9);
  ck_assert_str_eq (trammel_session_undo_label (hand_session ()), "Move Handle");
}
END_TEST

START_TEST (a_wing_is_pulled_fore_and_aft_alone_and_keeps_its_shape)
{
  g_autofree char *before = hand_text ();

  hand_drag ((Point) { 180, 60 }, (Point) { 190, 75 });
  ck_assert_double_eq (hand_node ("wing", 0).x, 122);
  ck_assert_double_eq (hand_node ("wing", 1).x, 167);
  ck_assert_double_eq (hand_node ("wing", 1).y, 320);
  hand_undoes ("Move Wing", before);
}
END_TEST

START_TEST (a_body_takes_its_formers_and_its_side_along)
{
  const Body *body;

  hand_drag ((Point) { 98, 19 }, (Point) { 103, 19 });
  body = aeroplane_body_by_id (hand_aeroplane (), "body");
  ck_assert_double_eq (outline_node (body->outline, 0).x, 5);
  ck_assert_double_eq (outline_node (body->side_outline, 0).x, 5);
  ck_assert_double_eq (body->formers[0].place, 25);
}
END_TEST

START_TEST (parts_selected_together_are_pulled_together)
{
  Selection both = selection_of ("servo-left");

  selection_toggle (&both, "servo-right");
  trammel_session_select (hand_session (), both);
  hand_look ((Point) { 176, 100 }, 4);
  hand_drag ((Point) { 176, 125 }, (Point) { 180, 120 });
  ck_assert_double_eq (hand_part ("servo-right")->x, 180);
  ck_assert_double_eq (hand_part ("servo-right")->y, 120);
  ck_assert_double_eq (hand_part ("servo-left")->x, 180);
  ck_assert_double_eq (hand_part ("servo-left")->y, -130);
}
END_TEST

START_TEST (nodes_selected_together_are_pulled_together)
{
  Selection nodes = selection_of_node ("tail", false, 0);

  selection_toggle_node (&nodes, "tail", false, 2);
  trammel_session_select (hand_session (), nodes);
  hand_look ((Point) { 414, 0 }, 4);
  hand_drag ((Point) { 454, 0 }, (Point) { 460, 0 });
  ck_assert_double_eq (hand_node ("tail", 0).x, 394);
  ck_assert_double_eq (hand_node ("tail", 2).x, 460);
  ck_assert_double_eq (hand_node ("tail", 1).x, 414);
}
END_TEST

START_TEST (an_end_of_a_rail_stops_at_the_part_that_slides_on_it)
{
  SheetScene scene;
  Hit hit;

  trammel_session_select (hand_session (), selection_of ("battery"));
  scene = trammel_sheet_canvas_scene (hand_sheet ());
  /* Where the rail's aft end is drawn beside the part is the drawing's business: it is looked for. */
  for (double y = -60; y < 0; y += 0.5) {
    const Point px = hand_px ((Point) { 134, y });

    hit = sheet_hit (&scene, px.x, px.y, 4);
    if (hit.kind != HIT_RAIL_END)
      continue;
    hand_drag ((Point) { 134, y }, (Point) { 100, y });
    break;
  }
  ck_assert_int_eq (hit.kind, HIT_RAIL_END);
  ck_assert_double_eq (hand_part ("battery")->rail_to, 124);
  ck_assert_double_eq (hand_part ("battery")->rail_from, 82);
  ck_assert_str_eq (trammel_session_undo_label (hand_session ()), "Move Rail End");
}
END_TEST

/* Typing in the middle of a drag. */

START_TEST (digits_typed_in_a_drag_set_the_place_exactly_snapping_or_not)
{
  g_autofree char *before = hand_text ();

  hand_pull (battery, (Point) { 105, 0 });
  gui_type ("101.37");
  hand_move ((Point) { 90, 40 });
  gui_key ("Return");
  hand_release ();
  ck_assert_double_eq (hand_part ("battery")->x, 101.37);
  hand_undoes ("Move Battery 2S 450", before);
}
END_TEST

START_TEST (tab_in_the_plate_goes_to_the_next_row)
{
  hand_look ((Point) { 176, 100 }, 4);
  hand_pull ((Point) { 176, 125 }, (Point) { 180, 120 });
  gui_type ("171.5\t");
  gui_type ("118.25\n");
  hand_release ();
  ck_assert_double_eq (hand_part ("servo-right")->x, 171.5);
  ck_assert_double_eq (hand_part ("servo-right")->y, 118.25);
}
END_TEST

START_TEST (a_number_that_could_be_two_is_asked_about_and_stays_in_its_field)
{
  hand_pull (battery, (Point) { 105, 0 });
  gui_type ("1,000\n");
  gui_await (GTK_WIDGET (hand_window ()), "1,000: is that one or a thousand? Write 1 or 1000.");
  ck_assert_double_eq (hand_part ("battery")->x, 105);
  gui_key ("<Control>a");
  gui_type ("99\n");
  hand_release ();
  ck_assert_double_eq (hand_part ("battery")->x, 99);
}
END_TEST

START_TEST (what_is_further_than_any_aeroplane_is_refused_with_a_sentence)
{
  hand_pull (battery, (Point) { 105, 0 });
  gui_type ("20500\n");
  gui_await (GTK_WIDGET (hand_window ()), "That is further than 20 m away.");
  ck_assert_double_eq (hand_part ("battery")->x, 105);
  gui_key ("Escape");
  gui_key ("Escape");
  hand_release ();
}
END_TEST

START_TEST (esc_in_the_plate_leaves_the_field_and_a_second_one_puts_all_back)
{
  g_autofree char *before = hand_text ();

  hand_pull (battery, (Point) { 105, 0 });
  gui_type ("90");
  gui_key ("Escape");
  ck_assert_double_eq (hand_part ("battery")->x, 105);
  gui_key ("Escape");
  expect_text (before);
  hand_release ();
  expect_text (before);
}
END_TEST

START_TEST (what_was_typed_counts_when_the_hand_clicks_elsewhere)
{
  hand_pull (battery, (Point) { 105, 0 });
  gui_type ("97.25");
  hand_release ();
  hand_click ((Point) { 60, 95 });
  ck_assert_double_eq (hand_part ("battery")->x, 97.25);
  ck_assert_ptr_null (hand_plate ("Aft of datum"));
}
END_TEST

static TCase *
case_pulling (void)
{
  TCase *pulling = tcase_create ("pulling");

  tcase_add_test (pulling, the_plate_says_to_which_side_a_part_is_held);
  tcase_add_test (pulling, a_pull_of_three_pixels_moves_a_part_and_one_of_two_does_not);
  tcase_add_test (pulling, a_battery_slides_along_its_rail_in_one_step_that_undo_names);
  tcase_add_test (pulling, a_battery_stops_at_the_end_of_its_rail_while_the_hand_goes_on);
  tcase_add_test (pulling, ctrl_takes_a_battery_off_its_rail_and_letting_go_puts_it_back_on);
  tcase_add_test (pulling, the_plate_says_how_wide_the_body_is_where_a_part_does_not_fit);
  tcase_add_test (pulling, the_plate_says_place_balance_and_margin_while_a_battery_is_pulled);
  tcase_add_test (pulling, esc_in_a_drag_restores_the_document_to_the_last_byte_and_leaves_no_step);
  tcase_add_test (pulling, an_undo_during_a_drag_ends_the_drag_and_what_was_undone_stays_so);
  tcase_add_test (pulling, a_node_goes_to_whole_millimetres_and_with_ctrl_wherever_the_hand_is);
  tcase_add_test (pulling, snapping_switched_off_leaves_a_node_where_the_hand_is);
  tcase_add_test (pulling, the_guide_to_another_node_is_shown_before_the_release);
  tcase_add_test (pulling, shift_holds_the_direction_a_node_has_gone_furthest_in);
  tcase_add_test (pulling, a_node_on_the_centre_line_stays_on_it);
  tcase_add_test (pulling, a_node_of_the_port_half_is_pulled_mirrored);
  tcase_add_test (pulling, no_node_is_pulled_across_the_centre_line);
  tcase_add_test (pulling, pulling_a_handle_turns_the_one_across_a_smooth_node);
  tcase_add_test (pulling, a_wing_is_pulled_fore_and_aft_alone_and_keeps_its_shape);
  tcase_add_test (pulling, a_body_takes_its_formers_and_its_side_along);
  tcase_add_test (pulling, parts_selected_together_are_pulled_together);
  tcase_add_test (pulling, nodes_selected_together_are_pulled_together);
  tcase_add_test (pulling, an_end_of_a_rail_stops_at_the_part_that_slides_on_it);
  return pulling;
}

static TCase *
case_typing (void)
{
  TCase *typing = tcase_create ("typing in a drag");

  tcase_add_test (typing, digits_typed_in_a_drag_set_the_place_exactly_snapping_or_not);
  tcase_add_test (typing, tab_in_the_plate_goes_to_the_next_row);
  tcase_add_test (typing, a_number_that_could_be_two_is_asked_about_and_stays_in_its_field);
  tcase_add_test (typing, what_is_further_than_any_aeroplane_is_refused_with_a_sentence);
  tcase_add_test (typing, esc_in_the_plate_leaves_the_field_and_a_second_one_puts_all_back);
  tcase_add_test (typing, what_was_typed_counts_when_the_hand_clicks_elsewhere);
  return typing;
}

int
main (void)
{
  TCase *cases[] = { case_pulling (), case_typing () };

  return hand_run ("sheet drag", cases, G_N_ELEMENTS (cases));
}
