/* Lists become files: from the menu of a list in the panel, and from the export dialog. */
#include "app/session.h"
#include "figures/report.h"
#include "support/stage.h"

static TrammelWindow *
racer (void)
{
  return stage_open (stage_example ("saltmarsh-racer", "racer.trammel"));
}

static void
assert_is_list (TrammelWindow *window, const char *path, ReportList list)
{
  g_autofree char *wanted = report_list_csv (trammel_session_figures (trammel_window_session (window)), list);
  g_autofree char *written = NULL;

  ck_assert (g_file_get_contents (path, &written, NULL, NULL));
  ck_assert_str_eq (written, wanted);
}

START_TEST (a_list_in_the_panel_is_saved_from_its_menu)
{
  TrammelWindow *window = racer ();
  const char *path = stage_path ("mine.csv");

  gui_click (gui_await (GTK_WIDGET (window), "Lists"));
  gui_click (gui_await (GTK_WIDGET (window), "Copy or save “What Moves the Balance”"));
  gui_click (gui_await (GTK_WIDGET (window), "Save as CSV…"));
  stage_choose ("Save List", path, true);
  gui_await (GTK_WIDGET (window), "Exported mine.csv");
  assert_is_list (window, path, REPORT_LIST_MOVERS);
}
END_TEST

static const struct { ReportList list; const char *line, *name; } lists[] = {
  { REPORT_LIST_PARTS,     NULL,                     "Saltmarsh Racer.csv" },
  { REPORT_LIST_GROUPS,    "Mass by Group",          "Saltmarsh Racer groups.csv" },
  { REPORT_LIST_MOMENTS,   "Moments",                "Saltmarsh Racer moments.csv" },
  { REPORT_LIST_MOVERS,    "What Moves the Balance", "Saltmarsh Racer movers.csv" },
  { REPORT_LIST_COVERINGS, "Coverings",              "Saltmarsh Racer coverings.csv" },
  { REPORT_LIST_LEADS,     "Leads",                  "Saltmarsh Racer leads.csv" },
  { REPORT_LIST_CUTTING,   "Cutting List",           "Saltmarsh Racer cutting.csv" },
  { REPORT_LIST_BEFORE_CLOSING, "Before Closing the Body", "Saltmarsh Racer before-closing.csv" },
  { REPORT_LIST_FORMERS, "Formers and Ribs", "Saltmarsh Racer formers.csv" },
};

/* Chooses as a hand does: opens the row's list and presses the line. */
START_TEST (the_export_dialog_writes_each_list_and_proposes_a_name_of_its_own)
{
  TrammelWindow *window = racer ();
  const char *path = stage_path ("list.csv");
  GtkWindow *dialog, *chooser;

  ck_assert_uint_eq (G_N_ELEMENTS (lists), REPORT_LIST_COUNT);
  gui_key ("<Control>e");
  dialog = gui_await_window ("Print or Export");
  gui_present (dialog);
  ck_assert_ptr_null (gui_find (GTK_WIDGET (dialog), "List"));
  stage_pick (dialog, "Format", "List (CSV)");
  if (lists[_i].line != NULL)
    stage_pick (dialog, "List", lists[_i].line);
  gui_click (gui_await (GTK_WIDGET (dialog), "Export…"));
  chooser = gui_await_window_type (GTK_TYPE_FILE_CHOOSER_DIALOG);
  ck_assert_str_eq (gtk_editable_get_text (GTK_EDITABLE (gui_find_type (GTK_WIDGET (chooser), GTK_TYPE_ENTRY))), lists[_i].name);
  stage_choose ("Export", path, true);
  gui_await (GTK_WIDGET (window), "Exported list.csv");
  assert_is_list (window, path, lists[_i].list);
}
END_TEST

static Suite *
lists_suite (void)
{
  Suite *suite = suite_create ("lists saved");
  TCase *tests = tcase_create ("files");

  tcase_add_checked_fixture (tests, stage_raise, stage_strike);
  tcase_set_timeout (tests, 60);
  tcase_add_test (tests, a_list_in_the_panel_is_saved_from_its_menu);
  tcase_add_loop_test (tests, the_export_dialog_writes_each_list_and_proposes_a_name_of_its_own, 0, G_N_ELEMENTS (lists));
  suite_add_tcase (suite, tests);
  return suite;
}

int
main (void)
{
  gui_begin ();
  return gui_run (lists_suite ());
}
