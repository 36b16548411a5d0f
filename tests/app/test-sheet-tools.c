/* Drawing tools under a real hand: an outline point by point, parts, rails, the balance mark, measuring. */
#include <math.h>
#include "app/tool.h"
#include "support/sheet-hand.h"

static void
take (const char *tool)
{
  trammel_sheet_canvas_set_tool (hand_sheet (), tool);
  gui_settle ();
}

static SheetOverlay *
overlay (void)
{
  return trammel_sheet_canvas_overlay (hand_sheet ());
}

static const Surface *
only_surface (void)
{
  ck_assert_uint_eq (aeroplane_count (hand_aeroplane (), PIECE_SURFACE), 1);
  return aeroplane_surface (hand_aeroplane (), 0);
}

static void
expect_node (const Outline *outline, size_t node, Point place)
{
  ck_assert_uint_lt (node, outline_node_count (outline));
  ck_assert_double_eq (outline_node (outline, node).x, place.x);
  ck_assert_double_eq (outline_node (outline, node).y, place.y);
}

/* Outline */

START_TEST (a_wing_is_drawn_point_by_point_and_closes_on_the_centre_line)
{
  static const Point corners[] = { { 100, 0 }, { 115, 80 }, { 150, 90 }, { 180, 0 } };

  hand_begin_empty ();
  take ("outline");
  for (size_t i = 0; i < G_N_ELEMENTS (corners); i++)
    hand_click (corners[i]);
  ck_assert_int_eq (only_surface ()->role, ROLE_WING);
  for (size_t i = 0; i < G_N_ELEMENTS (corners); i++)
    expect_node (only_surface ()->outline, i, corners[i]);
  ck_assert_int_eq (outline_check (only_surface ()->outline, NULL), CORE_OK);
  ck_assert_ptr_null (overlay ()->draft);
  ck_assert_str_eq (trammel_sheet_canvas_tool (hand_sheet ())->kind->word, "outline");
}
END_TEST

START_TEST (each_click_is_a_step_of_its_own_and_undo_walks_back)
{
  hand_begin_empty ();
  take ("outline");
  hand_click ((Point) { 100, 0 });
  hand_click ((Point) { 115, 80 });
  hand_click ((Point) { 150, 90 });
  ck_assert_str_eq (trammel_session_undo_label (hand_session ()), "Add Node");
  trammel_session_undo (hand_session ());
  ck_assert_uint_eq (outline_node_count (only_surface ()->outline), 2);
  trammel_session_undo (hand_session ());
  ck_assert_uint_eq (aeroplane_count (hand_aeroplane (), PIECE_SURFACE), 0);
  /* The first node is still in the hand. */
  hand_click ((Point) { 120, 70 });
  expect_node (only_surface ()->outline, 0, (Point) { 100, 0 });
  expect_node (only_surface ()->outline, 1, (Point) { 120, 70 });
}
END_TEST

START_TEST (a_press_and_drag_pulls_handles_out_for_a_curve_on_both_sides)
{
  const Outline *outline;
  Point handle;

  hand_begin_empty ();
  take ("outline");
  hand_click ((Point) { 100, 0 });
  hand_drag ((Point) { 140, 90 }, (Point) { 160, 90 });
  outline = only_surface ()->outline;
  ck_assert_int_eq (outline_segment (outline, 0)->kind, SEGMENT_CURVE);
  ck_assert (outline_handle (outline, 1, HANDLE_BEFORE, &handle));
  ck_assert_double_eq_tol (handle.x, 120, 1e-4);         /* mirrored about the node; the toolkit's single precision */
  ck_assert_double_eq_tol (handle.y, 90, 1e-4);
  hand_click ((Point) { 180, 0 });
  outline = only_surface ()->outline;
  ck_assert_int_eq (outline_segment (outline, 1)->kind, SEGMENT_CURVE);
  ck_assert (outline_handle (outline, 1, HANDLE_AFTER, &handle));
  ck_assert_double_eq_tol (handle.x, 160, 1e-4);
  ck_assert_int_eq (outline_node_kind (outline, 1), NODE_SMOOTH);
}
END_TEST

START_TEST (points_on_the_port_half_are_mirrored)
{
  hand_begin_empty ();
  take ("outline");
  hand_click ((Point) { 100, 0 });
  hand_click ((Point) { 115, -80 });
  expect_node (only_surface ()->outline, 1, (Point) { 115, 80 });
}
END_TEST

START_TEST (backspace_takes_nodes_back_to_the_first_and_then_that)
{
  hand_begin_empty ();
  take ("outline");
  hand_click ((Point) { 100, 0 });
  hand_click ((Point) { 115, 80 });
  hand_click ((Point) { 150, 90 });
  gui_key ("BackSpace");
  ck_assert_uint_eq (outline_node_count (only_surface ()->outline), 2);
  gui_key ("BackSpace");
  ck_assert_uint_eq (aeroplane_count (hand_aeroplane (), PIECE_SURFACE), 0);
  gui_key ("BackSpace");
  hand_click ((Point) { 105, 0 });
  hand_click ((Point) { 120, 60 });
  expect_node (only_surface ()->outline, 0, (Point) { 105, 0 });
}
END_TEST

START_TEST (esc_leaves_an_open_outline_and_a_click_goes_on_with_it)
{
  hand_begin_empty ();
  take ("outline");
  hand_click ((Point) { 100, 0 });
  hand_click ((Point) { 115, 80 });
  gui_key ("Escape");
  ck_assert_uint_eq (outline_node_count (only_surface ()->outline), 2);
  ck_assert_str_eq (trammel_sheet_canvas_tool (hand_sheet ())->kind->word, "outline");
  hand_click ((Point) { 150, 90 });
  ck_assert_uint_eq (outline_node_count (only_surface ()->outline), 3);
}
END_TEST

START_TEST (shift_goes_straight_along_or_across_from_the_last_node)
{
  hand_begin_empty ();
  take ("outline");
  hand_click ((Point) { 100, 0 });
  gui_key_down ("Shift_L");
  hand_click ((Point) { 110, 80 });
  hand_click ((Point) { 150, 84 });
  gui_key_up ("Shift_L");
  expect_node (only_surface ()->outline, 1, (Point) { 100, 80 });
  expect_node (only_surface ()->outline, 2, (Point) { 150, 80 });
}
END_TEST

START_TEST (numbers_typed_place_points_exactly)
{
  hand_begin_empty ();
  take ("outline");
  gui_type ("0\t");
  gui_type ("100.125\n");
  gui_type ("81.5\t");
  gui_type ("112\n");
  gui_type ("0\t");
  gui_type ("170\n");
  expect_node (only_surface ()->outline, 0, (Point) { 100.125, 0 });
  expect_node (only_surface ()->outline, 1, (Point) { 112, 81.5 });
  expect_node (only_surface ()->outline, 2, (Point) { 170, 0 });
  ck_assert_int_eq (outline_check (only_surface ()->outline, NULL), CORE_OK);
}
END_TEST

START_TEST (an_outline_is_drawn_by_arrow_keys_and_return)
{
  hand_begin_empty ();
  hand_move ((Point) { 100, 0 });
  take ("outline");
  gui_key ("Down");
  gui_key ("Return");
  for (int i = 0; i < 5; i++)
    gui_key ("<Shift>Right");
  gui_key ("Return");
  for (int i = 0; i < 3; i++)
    gui_key ("<Shift>Down");
  gui_key ("Return");
  for (int i = 0; i < 5; i++)
    gui_key ("<Shift>Left");
  gui_key ("Return");
  expect_node (only_surface ()->outline, 0, (Point) { 101, 0 });
  expect_node (only_surface ()->outline, 1, (Point) { 101, 50 });
  expect_node (only_surface ()->outline, 2, (Point) { 131, 50 });
  expect_node (only_surface ()->outline, 3, (Point) { 131, 0 });
  ck_assert_int_eq (outline_check (only_surface ()->outline, NULL), CORE_OK);
}
END_TEST

START_TEST (the_second_outline_is_a_tailplane)
{
  static const Point corners[] = { { 60, 0 }, { 60, 60 }, { 80, 60 }, { 80, 0 }, { 160, 0 }, { 160, 50 }, { 190, 50 }, { 190, 0 } };

  hand_begin_empty ();
  take ("outline");
  for (size_t i = 0; i < G_N_ELEMENTS (corners); i++)
    hand_click (corners[i]);
  ck_assert_uint_eq (aeroplane_count (hand_aeroplane (), PIECE_SURFACE), 2);
  ck_assert_int_eq (aeroplane_surface (hand_aeroplane (), 0)->role, ROLE_WING);
  ck_assert_int_eq (aeroplane_surface (hand_aeroplane (), 1)->role, ROLE_TAILPLANE);
}
END_TEST

/* Part */

START_TEST (the_part_tool_puts_the_class_chosen_where_it_is_clicked)
{
  g_autofree char *before = hand_text ();
  const Part *part;

  trammel_sheet_canvas_set_part_class (hand_sheet (), "ballast");
  take ("part");
  hand_move ((Point) { 90, 30 });
  ck_assert_ptr_nonnull (overlay ()->part_ghost);
  ck_assert_str_eq (overlay ()->part_ghost->class_name, "ballast");
  hand_click ((Point) { 90, 30 });
  part = hand_part (hand_selected ());
  ck_assert_str_eq (part->class_name, "ballast");
  ck_assert_double_eq (part->x, 90);
  ck_assert_double_eq (part->y, 30);
  ck_assert_double_gt (part->mass, 0);
  hand_undoes ("Add Ballast", before);
}
END_TEST

START_TEST (a_part_put_near_the_centre_line_or_with_shift_stands_on_it)
{
  trammel_sheet_canvas_set_part_class (hand_sheet (), "ballast");
  take ("part");
  hand_click ((Point) { 205, 1.25 });
  ck_assert_double_eq (hand_part (hand_selected ())->y, 0);
  gui_key_down ("Shift_L");
  hand_click ((Point) { 55, 40 });
  gui_key_up ("Shift_L");
  ck_assert_double_eq (hand_part (hand_selected ())->x, 55);
  ck_assert_double_eq (hand_part (hand_selected ())->y, 0);
}
END_TEST

START_TEST (a_part_is_put_and_pulled_in_one_step_and_esc_takes_it_away_again)
{
  g_autofree char *before = hand_text (), *after = NULL;

  trammel_sheet_canvas_set_part_class (hand_sheet (), "ballast");
  take ("part");
  hand_drag ((Point) { 90, 40 }, (Point) { 99, 52 });
  ck_assert_double_eq (hand_part (hand_selected ())->x, 99);
  ck_assert_double_eq (hand_part (hand_selected ())->y, 52);
  hand_undoes ("Add Ballast", before);
  hand_pull ((Point) { 90, 40 }, (Point) { 99, 52 });
  gui_key ("Escape");
  hand_release ();
  after = hand_text ();
  ck_assert_str_eq (after, before);
}
END_TEST

START_TEST (without_a_choice_the_part_tool_offers_what_is_still_missing)
{
  g_autoptr (Aeroplane) nothing = aeroplane_new ();
  Aeroplane *wing = aeroplane_with_added (nothing, &surface_new ("wing", ROLE_WING, outline_ref (hand_surface ("wing")->outline))->piece);

  trammel_session_open (hand_session (), wing, NULL);
  hand_look ((Point) { 120, 0 }, 4);
  take ("part");
  hand_click ((Point) { 60, 0 });
  ck_assert_str_eq (hand_part (hand_selected ())->class_name, "battery");
  hand_click ((Point) { 190, 0 });
  ck_assert_str_eq (hand_part (hand_selected ())->class_name, "motor");
}
END_TEST

/* Rail */

START_TEST (a_drag_along_a_part_lays_its_rail)
{
  g_autofree char *before = hand_text ();

  take ("rail");
  hand_drag ((Point) { 62, 0 }, (Point) { 90, 0 });
  ck_assert (hand_part ("controller")->has_rail);
  ck_assert_double_eq (hand_part ("controller")->rail_from, 62);
  ck_assert_double_eq (hand_part ("controller")->rail_to, 90);
  hand_undoes ("Lay Rail", before);
}
END_TEST

START_TEST (a_click_gives_a_part_a_rail_and_leaves_one_it_has)
{
  take ("rail");
  hand_click ((Point) { 62, 0 });
  ck_assert_double_eq (hand_part ("controller")->rail_from, 32);
  ck_assert_double_eq (hand_part ("controller")->rail_to, 92);
  hand_click ((Point) { 124, 0 });
  ck_assert_double_eq (hand_part ("battery")->rail_from, 82);
}
END_TEST

START_TEST (esc_puts_a_rail_being_laid_back)
{
  take ("rail");
  hand_pull ((Point) { 62, 0 }, (Point) { 90, 0 });
  ck_assert (hand_part ("controller")->has_rail);
  gui_key ("Escape");
  hand_release ();
  ck_assert (!hand_part ("controller")->has_rail);
}
END_TEST

/* Balance mark */

START_TEST (the_mark_tool_sets_the_station_by_click_drag_or_number_on_either_half)
{
  g_autofree char *before = hand_text ();

  take ("balance-mark");
  hand_click ((Point) { 150, 57 });
  ck_assert_double_eq (aeroplane_mark (hand_aeroplane (), 0)->station, 57);
  hand_undoes ("Move Balance Mark", before);
  hand_drag ((Point) { 190, -60 }, (Point) { 190, -83 });
  ck_assert_double_eq (aeroplane_mark (hand_aeroplane (), 0)->station, 83);
  gui_type ("44.75\n");
  ck_assert_double_eq (aeroplane_mark (hand_aeroplane (), 0)->station, 44.75);
}
END_TEST

START_TEST (the_mark_tool_makes_the_first_mark)
{
  Aeroplane *bare = aeroplane_without (hand_aeroplane (), &aeroplane_mark (hand_aeroplane (), 0)->piece);

  trammel_session_do (hand_session (), bare, "Bare");
  take ("balance-mark");
  hand_click ((Point) { 150, 57 });
  ck_assert_uint_eq (aeroplane_count (hand_aeroplane (), PIECE_MARK), 1);
  ck_assert_str_eq (trammel_session_undo_label (hand_session ()), "Add Balance Mark");
}
END_TEST

/* Measuring */

START_TEST (two_clicks_measure_and_shift_measures_straight_across)
{
  take ("dimension");
  hand_click ((Point) { 112, 0 });
  hand_move ((Point) { 142, 40 });
  ck_assert (overlay ()->has_dimension);
  ck_assert_str_eq (trammel_sheet_canvas_hint (hand_sheet ()), "Distance 50\u00a0mm, 30\u00a0mm along and 40\u00a0mm across.");
  gui_key_down ("Shift_L");
  ck_assert_double_eq (overlay ()->dimension_to_x, 112);
  ck_assert_double_eq (overlay ()->dimension_to_y, 40);
  gui_key_up ("Shift_L");
  hand_click ((Point) { 142, 40 });
  hand_move ((Point) { 190, 40 });
  ck_assert_double_eq (overlay ()->dimension_to_x, 142);
  gui_key ("Escape");
  ck_assert (!overlay ()->has_dimension);
}
END_TEST

static TCase *
case_outline (void)
{
  TCase *outline = tcase_create ("outline");

  tcase_add_test (outline, a_wing_is_drawn_point_by_point_and_closes_on_the_centre_line);
  tcase_add_test (outline, each_click_is_a_step_of_its_own_and_undo_walks_back);
  tcase_add_test (outline, a_press_and_drag_pulls_handles_out_for_a_curve_on_both_sides);
  tcase_add_test (outline, points_on_the_port_half_are_mirrored);
  tcase_add_test (outline, backspace_takes_nodes_back_to_the_first_and_then_that);
  tcase_add_test (outline, esc_leaves_an_open_outline_and_a_click_goes_on_with_it);
  tcase_add_test (outline, shift_goes_straight_along_or_across_from_the_last_node);
  tcase_add_test (outline, numbers_typed_place_points_exactly);
  tcase_add_test (outline, an_outline_is_drawn_by_arrow_keys_and_return);
  tcase_add_test (outline, the_second_outline_is_a_tailplane);
  return outline;
}

static TCase *
case_other_tools (void)
{
  TCase *tools = tcase_create ("other tools");

  tcase_add_test (tools, the_part_tool_puts_the_class_chosen_where_it_is_clicked);
  tcase_add_test (tools, a_part_put_near_the_centre_line_or_with_shift_stands_on_it);
  tcase_add_test (tools, a_part_is_put_and_pulled_in_one_step_and_esc_takes_it_away_again);
  tcase_add_test (tools, without_a_choice_the_part_tool_offers_what_is_still_missing);
  tcase_add_test (tools, a_drag_along_a_part_lays_its_rail);
  tcase_add_test (tools, a_click_gives_a_part_a_rail_and_leaves_one_it_has);
  tcase_add_test (tools, esc_puts_a_rail_being_laid_back);
  tcase_add_test (tools, the_mark_tool_sets_the_station_by_click_drag_or_number_on_either_half);
  tcase_add_test (tools, the_mark_tool_makes_the_first_mark);
  tcase_add_test (tools, two_clicks_measure_and_shift_measures_straight_across);
  return tools;
}

int
main (void)
{
  TCase *cases[] = { case_outline (), case_other_tools () };

  return hand_run ("sheet tools", cases, G_N_ELEMENTS (cases));
}
