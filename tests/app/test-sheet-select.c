/* Selecting on the sheet of a real window, and what keys and the context menu do to what is selected. */
#include <math.h>
#include "support/sheet-hand.h"

static const Selection *
selection (void)
{
  return trammel_session_selection (hand_session ());
}

/* A row of the open context menu, by what it says. */
static void
choose (const char *row)
{
  gui_click (gui_await (GTK_WIDGET (hand_sheet ()), row));
  gui_settle ();
}

static const Outline *
wing (void)
{
  return hand_surface ("wing")->outline;
}

START_TEST (a_click_selects_what_lies_on_top_and_a_click_on_bare_paper_nothing)
{
  hand_click ((Point) { 124, 0 });
  ck_assert_str_eq (hand_selected (), "battery");
  hand_click ((Point) { 180, 60 });
  ck_assert_str_eq (hand_selected (), "wing");
  hand_click ((Point) { 60, 100 });
  ck_assert (selection_is_empty (selection ()));
}
END_TEST

START_TEST (another_click_at_the_same_place_reaches_what_lies_beneath)
{
  hand_click ((Point) { 124, 0 });
  ck_assert_str_eq (hand_selected (), "battery");
  hand_click ((Point) { 124, 0 });
  ck_assert_str_eq (hand_selected (), "body");
  hand_click ((Point) { 124, 0 });
  ck_assert_str_eq (hand_selected (), "wing");
  hand_click ((Point) { 124, 0 });
  ck_assert_str_eq (hand_selected (), "battery");
}
END_TEST

START_TEST (what_was_reached_beneath_is_what_a_drag_there_moves)
{
  const double x = hand_node ("wing", 0).x, battery = hand_part ("battery")->x;

  for (int i = 0; i < 3; i++)
    hand_click ((Point) { 124, 0 });
  hand_drag ((Point) { 124, 0 }, (Point) { 130, 0 });
  ck_assert_double_eq (hand_part ("battery")->x, battery);
  ck_assert_double_eq_tol (hand_node ("wing", 0).x, x + 6, 1e-9);
}
END_TEST

START_TEST (a_click_elsewhere_begins_at_the_top_again)
{
  hand_click ((Point) { 124, 0 });
  hand_click ((Point) { 124, 0 });
  hand_click ((Point) { 62, 0 });
  ck_assert_str_eq (hand_selected (), "controller");
  hand_click ((Point) { 124, 0 });
  ck_assert_str_eq (hand_selected (), "battery");
}
END_TEST

START_TEST (a_click_on_the_selected_wing_s_node_selects_the_node)
{
  hand_look ((Point) { 157, 250 }, 4);
  hand_click ((Point) { 175, 240 });
  hand_click ((Point) { 157, 320 });
  ck_assert (selection_has_node (selection (), "wing", false, 1));
}
END_TEST

START_TEST (shift_adds_to_what_is_selected_and_takes_away_again)
{
  hand_click ((Point) { 124, 0 });
  gui_key_down ("Shift_L");
  hand_click ((Point) { 62, 0 });
  ck_assert (selection_has (selection (), "battery") && selection_has (selection (), "controller"));
  hand_click ((Point) { 124, 0 });
  gui_key_up ("Shift_L");
  ck_assert_str_eq (hand_selected (), "controller");
}
END_TEST

START_TEST (a_click_on_one_of_several_selected_selects_it_alone)
{
  Selection both = selection_of ("battery");

  selection_toggle (&both, "controller");
  trammel_session_select (hand_session (), both);
  hand_click ((Point) { 62, 0 });
  ck_assert_str_eq (hand_selected (), "controller");
}
END_TEST

START_TEST (a_drag_over_bare_paper_selects_the_parts_whose_middles_it_holds)
{
  hand_look ((Point) { 80, 0 }, 4);
  hand_drag ((Point) { 50, 60 }, (Point) { 72, -60 });
  ck_assert_str_eq (hand_selected (), "controller");
  hand_drag ((Point) { 22, 60 }, (Point) { 72, -60 });
  ck_assert (selection_has (selection (), "motor") && selection_has (selection (), "controller"));
  ck_assert (!selection_has (selection (), "battery"));
}
END_TEST

START_TEST (a_drag_over_bare_paper_takes_nodes_of_the_selected_outline_first)
{
  trammel_session_select (hand_session (), selection_of ("tail"));
  hand_look ((Point) { 414, 0 }, 3);
  hand_drag ((Point) { 375, 140 }, (Point) { 430, -30 });
  ck_assert (selection_has_node (selection (), "tail", false, 0) && selection_has_node (selection (), "tail", false, 1));
  ck_assert (!selection_has_node (selection (), "tail", false, 2));
}
END_TEST

START_TEST (esc_lets_go_of_a_rubber_band_and_then_of_the_selection)
{
  trammel_session_select (hand_session (), selection_of ("wing"));
  hand_pull ((Point) { 60, 80 }, (Point) { 80, 95 });
  gui_key ("Escape");
  hand_release ();
  ck_assert_str_eq (hand_selected (), "wing");
  gui_key ("Escape");
  ck_assert (selection_is_empty (selection ()));
}
END_TEST

/* Nodes */

START_TEST (insert_puts_a_node_where_the_line_was_clicked_and_the_shape_stays)
{
  const Point there = { 112 + 45 * (1 - sqrt (1 - 160.0 * 160 / (320 * 320))), 160 };      /* on the wing's front ellipse */
  Box before, after;

  trammel_session_select (hand_session (), selection_of ("wing"));
  hand_look (there, 4);
  before = outline_bounds (wing ());
  hand_click (there);
  gui_key ("Insert");
  ck_assert_uint_eq (outline_node_count (wing ()), 4);
  ck_assert_double_eq_tol (outline_node (wing (), 1).y, 160, 0.5);       /* half a px, and what a px is along a slanting line */
  ck_assert (selection_has_node (selection (), "wing", false, 1));
  after = outline_bounds (wing ());
  ck_assert_double_eq_tol (after.max.y, before.max.y, 1e-9);
  ck_assert_double_eq_tol (after.min.x, before.min.x, 1e-9);
  ck_assert_str_eq (trammel_session_undo_label (hand_session ()), "Add Node");
}
END_TEST

START_TEST (insert_without_a_clicked_line_puts_a_node_behind_the_selected_one)
{
  trammel_session_select (hand_session (), selection_of_node ("wing", false, 0));
  gui_key ("Insert");
  ck_assert_uint_eq (outline_node_count (wing ()), 4);
  ck_assert (selection_has_node (selection (), "wing", false, 1));
}
END_TEST

START_TEST (delete_takes_the_selected_nodes_out)
{
  g_autofree char *before = NULL;

  trammel_session_select (hand_session (), selection_of_node ("wing", false, 0));
  gui_key ("Insert");
  before = hand_text ();
  gui_key ("Delete");
  ck_assert_uint_eq (outline_node_count (wing ()), 3);
  hand_undoes ("Delete Node", before);
}
END_TEST

START_TEST (an_outline_keeps_its_last_two_nodes)
{
  Selection all = selection_of_node ("wing", false, 0);

  selection_toggle_node (&all, "wing", false, 1);
  trammel_session_select (hand_session (), all);
  gui_key ("Delete");
  ck_assert_uint_eq (outline_node_count (wing ()), 3);
}
END_TEST

START_TEST (shift_with_s_c_and_y_makes_nodes_smooth_corner_and_symmetric)
{
  trammel_session_select (hand_session (), selection_of_node ("tail", false, 1));
  gui_key ("<Shift>c");
  ck_assert_int_eq (outline_node_kind (hand_surface ("tail")->outline, 1), NODE_CORNER);
  gui_key ("<Shift>s");
  ck_assert_int_eq (outline_node_kind (hand_surface ("tail")->outline, 1), NODE_SMOOTH);
  gui_key ("<Shift>y");
  ck_assert_int_eq (outline_node_kind (hand_surface ("tail")->outline, 1), NODE_SYMMETRIC);
  ck_assert_str_eq (trammel_session_undo_label (hand_session ()), "Make Symmetric");
}
END_TEST

/* The context menu */

START_TEST (the_second_button_on_a_line_offers_its_kinds)
{
  const Point there = { 112 + 45 * (1 - sqrt (1 - 160.0 * 160 / (320 * 320))), 160 };

  hand_look (there, 4);
  hand_context_click (there);
  choose ("Line");
  ck_assert_int_eq (outline_segment (wing (), 0)->kind, SEGMENT_LINE);
  hand_context_click (point_mix (hand_node ("wing", 0), hand_node ("wing", 1), 0.5));
  choose ("Curve");
  ck_assert_int_eq (outline_segment (wing (), 0)->kind, SEGMENT_CURVE);
  hand_context_click (segment_at (hand_node ("wing", 0), outline_segment (wing (), 0), 0.5));
  choose ("Arc");
  ck_assert_int_eq (outline_segment (wing (), 0)->kind, SEGMENT_ARC);
  hand_context_click (segment_at (hand_node ("wing", 0), outline_segment (wing (), 0), 0.5));
  choose ("Add Node");
  ck_assert_uint_eq (outline_node_count (wing ()), 4);
}
END_TEST

START_TEST (the_second_button_on_a_node_cuts_joins_and_deletes_it)
{
  trammel_session_select (hand_session (), selection_of ("wing"));
  hand_look ((Point) { 157, 300 }, 4);
  hand_context_click ((Point) { 157, 320 });
  choose ("Cut Corner");
  ck_assert_uint_eq (outline_node_count (wing ()), 4);
  hand_context_click (hand_node ("wing", 1));
  choose ("Join with Next");
  ck_assert_uint_eq (outline_node_count (wing ()), 3);
  hand_context_click (hand_node ("wing", 1));
  choose ("Corner");
  ck_assert_int_eq (outline_node_kind (wing (), 1), NODE_CORNER);
  hand_context_click (hand_node ("wing", 1));
  choose ("Delete Node");
  ck_assert_uint_eq (outline_node_count (wing ()), 2);
}
END_TEST

START_TEST (the_second_button_on_a_part_leaves_it_out_and_takes_its_rail)
{
  hand_context_click ((Point) { 124, 0 });
  choose ("Aboard");
  ck_assert (!hand_part ("battery")->aboard);
  ck_assert_str_eq (trammel_session_undo_label (hand_session ()), "Leave Out");
  hand_context_click ((Point) { 124, 0 });
  choose ("Remove Rail");
  ck_assert (!hand_part ("battery")->has_rail);
  hand_context_click ((Point) { 124, 0 });
  choose ("Add Rail");
  ck_assert (hand_part ("battery")->has_rail);
  ck_assert_double_eq (hand_part ("battery")->rail_from, 94);
  hand_context_click ((Point) { 124, 0 });
  choose ("Delete");
  ck_assert_ptr_null (aeroplane_part_by_id (hand_aeroplane (), "battery"));
}
END_TEST

START_TEST (the_menu_key_opens_the_menu_of_what_is_selected)
{
  trammel_session_select (hand_session (), selection_of ("battery"));
  gui_key ("Menu");
  choose ("Remove Rail");
  ck_assert (!hand_part ("battery")->has_rail);
  gui_key ("<Shift>F10");
  choose ("Add Rail");
  ck_assert (hand_part ("battery")->has_rail);
}
END_TEST

START_TEST (a_long_press_of_a_finger_opens_the_menu_there)
{
  g_autoptr (GListModel) controllers = gtk_widget_observe_controllers (GTK_WIDGET (hand_sheet ()));
  const Point px = hand_px ((Point) { 124, 0 });

  /* Without a touch screen the gesture itself is asked to say that it was pressed. */
  for (guint i = 0; i < g_list_model_get_n_items (controllers); i++) {
    g_autoptr (GtkEventController) controller = g_list_model_get_item (controllers, i);

    if (GTK_IS_GESTURE_LONG_PRESS (controller))
      g_signal_emit_by_name (controller, "pressed", px.x, px.y);
  }
  choose ("Remove Rail");
  ck_assert (!hand_part ("battery")->has_rail);
}
END_TEST

static TCase *
case_selecting (void)
{
  TCase *selecting = tcase_create ("selecting");

  tcase_add_test (selecting, a_click_selects_what_lies_on_top_and_a_click_on_bare_paper_nothing);
  tcase_add_test (selecting, another_click_at_the_same_place_reaches_what_lies_beneath);
  tcase_add_test (selecting, what_was_reached_beneath_is_what_a_drag_there_moves);
  tcase_add_test (selecting, a_click_elsewhere_begins_at_the_top_again);
  tcase_add_test (selecting, a_click_on_the_selected_wing_s_node_selects_the_node);
  tcase_add_test (selecting, shift_adds_to_what_is_selected_and_takes_away_again);
  tcase_add_test (selecting, a_click_on_one_of_several_selected_selects_it_alone);
  tcase_add_test (selecting, a_drag_over_bare_paper_selects_the_parts_whose_middles_it_holds);
  tcase_add_test (selecting, a_drag_over_bare_paper_takes_nodes_of_the_selected_outline_first);
  tcase_add_test (selecting, esc_lets_go_of_a_rubber_band_and_then_of_the_selection);
  return selecting;
}

static TCase *
case_nodes (void)
{
  TCase *nodes = tcase_create ("nodes");

  tcase_add_test (nodes, insert_puts_a_node_where_the_line_was_clicked_and_the_shape_stays);
  tcase_add_test (nodes, insert_without_a_clicked_line_puts_a_node_behind_the_selected_one);
  tcase_add_test (nodes, delete_takes_the_selected_nodes_out);
  tcase_add_test (nodes, an_outline_keeps_its_last_two_nodes);
  tcase_add_test (nodes, shift_with_s_c_and_y_makes_nodes_smooth_corner_and_symmetric);
  return nodes;
}

static TCase *
case_menu (void)
{
  TCase *menu = tcase_create ("context menu");

  tcase_add_test (menu, the_second_button_on_a_line_offers_its_kinds);
  tcase_add_test (menu, the_second_button_on_a_node_cuts_joins_and_deletes_it);
  tcase_add_test (menu, the_second_button_on_a_part_leaves_it_out_and_takes_its_rail);
  tcase_add_test (menu, the_menu_key_opens_the_menu_of_what_is_selected);
  tcase_add_test (menu, a_long_press_of_a_finger_opens_the_menu_there);
  return menu;
}

int
main (void)
{
  TCase *cases[] = { case_selecting (), case_nodes (), case_menu () };

  return hand_run ("sheet select", cases, G_N_ELEMENTS (cases));
}
