/* Hinge lines drawn on the sheet under a real hand, and what becomes of a control that is selected. */
#include <math.h>
#include "app/tool.h"
#include "document/changes.h"
#include "document/hinge.h"
#include "support/sheet-hand.h"

/* The racer's wing is 110 at the root, 320 to the tip; its ailerons run from 160 to 290. */

static void
take_tool (void)
{
  gui_key ("h");
  hand_look ((Point) { 180, 0 }, 2);
  gui_settle ();
}

static size_t
count_on (const char *id)
{
  return hand_surface (id)->control_count;
}

/* The last one of the surface. */
static const Control *
added (const char *id)
{
  ck_assert_uint_gt (count_on (id), 0);
  return &hand_surface (id)->controls[count_on (id) - 1];
}

static const SheetHinge *
shown (void)
{
  return trammel_sheet_canvas_overlay (hand_sheet ())->hinge;
}

static const char *
hint (void)
{
  return trammel_sheet_canvas_hint (hand_sheet ());
}

START_TEST (two_clicks_put_a_control_on_both_halves_and_select_it)
{
  g_autofree char *before = hand_text ();

  take_tool ();
  hand_click ((Point) { 215, 40 });
  hand_click ((Point) { 208, 130 });
  ck_assert_uint_eq (count_on ("wing"), 2);
  ck_assert_int_eq (added ("wing")->kind, CONTROL_AILERON);
  ck_assert_double_eq (added ("wing")->inner, 40);
  ck_assert_double_eq (added ("wing")->outer, 130);
  ck_assert_double_eq (added ("wing")->hinge_inner_x, 215);
  ck_assert_double_eq (added ("wing")->hinge_outer_x, 208);
  ck_assert (isnan (added ("wing")->up));
  ck_assert_str_eq (hand_selected (), "wing");
  ck_assert_str_eq (trammel_session_selection (hand_session ())->control, added ("wing")->id);
  ck_assert_str_eq (trammel_sheet_canvas_tool (hand_sheet ())->kind->word, "hinge");
  hand_undoes ("Add Aileron", before);
}
END_TEST

START_TEST (on_the_port_half_and_outer_end_first_it_comes_out_the_same)
{
  take_tool ();
  hand_click ((Point) { 208, -130 });
  hand_click ((Point) { 215, -40 });
  ck_assert_double_eq (added ("wing")->inner, 40);
  ck_assert_double_eq (added ("wing")->outer, 130);
  ck_assert_double_eq (added ("wing")->hinge_inner_x, 215);
}
END_TEST

START_TEST (one_drag_sets_both_ends_and_a_tailplane_gets_an_elevator)
{
  g_autofree char *before = NULL;

  trammel_session_do (hand_session (), change_control_removed (hand_aeroplane (), "tail", "elevator"), "Delete");
  before = hand_text ();
  gui_key ("h");
  hand_look ((Point) { 400, 0 }, 4);
  hand_pull ((Point) { 425, 15 }, (Point) { 425, 80 });
  ck_assert_ptr_nonnull (shown ());
  ck_assert (shown ()->has_line && !shown ()->wrong);
  hand_release ();
  ck_assert_int_eq (added ("tail")->kind, CONTROL_ELEVATOR);
  ck_assert_double_eq (added ("tail")->inner, 15);
  ck_assert_double_eq (added ("tail")->outer, 80);
  hand_undoes ("Add Elevator", before);
}
END_TEST

START_TEST (the_plate_tells_station_chord_and_share_before_the_second_click)
{
  const Surface *wing = hand_surface ("wing");
  double leading, trailing;
  g_autofree char *chord = NULL;

  take_tool ();
  hand_move ((Point) { 215, 40 });
  ck_assert (hinge_edges (wing, 40, &leading, &trailing));
  chord = g_strdup_printf ("%.0f", trailing - 215);
  ck_assert_str_eq (hand_plate ("Station"), "40");
  ck_assert_str_eq (hand_plate ("Chord"), chord);
  ck_assert_ptr_null (hand_plate ("Share of area"));
  hand_click ((Point) { 215, 40 });
  hand_move ((Point) { 208, 130 });
  ck_assert_str_eq (hand_plate ("Station"), "130");
  ck_assert_ptr_nonnull (hand_plate ("Share of area"));
  ck_assert (shown ()->has_line);
  ck_assert_double_eq (shown ()->line.outer, 130);
}
END_TEST

START_TEST (shift_keeps_the_control_as_deep_at_both_ends)
{
  take_tool ();
  hand_click ((Point) { 215, 40 });
  gui_key_down ("Shift_L");
  hand_click ((Point) { 190, 130 });
  gui_key_up ("Shift_L");
  ck_assert_double_eq (added ("wing")->outer, 130);
  ck_assert_double_eq_tol (hinge_chord (hand_surface ("wing"), added ("wing"), true),
                           hinge_chord (hand_surface ("wing"), added ("wing"), false), 1e-6);
}
END_TEST

START_TEST (an_end_snaps_to_a_rib_and_with_ctrl_to_nothing)
{
  trammel_session_do (hand_session (), change_named_place_added (hand_aeroplane (), "wing", 73.4), "Add Rib");
  take_tool ();
  hand_click ((Point) { 215, 72 });
  hand_click ((Point) { 208, 130 });
  ck_assert_double_eq (added ("wing")->inner, 73.4);
  trammel_session_undo (hand_session ());
  gui_key_down ("Control_L");
  hand_click ((Point) { 215, 72.5 });
  hand_click ((Point) { 208, 130 });
  gui_key_up ("Control_L");
  ck_assert_double_eq_tol (added ("wing")->inner, 72.5, 0.3);
}
END_TEST

static const struct { const char *because; Point first, second; const char *sentence; } refused[] = {
  { "no surface", { 330, 60 }, { 330, 130 }, "There is no surface here: click within a wing, a tailplane or a fin." },
  { "both ends in one place", { 215, 60 }, { 215, 60 }, "Both ends stand at station 60\u00a0mm: put them apart along the span." },
  { "chordwise", { 215, 60 }, { 190, 60 }, "Both ends stand at station 60\u00a0mm: put them apart along the span." },
  { "ahead of the wing", { 150, 60 }, { 70, 130 }, "The hinge line leaves the leading edge at station" },
  { "behind it", { 215, 60 }, { 290, 130 }, "The hinge line leaves the trailing edge at station" },
};

START_TEST (a_line_that_is_none_is_refused_in_one_sentence_and_changes_nothing)
{
  g_autofree char *before = hand_text (), *after = NULL;

  take_tool ();
  hand_look ((Point) { 180, 60 }, 2);
  hand_click (refused[_i].first);
  hand_click (refused[_i].second);
  ck_assert_msg (g_str_has_prefix (hint (), refused[_i].sentence), "%s: %s", refused[_i].because, hint ());
  after = hand_text ();
  ck_assert_str_eq (after, before);
}
END_TEST

START_TEST (after_a_refusal_another_second_end_makes_the_line)
{
  take_tool ();
  hand_click ((Point) { 215, 40 });
  hand_click ((Point) { 280, 130 });
  ck_assert (shown ()->wrong);
  hand_click ((Point) { 208, 130 });
  ck_assert_uint_eq (count_on ("wing"), 2);
}
END_TEST

START_TEST (backspace_undo_and_esc_take_the_first_end_back)
{
  static const char *const keys[] = { "BackSpace", "<Control>z", "Escape" };

  take_tool ();
  for (size_t i = 0; i < G_N_ELEMENTS (keys); i++) {
    hand_click ((Point) { 215, 40 });
    ck_assert (g_str_has_prefix (hint (), "Click the other end."));
    gui_key (keys[i]);
    gui_settle ();
    ck_assert_str_eq (trammel_sheet_canvas_tool (hand_sheet ())->kind->word, "hinge");
    ck_assert (!g_str_has_prefix (hint (), "Click the other end."));
  }
  ck_assert_uint_eq (count_on ("wing"), 1);
  gui_key ("Escape");
  gui_settle ();
  ck_assert_str_eq (trammel_sheet_canvas_tool (hand_sheet ())->kind->word, "select");
}
END_TEST

START_TEST (both_ends_can_be_typed)
{
  take_tool ();
  hand_move ((Point) { 215, 40 });
  gui_type ("42.5");
  gui_key ("Tab");
  gui_type ("214.25");
  gui_key ("Return");
  gui_settle ();
  gui_type ("131.5");
  gui_key ("Tab");
  gui_type ("207.75");
  gui_key ("Return");
  gui_settle ();
  ck_assert_double_eq (added ("wing")->inner, 42.5);
  ck_assert_double_eq (added ("wing")->hinge_inner_x, 214.25);
  ck_assert_double_eq (added ("wing")->outer, 131.5);
  ck_assert_double_eq (added ("wing")->hinge_outer_x, 207.75);
}
END_TEST

START_TEST (the_key_cursor_and_return_draw_one_without_a_pointer)
{
  take_tool ();
  hand_move ((Point) { 215, 40 });
  gui_key ("<Shift>Right");
  gui_key ("Return");
  for (int i = 0; i < 5; i++)
    gui_key ("<Shift>Right");
  gui_key ("Up");
  gui_key ("Return");
  gui_settle ();
  ck_assert_double_eq (added ("wing")->inner, 50);
  ck_assert_double_eq (added ("wing")->outer, 100);
  ck_assert_double_eq (added ("wing")->hinge_outer_x, 214);
}
END_TEST

/* What is selected */

START_TEST (an_end_that_is_dragged_beyond_the_trailing_edge_stops_there)
{
  double leading, trailing;

  trammel_session_select (hand_session (), selection_of_control ("wing", "ailerons"));
  hand_look ((Point) { 180, 160 }, 2);
  hand_drag ((Point) { 203, 160 }, (Point) { 300, 160 });
  ck_assert (hinge_edges (hand_surface ("wing"), added ("wing")->inner, &leading, &trailing));
  ck_assert_double_eq_tol (added ("wing")->hinge_inner_x, trailing, 1e-6);
  ck_assert_int_eq (hinge_check (hand_surface ("wing"), added ("wing"), NULL), HINGE_SOUND);
}
END_TEST

START_TEST (with_the_tool_in_hand_an_end_of_the_selected_control_is_dragged_and_no_other_is_put)
{
  gui_key ("h");
  trammel_session_select (hand_session (), selection_of_control ("wing", "ailerons"));
  hand_look ((Point) { 180, 160 }, 2);
  hand_drag ((Point) { 203, 160 }, (Point) { 208, 150 });
  ck_assert_uint_eq (count_on ("wing"), 1);
  ck_assert_double_eq (added ("wing")->inner, 150);
  ck_assert_double_eq (added ("wing")->hinge_inner_x, 208);
}
END_TEST

START_TEST (tab_reaches_a_control_and_delete_takes_it_out_in_one_step)
{
  g_autofree char *before = hand_text ();

  for (int i = 0; i < 60 && g_strcmp0 (trammel_session_selection (hand_session ())->control, "ailerons") != 0; i++)
    gui_key ("Tab");
  ck_assert_str_eq (trammel_session_selection (hand_session ())->control, "ailerons");
  gui_key ("Delete");
  gui_settle ();
  ck_assert_uint_eq (count_on ("wing"), 0);
  hand_undoes ("Delete Hinge Line", before);
}
END_TEST

START_TEST (the_tool_comes_with_the_first_closed_surface)
{
  hand_begin_empty ();
  gui_key ("h");
  gui_settle ();
  ck_assert_str_eq (trammel_sheet_canvas_tool (hand_sheet ())->kind->word, "select");
  ck_assert (!tool_kind_is_useful (&tool_hinge, hand_aeroplane ()));
}
END_TEST

int
main (void)
{
  TCase *sheet = tcase_create ("on the sheet"), *selected = tcase_create ("selected");
  TCase *all[] = { sheet, selected };

  tcase_add_test (sheet, two_clicks_put_a_control_on_both_halves_and_select_it);
  tcase_add_test (sheet, on_the_port_half_and_outer_end_first_it_comes_out_the_same);
  tcase_add_test (sheet, one_drag_sets_both_ends_and_a_tailplane_gets_an_elevator);
  tcase_add_test (sheet, the_plate_tells_station_chord_and_share_before_the_second_click);
  tcase_add_test (sheet, shift_keeps_the_control_as_deep_at_both_ends);
  tcase_add_test (sheet, an_end_snaps_to_a_rib_and_with_ctrl_to_nothing);
  tcase_add_loop_test (sheet, a_line_that_is_none_is_refused_in_one_sentence_and_changes_nothing, 0, G_N_ELEMENTS (refused));
  tcase_add_test (sheet, after_a_refusal_another_second_end_makes_the_line);
  tcase_add_test (sheet, backspace_undo_and_esc_take_the_first_end_back);
  tcase_add_test (sheet, both_ends_can_be_typed);
  tcase_add_test (sheet, the_key_cursor_and_return_draw_one_without_a_pointer);
  tcase_add_test (selected, an_end_that_is_dragged_beyond_the_trailing_edge_stops_there);
  tcase_add_test (selected, with_the_tool_in_hand_an_end_of_the_selected_control_is_dragged_and_no_other_is_put);
  tcase_add_test (selected, tab_reaches_a_control_and_delete_takes_it_out_in_one_step);
  tcase_add_test (selected, the_tool_comes_with_the_first_closed_surface);
  return hand_run ("sheet hinge lines", all, G_N_ELEMENTS (all));
}
