#include "document/journal.h"
#include <glib/gstdio.h>
#include <sys/wait.h>
#include <unistd.h>
#include "document/every-piece.h"
#include "document/writer.h"
#include "support/run-suite.h"

/* A folder of the test's own stands for the person's state folder; a child process that ends without a word is the crash. */
static char *folder, *document;

static void
set_up (void)
{
  folder = g_dir_make_tmp ("trammel-journal-XXXXXX", NULL);
  document = g_build_filename (folder, "Knot \"two\"\n.trammel", NULL);
  g_setenv ("XDG_STATE_HOME", folder, TRUE);
}

static void
tear_down (void)
{
  const char *const command[] = { "rm", "-r", folder, NULL };

  g_spawn_sync (NULL, (char **) command, NULL, G_SPAWN_SEARCH_PATH, NULL, NULL, NULL, NULL, NULL, NULL);
  g_clear_pointer (&folder, g_free);
  g_clear_pointer (&document, g_free);
}

static Aeroplane *
marked_at (double station)
{
  g_autoptr (Aeroplane) all = aeroplane_of_every_piece ();

  return aeroplane_with_replaced (all, aeroplane_piece (all, PIECE_MARK), &mark_new (station)->piece);
}

/* In a process that then dies: puts each station in turn. */
static void
crash_after_putting (const char *path, const double stations[], size_t count)
{
  const pid_t child = fork ();
  int status = -1;

  if (child == 0)
    {
      Journal *journal = journal_new (path);
      bool done = true;

      for (size_t i = 0; i < count; i++)
        done = journal_put (journal, marked_at (stations[i]), NULL) && done;
      _exit (done ? 0 : 1);
    }
  ck_assert_int_eq (waitpid (child, &status, 0), child);
  ck_assert_int_eq (status, 0);
}

static void
crash_at (double station)
{
  crash_after_putting (document, &station, 1);
}

static double
station_of (const Aeroplane *aeroplane)
{
  return aeroplane_mark (aeroplane, 0)->station;
}

START_TEST (the_last_value_put_survives_a_crash_whole)
{
  g_autoptr (GPtrArray) orphans = NULL;
  g_autoptr (Aeroplane) wanted = marked_at (33.7), found = NULL;
  const JournalEntry *entry;
  Journal *journal = NULL;
  g_autoptr (GError) error = NULL;

  crash_after_putting (document, (const double[]) { 31.1, 32.9, 33.7 }, 3);
  orphans = journal_list_orphans ();
  ck_assert_uint_eq (orphans->len, 1);
  entry = g_ptr_array_index (orphans, 0);
  ck_assert_str_eq (entry->path, document);
  ck_assert_str_eq (entry->name, "Reed Bunting");
  ck_assert_int_le (ABS (entry->time - g_get_real_time () / G_USEC_PER_SEC), 60);
  found = journal_recover (entry, &journal, &error);
  ck_assert_msg (found != NULL, "%s", error ? error->message : "");
  ck_assert (aeroplane_equal (found, wanted));
  journal_close (journal);
}
END_TEST

START_TEST (a_document_never_saved_has_no_path)
{
  g_autoptr (GPtrArray) orphans = NULL;

  crash_after_putting (NULL, (const double[]) { 31.1 }, 1);
  orphans = journal_list_orphans ();
  ck_assert_uint_eq (orphans->len, 1);
  ck_assert_ptr_null (((JournalEntry *) g_ptr_array_index (orphans, 0))->path);
}
END_TEST

START_TEST (what_a_running_program_holds_is_offered_to_nobody)
{
  Journal *journal = journal_new (document);
  g_autoptr (Aeroplane) aeroplane = marked_at (31.1);
  g_autoptr (GPtrArray) orphans = NULL;

  ck_assert (journal_put (journal, aeroplane, NULL));
  orphans = journal_list_orphans ();
  ck_assert_uint_eq (orphans->len, 0);
  journal_close (journal);
}
END_TEST

static size_t
file_count (void)
{
  g_autofree char *journals = g_build_filename (folder, "trammel", NULL);
  GDir *dir = g_dir_open (journals, 0, NULL);
  size_t count = 0;

  while (dir && g_dir_read_name (dir))
    count++;
  if (dir)
    g_dir_close (dir);
  return count;
}

START_TEST (closing_removes_the_file_and_leaving_keeps_it)
{
  Journal *closed = journal_new (document), *left = journal_new (NULL), *never_put = journal_new (NULL);
  g_autoptr (Aeroplane) aeroplane = marked_at (31.1);

  ck_assert_uint_eq (file_count (), 0);
  ck_assert (journal_put (closed, aeroplane, NULL) && journal_put (left, aeroplane, NULL) && journal_put (left, aeroplane, NULL));
  ck_assert_uint_eq (file_count (), 2);
  journal_close (closed);
  journal_close (never_put);
  journal_close (NULL);
  ck_assert_uint_eq (file_count (), 1);
  journal_leave (left);
  journal_leave (NULL);
  ck_assert_uint_eq (file_count (), 1);
}
END_TEST

/* Takes the first orphan up in a process that dies after one more change. */
static void
crash_again_after_recovering (double station)
{
  const pid_t child = fork ();
  int status = -1;

  if (child == 0)
    {
      GPtrArray *orphans = journal_list_orphans ();
      Journal *journal = NULL;
      const bool done = orphans->len == 1 && journal_recover (g_ptr_array_index (orphans, 0), &journal, NULL) != NULL
                        && (station == 0 || journal_put (journal, marked_at (station), NULL));

      _exit (done ? 0 : 1);
    }
  ck_assert_int_eq (waitpid (child, &status, 0), child);
  ck_assert_int_eq (status, 0);
}

static void
assert_recovers (double station)
{
  g_autoptr (GPtrArray) orphans = journal_list_orphans ();
  Journal *journal = NULL;
  g_autoptr (Aeroplane) found = NULL;

  ck_assert_uint_eq (orphans->len, 1);
  ck_assert_str_eq (((JournalEntry *) g_ptr_array_index (orphans, 0))->path, document);
  found = journal_recover (g_ptr_array_index (orphans, 0), &journal, NULL);
  ck_assert_ptr_nonnull (found);
  ck_assert (station_of (found) == station);
  journal_close (journal);
  ck_assert_uint_eq (file_count (), 0);
}

START_TEST (a_second_crash_right_after_the_first_loses_nothing)
{
  crash_at (31.9);
  crash_again_after_recovering (0);
  assert_recovers (31.9);
}
END_TEST

START_TEST (a_second_crash_after_more_work_keeps_that_work)
{
  crash_at (31.9);
  crash_again_after_recovering (36.3);
  assert_recovers (36.3);
}
END_TEST

START_TEST (what_was_taken_up_is_not_offered_twice)
{
  g_autoptr (GPtrArray) orphans = NULL, later = NULL;
  g_autoptr (Aeroplane) found = NULL;
  Journal *journal = NULL;

  crash_at (31.9);
  orphans = journal_list_orphans ();
  found = journal_recover (g_ptr_array_index (orphans, 0), &journal, NULL);
  later = journal_list_orphans ();
  ck_assert_uint_eq (later->len, 0);
  journal_close (journal);
}
END_TEST

START_TEST (no_orphan_goes_unseen)
{
  g_autoptr (Aeroplane) aeroplane = marked_at (40.1);
  Journal *other = journal_new (document);

  crash_at (31.9);
  crash_at (32.3);
  for (int i = 0; i < 3; i++)
    {
      g_autoptr (GPtrArray) orphans = journal_list_orphans ();

      ck_assert_uint_eq (orphans->len, 2);
    }
  ck_assert (journal_put (other, aeroplane, NULL));      /* of the same document, in this run */
  journal_close (other);
  ck_assert_uint_eq (file_count (), 2);
}
END_TEST

/* The number of a process that is gone may be another's by now: this test's own, which began later than in tick 1. */
START_TEST (a_process_of_the_same_number_is_not_taken_for_the_one_that_crashed)
{
  g_autofree char *path = g_build_filename (folder, "trammel", "left.journal", NULL), *within = g_path_get_dirname (path);
  g_autofree char *text = g_strdup_printf ("trammel-journal 1\nprocess=%d 1\ntime=1764000000\nname=Knot\n\n<aeroplane/>\n", getpid ());
  g_autoptr (GPtrArray) orphans = NULL;
  const JournalEntry *entry;

  ck_assert_int_eq (g_mkdir_with_parents (within, 0700), 0);
  ck_assert (g_file_set_contents (path, text, -1, NULL));
  orphans = journal_list_orphans ();
  ck_assert_uint_eq (orphans->len, 1);
  entry = g_ptr_array_index (orphans, 0);
  ck_assert_str_eq (entry->file, path);
  ck_assert_str_eq (entry->name, "Knot");
  ck_assert_ptr_null (entry->path);
  ck_assert_int_eq (entry->time, 1764000000);
}
END_TEST

START_TEST (the_documents_own_file_is_never_touched)
{
  g_autoptr (Aeroplane) saved = marked_at (30.3), found = NULL;
  g_autoptr (GPtrArray) orphans = NULL;
  g_autofree char *before = NULL, *after = NULL, *backup = g_strconcat (document, "~", NULL);
  Journal *journal = NULL;

  ck_assert (writer_save_file (saved, document, NULL));
  ck_assert (g_file_get_contents (document, &before, NULL, NULL));
  crash_at (36.7);
  orphans = journal_list_orphans ();
  found = journal_recover (g_ptr_array_index (orphans, 0), &journal, NULL);
  ck_assert (journal_put (journal, found, NULL));
  journal_close (journal);
  ck_assert (g_file_get_contents (document, &after, NULL, NULL));
  ck_assert_str_eq (before, after);
  ck_assert (!g_file_test (backup, G_FILE_TEST_EXISTS));
}
END_TEST

/* Someone else's file, a journal cut off by a full disk: both stay where they are. */
START_TEST (what_cannot_be_read_is_left_where_it_is)
{
  g_autofree char *text = NULL, *foreign = g_build_filename (folder, "trammel", "notes.journal", NULL);
  g_autoptr (GPtrArray) orphans = NULL;
  const JournalEntry *entry;
  Journal *journal = NULL;
  GError *error = NULL;
  gsize length;

  crash_at (31.9);
  ck_assert (g_file_set_contents (foreign, "Dear diary", -1, NULL));
  orphans = journal_list_orphans ();
  ck_assert_uint_eq (orphans->len, 1);
  entry = g_ptr_array_index (orphans, 0);
  ck_assert (g_file_get_contents (entry->file, &text, &length, NULL));
  ck_assert (g_file_set_contents (entry->file, text, (gssize) length - 40, NULL));
  ck_assert_ptr_null (journal_recover (entry, &journal, &error));
  ck_assert_ptr_nonnull (error);
  ck_assert_ptr_null (journal);
  ck_assert_uint_eq (file_count (), 2);
  g_error_free (error);
}
END_TEST

START_TEST (a_path_given_later_is_the_one_that_is_kept)
{
  Journal *journal = journal_new (NULL);
  g_autoptr (Aeroplane) aeroplane = marked_at (31.1);
  g_autoptr (GPtrArray) orphans = NULL;
  g_autofree char *text = NULL, *name = NULL, *file = NULL, *journals = g_build_filename (folder, "trammel", NULL);
  GDir *dir;

  journal_set_path (journal, "/home/someone/knot.trammel");
  ck_assert (journal_put (journal, aeroplane, NULL));
  dir = g_dir_open (journals, 0, NULL);
  name = g_strdup (g_dir_read_name (dir));
  g_dir_close (dir);
  file = g_build_filename (journals, name, NULL);
  ck_assert (g_file_get_contents (file, &text, NULL, NULL));
  ck_assert_ptr_nonnull (g_strstr_len (text, -1, "\npath=/home/someone/knot.trammel\n"));
  journal_close (journal);
}
END_TEST

START_TEST (a_folder_that_cannot_be_made_is_spoken_of)
{
  g_autofree char *in_the_way = g_build_filename (folder, "trammel", NULL);
  g_autoptr (Aeroplane) aeroplane = marked_at (31.1);
  Journal *journal = journal_new (NULL);
  GError *error = NULL;

  ck_assert (g_file_set_contents (in_the_way, "a file", -1, NULL));
  ck_assert (!journal_put (journal, aeroplane, &error));
  ck_assert_ptr_nonnull (error);
  ck_assert_ptr_nonnull (strstr (error->message, in_the_way));
  g_error_free (error);
  journal_leave (journal);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("journal");

  tcase_add_checked_fixture (tests, set_up, tear_down);
  tcase_add_test (tests, the_last_value_put_survives_a_crash_whole);
  tcase_add_test (tests, a_document_never_saved_has_no_path);
  tcase_add_test (tests, what_a_running_program_holds_is_offered_to_nobody);
  tcase_add_test (tests, closing_removes_the_file_and_leaving_keeps_it);
  tcase_add_test (tests, a_second_crash_right_after_the_first_loses_nothing);
  tcase_add_test (tests, a_second_crash_after_more_work_keeps_that_work);
  tcase_add_test (tests, what_was_taken_up_is_not_offered_twice);
  tcase_add_test (tests, no_orphan_goes_unseen);
  tcase_add_test (tests, a_process_of_the_same_number_is_not_taken_for_the_one_that_crashed);
  tcase_add_test (tests, the_documents_own_file_is_never_touched);
  tcase_add_test (tests, what_cannot_be_read_is_left_where_it_is);
  tcase_add_test (tests, a_path_given_later_is_the_one_that_is_kept);
  tcase_add_test (tests, a_folder_that_cannot_be_made_is_spoken_of);
  return run_suite (suite_create ("document journal"), tests);
}
