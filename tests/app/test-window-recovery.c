/* Work that a crash left over. The crash is real: another run of this very program puts work into a journal and ends at once. */
#include <glib/gstdio.h>
#include <string.h>
#include <unistd.h>
#include "document/journal.h"
#include "document/reader.h"
#include "app/strip.h"
#include "support/stage.h"

static const char *own_path;

/* In the other run: the racer without its battery, as work on the document at `path` ("-": never saved). */
static int
crash_with_work_on (const char *source, const char *path)
{
  Aeroplane *racer = reader_read_file (source, NULL, NULL);
  Journal *journal = journal_new (g_str_equal (path, "-") ? NULL : path);
  Aeroplane *work = aeroplane_without_dependents (racer, aeroplane_find (racer, "battery"));

  if (g_str_has_suffix (source, "nameless.trammel"))
    work = aeroplane_with_traits (work, (AeroplaneTraits) { .target = aeroplane_traits (work).target });
  _exit (journal_put (journal, work, NULL) ? 0 : 1);
}

static void
leave_work_of (const char *copy, const char *path)
{
  const char *source = stage_example ("saltmarsh-racer", copy);
  const char *argv[] = { own_path, "--crash", source, path == NULL ? "-" : path, NULL };
  int status = -1;

  ck_assert (g_spawn_sync (NULL, (char **) argv, NULL, G_SPAWN_DEFAULT, NULL, NULL, NULL, NULL, &status, NULL));
  ck_assert_int_eq (status, 0);
}

static void
leave_work (const char *path)
{
  leave_work_of ("source.trammel", path);
}

static guint
orphan_count (void)
{
  g_autoptr (GPtrArray) orphans = journal_list_orphans ();

  return orphans->len;
}

static char *
journal_folder (void)
{
  return g_build_filename (g_get_user_state_dir (), "trammel", NULL);
}

/* Nothing of one test is left to be found by the next; those of this very program are no orphans. */
static void
raise_stage (void)
{
  g_autofree char *folder = journal_folder ();
  g_autoptr (GDir) dir = g_dir_open (folder, 0, NULL);
  const char *name;

  stage_raise ();
  while (dir != NULL && (name = g_dir_read_name (dir)) != NULL) {
    g_autofree char *file = g_build_filename (folder, name, NULL);
    g_unlink (file);
  }
}

static bool
has_battery (TrammelWindow *window)
{
  return aeroplane_part_by_id (stage_aeroplane (window), "battery") != NULL;
}

static GtkWidget *
strip_button (TrammelWindow *window, const char *label)
{
  return gui_await (gui_find_type (GTK_WIDGET (window), TRAMMEL_TYPE_STRIP), label);
}

START_TEST (work_on_a_saved_document_comes_back_over_it_as_one_step)
{
  const char *path = stage_example ("saltmarsh-racer", "racer.trammel");
  TrammelWindow *window;
  g_autoptr (Aeroplane) on_disk = NULL;

  leave_work (path);
  window = stage_open (NULL);
  stage_await_strip (window, "Unsaved work on “Saltmarsh Racer” was found");
  gui_click (strip_button (window, "Restore"));
  ck_assert_ptr_eq (stage_window ("Saltmarsh Racer"), window);
  stage_await_state (window, "Edited");
  ck_assert (!has_battery (window));
  on_disk = stage_read (path);
  ck_assert_ptr_nonnull (aeroplane_part_by_id (on_disk, "battery"));
  gui_key ("<Control>z");
  ck_assert (has_battery (window));
  ck_assert_str_eq (stage_state (window), "");
}
END_TEST

START_TEST (work_without_a_name_is_told_by_its_file)
{
  leave_work_of ("nameless.trammel", stage_path ("half-done.trammel"));
  stage_await_strip (stage_open (NULL), "Unsaved work on “half-done.trammel” was found");
}
END_TEST

START_TEST (work_without_name_and_file_is_said_to_have_none)
{
  leave_work_of ("nameless.trammel", NULL);
  stage_await_strip (stage_open (NULL), "Unsaved work on an aeroplane without a name was found");
}
END_TEST

START_TEST (work_never_saved_comes_back_as_not_yet_saved)
{
  TrammelWindow *window;

  leave_work (NULL);
  window = stage_open (NULL);
  gui_click (strip_button (window, "Restore"));
  stage_window ("Saltmarsh Racer");
  ck_assert_str_eq (stage_state (window), "Not yet saved");
  ck_assert_ptr_null (trammel_session_path (trammel_window_session (window)));
}
END_TEST

START_TEST (work_whose_document_is_gone_comes_back_all_the_same)
{
  const char *path = stage_example ("saltmarsh-racer", "racer.trammel");
  TrammelWindow *window;

  leave_work (path);
  ck_assert_int_eq (g_unlink (path), 0);
  window = stage_open (NULL);
  gui_click (strip_button (window, "Restore"));
  stage_window ("Saltmarsh Racer");
  ck_assert_str_eq (stage_state (window), "Not yet saved");
}
END_TEST

static bool
no_orphans (gpointer nothing)
{
  return orphan_count () == 0;
}

START_TEST (discarding_is_asked_about_and_cancel_keeps_the_work)
{
  TrammelWindow *window;

  leave_work (NULL);
  window = stage_open (NULL);
  gui_click (strip_button (window, "Discard…"));
  gui_click (stage_answer ("Discard Unsaved Work?", "Cancel"));
  ck_assert_uint_eq (orphan_count (), 1);
  gui_click (strip_button (window, "Discard…"));
  gui_click (stage_answer ("Discard Unsaved Work?", "Discard"));
  ck_assert (gui_wait (no_orphans, NULL));
}
END_TEST

START_TEST (two_crashes_are_offered_one_after_the_other_each_in_its_window)
{
  TrammelWindow *window;

  leave_work (NULL);
  leave_work (NULL);
  window = stage_open (NULL);
  gui_click (strip_button (window, "Restore"));
  stage_window ("Saltmarsh Racer");
  stage_await_strip (window, "was found");
  ck_assert_uint_eq (orphan_count (), 1);
  gui_click (strip_button (window, "Restore"));
  ck_assert (gui_wait (no_orphans, NULL));
  ck_assert_int_eq (stage_window_count (), 2);
}
END_TEST

START_TEST (work_not_answered_for_is_offered_again_at_the_next_start)
{
  leave_work (NULL);
  stage_open (NULL);
  gui_key ("<Control>w");
  gui_settle ();
  ck_assert_uint_eq (orphan_count (), 1);
}
END_TEST

START_TEST (a_document_named_at_the_start_does_not_hide_the_offer)
{
  TrammelWindow *window;

  leave_work (NULL);
  window = stage_open (stage_example ("heron-tourer", "heron.trammel"));
  stage_await_strip (window, "was found");
  gui_click (strip_button (window, "Restore"));
  ck_assert_ptr_ne (stage_window ("Saltmarsh Racer"), window);
  ck_assert_str_eq (gtk_window_get_title (GTK_WINDOW (window)), "Heron Tourer");
}
END_TEST

START_TEST (an_error_told_meanwhile_gives_way_to_the_offer_again)
{
  TrammelWindow *window;

  leave_work (NULL);
  window = stage_open (NULL);
  stage_await_strip (window, "was found");
  trammel_window_tell (window, "Something else.");
  gui_click (strip_button (window, "Close"));
  stage_await_strip (window, "was found");
}
END_TEST

/* The journal of a running program: not an orphan, so it is found by its file. */
static int
journal_files (void)
{
  g_autofree char *folder = journal_folder ();
  g_autoptr (GDir) dir = g_dir_open (folder, 0, NULL);
  const char *name;
  int count = 0;

  while (dir != NULL && (name = g_dir_read_name (dir)) != NULL)
    count += g_str_has_suffix (name, ".journal") ? 1 : 0;
  return count;
}

static bool
one_journal (gpointer nothing)
{
  return journal_files () == 1;
}

static bool
no_journal (gpointer nothing)
{
  return journal_files () == 0;
}

static void
take_battery_out (TrammelWindow *window)
{
  trammel_session_select (trammel_window_session (window), selection_of ("battery"));
  gtk_widget_grab_focus (gui_await (GTK_WIDGET (window), "Sheet"));
  gui_settle ();
  gui_key ("Delete");
}

START_TEST (a_step_is_in_the_journal_within_two_seconds_and_gone_when_saved)
{
  TrammelWindow *window = stage_open (stage_example ("saltmarsh-racer", "racer.trammel"));
  gint64 begun;

  ck_assert_int_eq (journal_files (), 0);
  take_battery_out (window);
  begun = g_get_monotonic_time ();
  ck_assert (gui_wait (one_journal, NULL));
  ck_assert_int_le (g_get_monotonic_time () - begun, 2 * G_USEC_PER_SEC);
  gui_key ("<Control>s");
  stage_await_state (window, "");
  ck_assert (gui_wait (no_journal, NULL));
}
END_TEST

START_TEST (discarding_changes_when_closing_leaves_no_journal)
{
  TrammelWindow *window = stage_open (stage_example ("saltmarsh-racer", "racer.trammel"));

  take_battery_out (window);
  ck_assert (gui_wait (one_journal, NULL));
  gui_key ("<Control>w");
  gui_click (stage_answer ("Save Changes?", "Discard"));
  ck_assert (gui_wait (no_journal, NULL));
}
END_TEST

int
main (int argc, char **argv)
{
  Suite *suite = suite_create ("window-recovery");
  TCase *tests = tcase_create ("recovery");

  if (argc == 4 && g_str_equal (argv[1], "--crash"))
    return crash_with_work_on (argv[2], argv[3]);
  own_path = argv[0];
  gui_begin ();
  tcase_set_timeout (tests, 120);
  tcase_add_checked_fixture (tests, raise_stage, stage_strike);
  tcase_add_test (tests, work_on_a_saved_document_comes_back_over_it_as_one_step);
  tcase_add_test (tests, work_without_a_name_is_told_by_its_file);
  tcase_add_test (tests, work_without_name_and_file_is_said_to_have_none);
  tcase_add_test (tests, work_never_saved_comes_back_as_not_yet_saved);
  tcase_add_test (tests, work_whose_document_is_gone_comes_back_all_the_same);
  tcase_add_test (tests, discarding_is_asked_about_and_cancel_keeps_the_work);
  tcase_add_test (tests, two_crashes_are_offered_one_after_the_other_each_in_its_window);
  tcase_add_test (tests, work_not_answered_for_is_offered_again_at_the_next_start);
  tcase_add_test (tests, a_document_named_at_the_start_does_not_hide_the_offer);
  tcase_add_test (tests, an_error_told_meanwhile_gives_way_to_the_offer_again);
  tcase_add_test (tests, a_step_is_in_the_journal_within_two_seconds_and_gone_when_saved);
  tcase_add_test (tests, discarding_changes_when_closing_leaves_no_journal);
  suite_add_tcase (suite, tests);
  return gui_run (suite);
}
