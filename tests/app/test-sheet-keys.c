/* The sheet by keys alone: moving, walking, typing, tools; and the figures on it that open as fields. */
#include <math.h>
#include <string.h>
#include "app/dimension-field.h"
#include "app/tool.h"
#include "app/tools-column.h"
#include "support/sheet-hand.h"

static const char *
tool (void)
{
  return trammel_sheet_canvas_tool (hand_sheet ())->kind->word;
}

static void
select_piece (const char *id)
{
  trammel_session_select (hand_session (), selection_of (id));
}

START_TEST (arrows_move_a_part_by_one_millimetre_and_with_shift_by_ten)
{
  g_autofree char *before = hand_text ();

  select_piece ("receiver");
  gui_key ("Up");
  ck_assert_double_eq (hand_part ("receiver")->x, 162);
  gui_key ("<Shift>Right");
  ck_assert_double_eq (hand_part ("receiver")->y, 10);
  trammel_session_undo (hand_session ());
  hand_undoes ("Move Receiver", before);
}
END_TEST

START_TEST (shift_r_turns_the_selected_part_by_a_quarter)
{
  g_autofree char *before = hand_text ();

  select_piece ("receiver");
  gui_key ("<Shift>r");
  ck_assert_double_eq (hand_part ("receiver")->turn, 90);
  ck_assert_str_eq (tool (), "select");
  hand_undoes ("Turn Part", before);
}
END_TEST

START_TEST (arrows_move_by_a_thirty_second_of_an_inch_where_inches_are_used)
{
  trammel_settings_set_units (trammel_session_settings (hand_session ()), (Units) { LENGTH_INCH, MASS_OZ });
  select_piece ("receiver");
  gui_key ("Down");
  ck_assert_double_eq_tol (hand_part ("receiver")->x, 163 + 25.4 / 32, 1e-12);
}
END_TEST

START_TEST (arrows_keep_a_part_on_its_rail)
{
  select_piece ("battery");
  gui_key ("<Shift>Down");
  ck_assert_double_eq (hand_part ("battery")->x, 134);
  gui_key ("<Shift>Down");
  ck_assert_double_eq (hand_part ("battery")->x, 134);
}
END_TEST

START_TEST (arrows_move_a_node_and_a_mark)
{
  trammel_session_select (hand_session (), selection_of_node ("wing", false, 1));
  gui_key ("Left");
  ck_assert_double_eq (hand_node ("wing", 1).y, 319);
  trammel_session_select (hand_session (), selection_of_mark (0));
  gui_key ("<Shift>Right");
  ck_assert_double_eq (aeroplane_mark (hand_aeroplane (), 0)->station, 50);
}
END_TEST

START_TEST (arrows_with_nothing_selected_move_the_sheet)
{
  const double before = trammel_sheet_canvas_view (hand_sheet ())->origin_x;
  g_autofree char *text = hand_text (), *after = NULL;

  gui_key ("Right");
  ck_assert_double_lt (trammel_sheet_canvas_view (hand_sheet ())->origin_x, before);
  after = hand_text ();
  ck_assert_str_eq (after, text);
}
END_TEST

START_TEST (tab_walks_surfaces_their_nodes_and_controls_bodies_parts_and_leads_and_comes_round)
{
  const Selection *selection;
  int steps = 0;

  gui_key ("Tab");
  ck_assert_str_eq (hand_selected (), "wing");
  gui_key ("Tab");
  selection = trammel_session_selection (hand_session ());
  ck_assert (selection_has_node (selection, "wing", false, 0));
  gui_key ("<Shift>Tab");
  gui_key ("<Shift>Tab");
  ck_assert_str_eq (hand_selected (), "lead-3");
  do
    gui_key ("Tab");
  while (strcmp (hand_selected (), "lead-3") != 0 && ++steps < 100);
  /* 3 surfaces and their 3 + 3 nodes (the fin's are not seen from above), a control on each, a body and its 5, 10 parts, 3 leads and the
   * 2 + 2 bends of two of them. */
  ck_assert_int_eq (steps + 1, 35);
}
END_TEST

START_TEST (ctrl_with_tab_leaves_the_sheet)
{
  gui_key ("<Control>Tab");
  ck_assert (!gtk_widget_has_focus (GTK_WIDGET (hand_sheet ())));
  ck_assert (selection_is_empty (trammel_session_selection (hand_session ())));
}
END_TEST

START_TEST (digits_type_the_place_of_what_is_selected)
{
  g_autofree char *before = hand_text ();

  select_piece ("receiver");
  gui_type ("158.125\n");
  ck_assert_double_eq (hand_part ("receiver")->x, 158.125);
  hand_undoes ("Move Receiver", before);
}
END_TEST

START_TEST (esc_leaves_a_typed_digit_without_a_step)
{
  select_piece ("receiver");
  gui_type ("15");
  gui_key ("Escape");
  ck_assert_double_eq (hand_part ("receiver")->x, 163);
  ck_assert_ptr_null (trammel_session_undo_label (hand_session ()));
  ck_assert (gtk_widget_has_focus (GTK_WIDGET (hand_sheet ())));
}
END_TEST

static void
remember_text (GObject *sheet, const char *text, char **kept)
{
  g_free (*kept);
  *kept = g_strdup (text);
}

START_TEST (return_asks_for_the_selection_s_first_field)
{
  char *asked = NULL;
  gulong handler = g_signal_connect (hand_sheet (), "edit-requested", G_CALLBACK (remember_text), &asked);

  gui_key ("Return");
  ck_assert_ptr_null (asked);
  select_piece ("receiver");
  gui_key ("Return");
  ck_assert_str_eq (asked, "");
  g_signal_handler_disconnect (hand_sheet (), handler);
  g_free (asked);
}
END_TEST

static const struct { const char *key, *word; } letters[] = {
  { .key = "m", .word = "move-sheet" }, { .key = "o", .word = "outline" }, { .key = "p", .word = "part" }, { .key = "r", .word = "rail" },
  { .key = "k", .word = "balance-mark" }, { .key = "d", .word = "dimension" }, { .key = "s", .word = "select" },
};

START_TEST (a_letter_takes_its_tool_into_the_hand_and_esc_select)
{
  gui_key (letters[_i].key);
  ck_assert_str_eq (tool (), letters[_i].word);
  if (!g_str_equal (letters[_i].word, "select")) {      /* which was in hand already */
    g_autofree char *named = g_strconcat (tool_kind_find (letters[_i].word)->name, ". ", NULL);

    ck_assert (g_str_has_prefix (trammel_sheet_canvas_hint (hand_sheet ()), named));
  }
  gui_key ("Escape");
  ck_assert_str_eq (tool (), "select");
}
END_TEST

START_TEST (tools_without_anything_to_act_on_are_neither_shown_nor_taken)
{
  GtkWidget *tools = gui_find_type (GTK_WIDGET (hand_window ()), TRAMMEL_TYPE_TOOLS_COLUMN);

  ck_assert_ptr_nonnull (gui_find (tools, "Rail"));
  hand_begin_empty ();
  ck_assert_ptr_nonnull (gui_find (tools, "Outline"));
  ck_assert_ptr_null (gui_find (tools, "Rail"));
  ck_assert_ptr_null (gui_find (tools, "Part"));
  ck_assert_ptr_null (gui_find (tools, "Balance Mark"));
  gui_key ("r");
  ck_assert_str_eq (tool (), "select");
}
END_TEST

START_TEST (a_tool_s_button_takes_it_into_the_hand_and_leaves_the_keyboard_on_the_sheet)
{
  gui_click (gui_await (GTK_WIDGET (hand_window ()), "Dimension"));
  ck_assert_str_eq (tool (), "dimension");
  gui_key ("Escape");
  ck_assert_str_eq (tool (), "select");
}
END_TEST

/* Figures on the sheet */

static Point
figure_place (DimensionKind kind, const char *id, size_t index)
{
  const SheetScene scene = trammel_sheet_canvas_scene (hand_sheet ());
  const Hit hit = { .kind = HIT_DIMENSION, .id = id, .index = index, .dimension = kind };
  Box px;

  ck_assert_msg (sheet_dimension_box (&scene, &hit, &px), "that dimension is not shown");
  return (Point) { (px.min.x + px.max.x) / 2, (px.min.y + px.max.y) / 2 };
}

static void
click_figure (DimensionKind kind, const char *id, size_t index)
{
  const Point px = figure_place (kind, id, index);

  gui_click_at (GTK_WIDGET (hand_sheet ()), px.x, px.y);
}

START_TEST (the_span_typed_on_the_sheet_is_the_span)
{
  g_autofree char *before = hand_text ();

  hand_look ((Point) { 250, 0 }, 1);
  click_figure (DIMENSION_SPAN, "wing", 0);
  gui_type ("655.5\n");
  ck_assert_double_eq (2 * hand_node ("wing", 1).y, 655.5);
  ck_assert (gtk_widget_has_focus (GTK_WIDGET (hand_sheet ())));
  hand_undoes ("Change Span", before);
}
END_TEST

START_TEST (a_figure_s_field_shows_the_exact_value_and_inches_are_understood)
{
  hand_look ((Point) { 250, 0 }, 1);
  click_figure (DIMENSION_SPAN, "wing", 0);
  gui_key ("<Control>a");
  gui_type ("25 1/4 in\n");
  ck_assert_double_eq_tol (2 * hand_node ("wing", 1).y, 25.25 * 25.4, 1e-12);
  gui_wait_ms (500);
  click_figure (DIMENSION_SPAN, "wing", 0);
  ck_assert_str_eq (gtk_editable_get_text (GTK_EDITABLE (gui_await (GTK_WIDGET (hand_window ()), "Span"))), "641.35");
  gui_key ("Escape");
}
END_TEST

START_TEST (a_figure_left_by_esc_or_as_it_was_makes_no_step)
{
  hand_look ((Point) { 250, 0 }, 1);
  click_figure (DIMENSION_SPAN, "wing", 0);
  gui_type ("700");
  gui_key ("Escape");
  ck_assert_double_eq (hand_node ("wing", 1).y, 320);
  gui_wait_ms (500);
  click_figure (DIMENSION_SPAN, "wing", 0);
  gui_key ("Return");
  ck_assert_ptr_null (trammel_session_undo_label (hand_session ()));
}
END_TEST

START_TEST (a_length_that_is_none_is_said_under_the_field_and_stays_there)
{
  hand_look ((Point) { 250, 0 }, 1);
  click_figure (DIMENSION_SPAN, "wing", 0);
  gui_type ("1,000\n");
  gui_await (GTK_WIDGET (hand_window ()), "1,000: is that one or a thousand? Write 1 or 1000.");
  gui_key ("<Control>a");
  gui_type ("-3\n");
  gui_await (GTK_WIDGET (hand_window ()), "A span is more than 0 and at most 20 m.");
  gui_key ("<Control>a");
  gui_type ("20001\n");
  gui_await (GTK_WIDGET (hand_window ()), "A span is more than 0 and at most 20 m.");
  ck_assert_double_eq (hand_node ("wing", 1).y, 320);
  gui_key ("<Control>a");
  gui_type ("650\n");
  ck_assert_double_eq (hand_node ("wing", 1).y, 325);
}
END_TEST

START_TEST (a_figure_counts_when_the_hand_goes_elsewhere)
{
  hand_look ((Point) { 250, 0 }, 1);
  click_figure (DIMENSION_SPAN, "wing", 0);
  gui_type ("650");
  hand_click ((Point) { 330, 100 });
  ck_assert_double_eq (hand_node ("wing", 1).y, 325);
}
END_TEST

static bool
sheet_shows_node (Point place)
{
  const Point px = hand_px (place);
  const SheetView *view = trammel_sheet_canvas_view (hand_sheet ());

  return px.x >= 0 && px.y >= 0 && px.x <= view->width && px.y <= view->height;
}

START_TEST (an_aeroplane_typed_out_of_view_is_fitted_again)
{
  trammel_sheet_canvas_fit (hand_sheet (), false);
  hand_await_layout ();
  click_figure (DIMENSION_SPAN, "wing", 0);
  gui_type ("3000\n");
  hand_await_layout ();
  ck_assert_double_eq (hand_node ("wing", 1).y, 1500);
  ck_assert (sheet_shows_node (hand_node ("wing", 1)));
}
END_TEST

START_TEST (a_span_that_stays_in_view_or_of_which_only_a_part_was_seen_moves_nothing)
{
  SheetView before;

  hand_look ((Point) { 250, 0 }, 0.5);
  before = *trammel_sheet_canvas_view (hand_sheet ());
  click_figure (DIMENSION_SPAN, "wing", 0);
  gui_type ("660\n");
  ck_assert_double_eq (trammel_sheet_canvas_view (hand_sheet ())->scale, before.scale);
  gui_wait_ms (500);
  hand_look ((Point) { 150, 0 }, 2);
  before = *trammel_sheet_canvas_view (hand_sheet ());
  click_figure (DIMENSION_SPAN, "wing", 0);
  gui_type ("3000\n");
  ck_assert_double_eq (trammel_sheet_canvas_view (hand_sheet ())->scale, before.scale);
}
END_TEST

START_TEST (the_mark_s_figure_opens_its_station)
{
  hand_look ((Point) { 130, 0 }, 3);
  click_figure (DIMENSION_MARK, NULL, 0);
  gui_type ("48.5\n");
  ck_assert_double_eq (aeroplane_mark (hand_aeroplane (), 0)->station, 48.5);
  gui_wait_ms (500);
  click_figure (DIMENSION_MARK, NULL, 0);
  gui_type ("321\n");
  gui_await (GTK_WIDGET (hand_window ()), "The station lies on the wing: between the centre line and the tip.");
  gui_key ("Escape");
  ck_assert_double_eq (aeroplane_mark (hand_aeroplane (), 0)->station, 48.5);
}
END_TEST

START_TEST (a_selected_part_s_and_node_s_figures_are_typed_exactly)
{
  hand_look ((Point) { 150, 0 }, 1.2);
  select_piece ("receiver");
  gui_settle ();
  click_figure (DIMENSION_PART_X, "receiver", 0);
  gui_type ("160.0625\n");
  ck_assert_double_eq (hand_part ("receiver")->x, 160.0625);
  trammel_session_select (hand_session (), selection_of_node ("wing", false, 1));
  gui_wait_ms (500);
  click_figure (DIMENSION_NODE_STATION, "wing", 1);
  gui_type ("318.4\n");
  ck_assert_double_eq (hand_node ("wing", 1).y, 318.4);
  gui_wait_ms (500);
  click_figure (DIMENSION_NODE_STATION, "wing", 1);
  gui_type ("-1\n");
  gui_await (GTK_WIDGET (hand_window ()), "It lies between 0 and 20 m.");
  gui_key ("Escape");
  gui_wait_ms (500);
  click_figure (DIMENSION_NODE_X, "wing", 1);
  gui_type ("155.3\n");
  ck_assert_double_eq (hand_node ("wing", 1).x, 155.3);
}
END_TEST

static TCase *
case_keys (void)
{
  TCase *keys = tcase_create ("keys");

  tcase_add_test (keys, arrows_move_a_part_by_one_millimetre_and_with_shift_by_ten);
  tcase_add_test (keys, shift_r_turns_the_selected_part_by_a_quarter);
  tcase_add_test (keys, arrows_move_by_a_thirty_second_of_an_inch_where_inches_are_used);
  tcase_add_test (keys, arrows_keep_a_part_on_its_rail);
  tcase_add_test (keys, arrows_move_a_node_and_a_mark);
  tcase_add_test (keys, arrows_with_nothing_selected_move_the_sheet);
  tcase_add_test (keys, tab_walks_surfaces_their_nodes_and_controls_bodies_parts_and_leads_and_comes_round);
  tcase_add_test (keys, ctrl_with_tab_leaves_the_sheet);
  tcase_add_test (keys, digits_type_the_place_of_what_is_selected);
  tcase_add_test (keys, esc_leaves_a_typed_digit_without_a_step);
  tcase_add_test (keys, return_asks_for_the_selection_s_first_field);
  tcase_add_loop_test (keys, a_letter_takes_its_tool_into_the_hand_and_esc_select, 0, G_N_ELEMENTS (letters));
  tcase_add_test (keys, tools_without_anything_to_act_on_are_neither_shown_nor_taken);
  tcase_add_test (keys, a_tool_s_button_takes_it_into_the_hand_and_leaves_the_keyboard_on_the_sheet);
  return keys;
}

static TCase *
case_figures (void)
{
  TCase *figures = tcase_create ("figures");

  tcase_add_test (figures, the_span_typed_on_the_sheet_is_the_span);
  tcase_add_test (figures, a_figure_s_field_shows_the_exact_value_and_inches_are_understood);
  tcase_add_test (figures, a_figure_left_by_esc_or_as_it_was_makes_no_step);
  tcase_add_test (figures, a_length_that_is_none_is_said_under_the_field_and_stays_there);
  tcase_add_test (figures, a_figure_counts_when_the_hand_goes_elsewhere);
  tcase_add_test (figures, an_aeroplane_typed_out_of_view_is_fitted_again);
  tcase_add_test (figures, a_span_that_stays_in_view_or_of_which_only_a_part_was_seen_moves_nothing);
  tcase_add_test (figures, the_mark_s_figure_opens_its_station);
  tcase_add_test (figures, a_selected_part_s_and_node_s_figures_are_typed_exactly);
  return figures;
}

int
main (void)
{
  TCase *cases[] = { case_keys (), case_figures () };

  return hand_run ("sheet keys", cases, G_N_ELEMENTS (cases));
}
