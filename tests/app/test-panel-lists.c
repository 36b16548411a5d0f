/* The lists in the panel: they follow what is dragged, choose on the sheet, sort, and are copied. */
#include <math.h>
#include <string.h>
#include "app/figure-list.h"
#include "app/list-rows.h"
#include "document/changes.h"
#include "support/sheet-hand.h"

static const Units metric = { LENGTH_MM, MASS_G };
static const ReportList lists[] = { REPORT_LIST_GROUPS, REPORT_LIST_MOMENTS, REPORT_LIST_MOVERS, REPORT_LIST_LEADS };

static void
open_lists (void)
{
  g_action_group_change_action_state (G_ACTION_GROUP (hand_window ()), "show-panel", g_variant_new_boolean (TRUE));
  gui_settle ();
  gui_click (gui_await (GTK_WIDGET (hand_window ()), "Lists"));
  gui_await (GTK_WIDGET (hand_window ()), "What Moves the Balance");
}

/* The row as the screen reader says it, by the figures now. */
static char *
words_of (ReportList list, const char *name)
{
  g_autoptr (ListRows) rows = list_rows_new (trammel_session_figures (hand_session ()), metric, list, NULL);

  for (guint i = 0; i < rows->rows->len; i++) {
    const ListRow *row = g_ptr_array_index (rows->rows, i);

    if (g_str_equal (row->cells[0], name))
      return g_strdup (row->words);
  }
  return NULL;
}

START_TEST (a_row_chooses_its_part_and_the_lists_stay)
{
  g_autofree char *words = words_of (REPORT_LIST_MOVERS, "Battery 2S 450");

  open_lists ();
  gui_click (gui_await (GTK_WIDGET (hand_window ()), words));
  gui_settle ();
  ck_assert_str_eq (hand_selected (), "battery");
  ck_assert_ptr_nonnull (gui_find (GTK_WIDGET (hand_window ()), "What Moves the Balance"));
}
END_TEST

/* The elevator's servo has no rail: where it would balance stands beside it, and there nothing is short. */
START_TEST (a_part_that_is_told_of_where_it_balances_falls_short_of_nothing)
{
  g_autoptr (ListRows) rows = list_rows_new (trammel_session_figures (hand_session ()), metric, REPORT_LIST_MOVERS, NULL);
  bool told = false;

  for (guint i = 0; i < rows->rows->len; i++) {
    const ListRow *row = g_ptr_array_index (rows->rows, i);

    if (!g_str_equal (row->cells[0], "Servo, elevator"))
      continue;
    ck_assert_str_eq (row->cells[2], "0");
    ck_assert_str_ne (row->cells[1], "0");
    told = true;
  }
  ck_assert (told);
}
END_TEST

START_TEST (the_lists_follow_while_a_part_is_moved)
{
  g_autofree char *before = words_of (REPORT_LIST_MOVERS, "Battery 2S 450");

  open_lists ();
  gui_await (GTK_WIDGET (hand_window ()), before);
  trammel_session_preview (hand_session (), change_part_place (hand_aeroplane (), "battery", hand_part ("battery")->x - 9, 0, 0));
  g_autofree char *then = words_of (REPORT_LIST_MOVERS, "Battery 2S 450");
  ck_assert_str_ne (before, then);
  gui_await (GTK_WIDGET (hand_window ()), then);
  trammel_session_abandon (hand_session ());
}
END_TEST

START_TEST (what_is_copied_has_a_line_each_row_and_signs_that_a_spreadsheet_reads)
{
  g_autoptr (ListRows) rows = list_rows_new (trammel_session_figures (hand_session ()), metric, REPORT_LIST_MOMENTS, NULL);
  g_autofree char *text = list_rows_text (rows);
  g_auto (GStrv) lines = g_strsplit (text, "\n", -1);

  ck_assert_uint_eq (g_strv_length (lines), rows->rows->len + 2);
  ck_assert_ptr_nonnull (strstr (lines[0], "Moment, g·mm"));
  ck_assert_ptr_nonnull (strstr (text, "\t-"));
  ck_assert_ptr_null (strstr (text, "\u2212"));
}
END_TEST

START_TEST (rows_sort_by_a_figure_both_ways)
{
  g_autoptr (ListRows) rows = list_rows_new (trammel_session_figures (hand_session ()), metric, REPORT_LIST_MOMENTS, NULL);

  for (int descending = 0; descending < 2; descending++) {
    list_rows_sort (rows, 1, descending);
    for (guint i = 1; i < rows->rows->len; i++) {
      const double one = ((ListRow *) rows->rows->pdata[i - 1])->keys[1], other = ((ListRow *) rows->rows->pdata[i])->keys[1];
      ck_assert (descending ? one >= other : one <= other);
    }
  }
}
END_TEST

/* The names of the list's rows from the top, as they are seen now: a word each line. */
static char *
names_seen (const char *heading)
{
  GtkWidget *list = gui_await (GTK_WIDGET (hand_window ()), heading);
  GString *names = g_string_new (NULL);
  GtkListBoxRow *row;

  while (!TRAMMEL_IS_FIGURE_LIST (list))
    list = gtk_widget_get_parent (list);
  list = gui_find_type (list, GTK_TYPE_LIST_BOX);
  for (int i = 0; (row = gtk_list_box_get_row_at_index (GTK_LIST_BOX (list), i)) != NULL; i++) {
    GtkWidget *name = gtk_widget_get_first_child (gtk_list_box_row_get_child (row));
    g_string_append_printf (names, "%s\n", gtk_label_get_text (GTK_LABEL (name)));
  }
  return g_string_free (names, FALSE);
}

static char *
names_sorted (ReportList list, int column, bool descending)
{
  g_autoptr (ListRows) rows = list_rows_new (trammel_session_figures (hand_session ()), metric, list, NULL);
  GString *names = g_string_new (NULL);

  if (column >= 0)
    list_rows_sort (rows, (guint) column, descending);
  for (guint i = 0; i < rows->rows->len; i++)
    g_string_append_printf (names, "%s\n", ((ListRow *) rows->rows->pdata[i])->cells[0]);
  return g_string_free (names, FALSE);
}

static void
press_head (const char *head)
{
  GtkWidget *button = gui_await (GTK_WIDGET (hand_window ()), head);

  gtk_widget_grab_focus (button);       /* what lies below the fold comes into view */
  gui_settle ();
  gui_click (button);
}

START_TEST (pressing_a_heading_sorts_then_turns_the_order_round_then_gives_the_lists_own)
{
  g_autofree char *own = names_sorted (REPORT_LIST_MOVERS, -1, false), *most = names_sorted (REPORT_LIST_MOVERS, 3, true);
  g_autofree char *least = names_sorted (REPORT_LIST_MOVERS, 3, false);
  const char *orders[] = { own, most, least, own };

  ck_assert_str_ne (own, most);
  ck_assert_str_ne (own, least);
  open_lists ();
  for (size_t i = 0; i < G_N_ELEMENTS (orders); i++) {
    if (i > 0)
      press_head ("Sort by “or weigh”");
    g_autofree char *seen = names_seen ("What Moves the Balance");
    ck_assert_str_eq (seen, orders[i]);
  }
}
END_TEST

START_TEST (a_name_sorts_by_the_alphabet)
{
  g_autofree char *wanted = names_sorted (REPORT_LIST_MOVERS, 0, false);

  open_lists ();
  press_head ("Sort by “Part”");
  g_autofree char *seen = names_seen ("What Moves the Balance");
  ck_assert_str_eq (seen, wanted);
}
END_TEST

/* The battery stands ahead of the balance point, the elevator's servo behind it. */
START_TEST (a_way_is_told_with_its_side_and_copied_with_a_sign)
{
  g_autoptr (ListRows) rows = list_rows_new (trammel_session_figures (hand_session ()), metric, REPORT_LIST_MOMENTS, NULL);
  g_autofree char *battery = words_of (REPORT_LIST_MOMENTS, "Battery 2S 450"), *servo = words_of (REPORT_LIST_MOMENTS, "Servo, elevator");
  g_autofree char *text = list_rows_text (rows);

  ck_assert_ptr_nonnull (strstr (battery, "Arm 27\u00a0mm forward"));
  ck_assert_ptr_nonnull (strstr (servo, "Arm 35\u00a0mm aft"));
  ck_assert_ptr_nonnull (strstr (text, "Aft by, mm"));
  ck_assert_ptr_nonnull (strstr (text, "Battery 2S 450\t27\t-27\t"));
  ck_assert_ptr_null (strstr (text, "forward"));
}
END_TEST

START_TEST (each_list_shares_out_the_whole_width)
{
  for (size_t i = 0; i < G_N_ELEMENTS (lists); i++) {
    g_autoptr (ListRows) rows = list_rows_new (trammel_session_figures (hand_session ()), metric, lists[i], NULL);
    ck_assert_int_eq (rows->shares[1] + rows->shares[2] + rows->shares[3], LIST_SHARES);
  }
}
END_TEST

/* Where a row's figures end, their headings end. */
START_TEST (a_heading_stands_over_its_column)
{
  GtkWidget *head, *list, *figures;
  graphene_rect_t over, under;

  open_lists ();
  head = gui_await (GTK_WIDGET (hand_window ()), "Sort by “or weigh”");
  list = gui_find_type (GTK_WIDGET (gtk_widget_get_ancestor (head, TRAMMEL_TYPE_FIGURE_LIST)), GTK_TYPE_LIST_BOX);
  figures = gtk_widget_get_last_child (gtk_list_box_row_get_child (gtk_list_box_get_row_at_index (GTK_LIST_BOX (list), 0)));
  for (GtkWidget *cell = gtk_widget_get_last_child (figures); cell != NULL; cell = gtk_widget_get_prev_sibling (cell)) {
    ck_assert (gtk_widget_compute_bounds (head, GTK_WIDGET (hand_window ()), &over));
    ck_assert (gtk_widget_compute_bounds (cell, GTK_WIDGET (hand_window ()), &under));
    ck_assert_double_eq_tol (over.origin.x + over.size.width, under.origin.x + under.size.width, 0.5);
    head = gtk_widget_get_prev_sibling (head);
  }
}
END_TEST

/* The example's aileron lead runs into the body: what it needs and what is bought for it is a row like any other. */
START_TEST (a_lead_is_told_with_its_length_what_it_needs_and_the_extension_to_buy)
{
  g_autoptr (ListRows) rows = list_rows_new (trammel_session_figures (hand_session ()), metric, REPORT_LIST_LEADS, NULL);
  const ListRow *row = g_ptr_array_index (rows->rows, 0);
  GtkWidget *seen;

  open_lists ();
  ck_assert_ptr_nonnull (strstr (row->words, ": Length "));
  ck_assert_ptr_nonnull (strstr (row->words, ", Needs "));
  ck_assert_ptr_nonnull (strstr (row->words, ", Extension "));
  seen = gui_await (GTK_WIDGET (hand_window ()), row->words);
  gtk_widget_grab_focus (seen);                /* below the fold: into view first, as the keyboard does */
  gui_settle ();
  gui_click (seen);
  gui_settle ();
  ck_assert_str_eq (hand_selected (), row->ids[0]);
  ck_assert_int_eq (aeroplane_find (hand_aeroplane (), row->ids[0])->kind, PIECE_LEAD);
}
END_TEST

START_TEST (an_empty_sheet_is_told_what_is_missing)
{
  hand_begin_empty ();
  for (size_t i = 0; i < G_N_ELEMENTS (lists); i++) {
    g_autoptr (ListRows) rows = list_rows_new (trammel_session_figures (hand_session ()), metric, lists[i], NULL);
    ck_assert_ptr_nonnull (rows->empty);
    ck_assert_ptr_null (rows->beneath);
  }
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("panel lists");

  tcase_add_test (tests, a_row_chooses_its_part_and_the_lists_stay);
  tcase_add_test (tests, a_part_that_is_told_of_where_it_balances_falls_short_of_nothing);
  tcase_add_test (tests, the_lists_follow_while_a_part_is_moved);
  tcase_add_test (tests, what_is_copied_has_a_line_each_row_and_signs_that_a_spreadsheet_reads);
  tcase_add_test (tests, rows_sort_by_a_figure_both_ways);
  tcase_add_test (tests, pressing_a_heading_sorts_then_turns_the_order_round_then_gives_the_lists_own);
  tcase_add_test (tests, a_name_sorts_by_the_alphabet);
  tcase_add_test (tests, a_way_is_told_with_its_side_and_copied_with_a_sign);
  tcase_add_test (tests, each_list_shares_out_the_whole_width);
  tcase_add_test (tests, a_heading_stands_over_its_column);
  tcase_add_test (tests, a_lead_is_told_with_its_length_what_it_needs_and_the_extension_to_buy);
  tcase_add_test (tests, an_empty_sheet_is_told_what_is_missing);
  return hand_run ("app panel lists", &tests, 1);
}
