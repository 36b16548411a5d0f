/* The catalogue of parts in the real window: searched, chosen by keys alone, dragged onto the sheet, made by size, put by the Part tool. */
#include <math.h>
#include "app/part-list.h"
#include "document/part-size.h"
#include "support/sheet-hand.h"

static GtkWidget *
window (void)
{
  return GTK_WIDGET (hand_window ());
}

static void
open_list (void)
{
  g_action_group_change_action_state (G_ACTION_GROUP (hand_window ()), "show-panel", g_variant_new_boolean (TRUE));
  gui_click (gui_await (window (), "Add a Part"));
  gui_await (window (), "Search the Catalogue");
  hand_await_layout ();
}

/* The panel gone again, so that the sheet has its px back. */
static void
put_panel_away (void)
{
  g_action_group_change_action_state (G_ACTION_GROUP (hand_window ()), "show-panel", g_variant_new_boolean (FALSE));
  hand_await_layout ();
  hand_look ((Point) { 120, 0 }, 4);
}

START_TEST (typing_searches_and_return_puts_the_first_found_as_one_step)
{
  g_autofree char *before = hand_text ();
  const Part *part;

  open_list ();
  gui_type ("2s 45");
  ck_assert_ptr_null (gui_find (window (), "Battery 2S 300 mAh"));
  ck_assert_ptr_null (gui_find (window (), "Battery"));
  gui_await (window (), "Battery 2S 450 mAh");
  gui_key ("Return");
  part = hand_part (hand_selected ());
  ck_assert_str_eq (part->kind, "battery-2s-450");
  ck_assert_str_eq (part->class_name, "battery");
  ck_assert_double_eq (part->mass, 27);
  ck_assert_double_eq (part->length, 55);
  gui_await (window (), "± 2.5, not weighed");
  hand_undoes ("Add Battery 2S 450 mAh", before);
}
END_TEST

START_TEST (down_goes_into_the_list_and_return_takes_the_row_there)
{
  open_list ();
  gui_type ("2s");
  gui_key ("Down");
  gui_key ("Down");
  gui_key ("Return");
  ck_assert_str_eq (hand_part (hand_selected ())->kind, "battery-2s-300");
}
END_TEST

START_TEST (a_search_for_what_is_not_there_says_so_and_return_puts_nothing)
{
  g_autofree char *before = hand_text (), *after = NULL;

  open_list ();
  gui_type ("submarine");
  gui_await (window (), "Nothing in the catalogue is called so.");
  gui_key ("Return");
  after = hand_text ();
  ck_assert_str_eq (after, before);
  gui_key ("Escape");
}
END_TEST

START_TEST (a_row_says_mass_and_size_in_the_persons_own_units)
{
  open_list ();
  gui_type ("2s 450");
  gui_await (window (), "55 × 30 × 12 mm");
  gui_await (window (), "27 g");
  gui_key ("Escape");
  trammel_settings_set_units (trammel_session_settings (hand_session ()), (Units) { LENGTH_INCH, MASS_OZ });
  open_list ();
  gui_type ("2s 450");
  gui_await (window (), "0.95 oz");
  ck_assert_ptr_null (gui_find (window (), "55 × 30 × 12 mm"));
  gui_key ("Escape");
}
END_TEST

START_TEST (the_part_tool_then_puts_what_was_chosen)
{
  const Part *part;

  open_list ();
  gui_type ("servo-9");
  gui_key ("Return");
  put_panel_away ();
  trammel_sheet_canvas_set_tool (hand_sheet (), "part");
  hand_click ((Point) { 90, 30 });
  part = hand_part (hand_selected ());
  ck_assert_str_eq (part->kind, "servo-9");
  ck_assert_double_eq (part->x, 90);
  ck_assert_double_eq (part->y, 30);
}
END_TEST

START_TEST (a_row_dragged_onto_the_sheet_stands_where_it_is_let_go)
{
  const Part *part;
  Point px;

  open_list ();
  gui_type ("3s 450");
  hand_look ((Point) { 120, 0 }, 2);
  px = hand_px ((Point) { 90, 30 });
  gui_move_to (gui_await (window (), "Battery 3S 450 mAh"), 5, 5);
  gui_press (1);
  for (int i = 1; i <= 6; i++)
    gui_move_to (GTK_WIDGET (hand_sheet ()), px.x + 60 - 10 * i, px.y);
  gui_release (1);
  gui_settle ();
  part = hand_part (hand_selected ());
  ck_assert_str_eq (part->kind, "battery-3s-450");
  ck_assert_double_eq_tol (part->x, 90, 1);
  ck_assert_double_eq_tol (part->y, 30, 1);
}
END_TEST

/* The entry stands beside its label. */
static void
retype (const char *label, const char *text)
{
  gtk_widget_grab_focus (gtk_widget_get_next_sibling (gui_await (window (), label)));
  gui_key ("<Control>a");
  gui_type (text);
}

START_TEST (a_pack_is_made_by_cells_and_capacity)
{
  const Part *part;
  PartSize size;

  open_list ();
  gui_click (gui_await (window (), "By Size…"));
  retype ("Cells in series", "3");
  retype ("Capacity, mAh", "620");
  gui_key ("Return");
  part = hand_part (hand_selected ());
  ck_assert (part_size_pack (3, 620, &size));
  ck_assert_str_eq (part->class_name, "battery");
  ck_assert_str_eq (part->name, "Battery 3S 620 mAh");
  ck_assert_double_eq (part->mass, size.mass);
  ck_assert_double_eq (part->mass_sigma, size.mass_sigma);
  ck_assert_double_eq (part->length, size.length);
  ck_assert_double_eq (part->cells, 3);
  ck_assert_double_eq (part->capacity, 620);
}
END_TEST

START_TEST (what_no_pack_can_be_is_refused_with_a_sentence)
{
  g_autofree char *before = hand_text (), *after = NULL;

  open_list ();
  gui_click (gui_await (window (), "By Size…"));
  retype ("Cells in series", "40");
  gui_await (window (), "A pack has 1 to 12 cells of 20 to 20,000 mAh.");
  gui_key ("Return");
  after = hand_text ();
  ck_assert_str_eq (after, before);
  gui_key ("Escape");
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("part list");

  tcase_add_test (tests, typing_searches_and_return_puts_the_first_found_as_one_step);
  tcase_add_test (tests, down_goes_into_the_list_and_return_takes_the_row_there);
  tcase_add_test (tests, a_search_for_what_is_not_there_says_so_and_return_puts_nothing);
  tcase_add_test (tests, a_row_says_mass_and_size_in_the_persons_own_units);
  tcase_add_test (tests, the_part_tool_then_puts_what_was_chosen);
  tcase_add_test (tests, a_row_dragged_onto_the_sheet_stands_where_it_is_let_go);
  tcase_add_test (tests, a_pack_is_made_by_cells_and_capacity);
  tcase_add_test (tests, what_no_pack_can_be_is_refused_with_a_sentence);
  return hand_run ("part list", (TCase *[]) { tests }, 1);
}
