/* The lists in the panel: they follow what is dragged, choose on the sheet, sort, and are copied. */
#include <math.h>
#include <string.h>
#include "app/list-rows.h"
#include "document/changes.h"
#include "support/sheet-hand.h"

static const Units metric = { LENGTH_MM, MASS_G };

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
  g_autoptr (ListRows) rows = list_rows_new (trammel_session_figures (hand_session ()), metric, list);

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
  g_autoptr (ListRows) rows = list_rows_new (trammel_session_figures (hand_session ()), metric, REPORT_LIST_MOMENTS);
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
  g_autoptr (ListRows) rows = list_rows_new (trammel_session_figures (hand_session ()), metric, REPORT_LIST_MOMENTS);

  for (int descending = 0; descending < 2; descending++) {
    list_rows_sort (rows, 1, descending);
    for (guint i = 1; i < rows->rows->len; i++) {
      const double one = ((ListRow *) rows->rows->pdata[i - 1])->keys[1], other = ((ListRow *) rows->rows->pdata[i])->keys[1];
      ck_assert (descending ? one >= other : one <= other);
    }
  }
}
END_TEST

START_TEST (an_empty_sheet_is_told_what_is_missing)
{
  hand_begin_empty ();
  for (ReportList list = REPORT_LIST_GROUPS; list <= REPORT_LIST_MOVERS; list++) {
    g_autoptr (ListRows) rows = list_rows_new (trammel_session_figures (hand_session ()), metric, list);
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
  tcase_add_test (tests, the_lists_follow_while_a_part_is_moved);
  tcase_add_test (tests, what_is_copied_has_a_line_each_row_and_signs_that_a_spreadsheet_reads);
  tcase_add_test (tests, rows_sort_by_a_figure_both_ways);
  tcase_add_test (tests, an_empty_sheet_is_told_what_is_missing);
  return hand_run ("app panel lists", &tests, 1);
}
