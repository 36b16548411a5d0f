#define _GNU_SOURCE
#include <check.h>
#include <fcntl.h>
#include <signal.h>
#include <string.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>
#include "documents.h"
#include "support/random.h"
#include "support/run-suite.h"

static void
put (const char *path, const char *text, mode_t mode)
{
  ck_assert (g_file_set_contents (path, text, -1, NULL));
  ck_assert_int_eq (chmod (path, mode), 0);
}

static void
assert_holds (const char *path, const char *wanted)
{
  g_autofree char *text = file_text (path, NULL);

  ck_assert_str_eq (text, wanted);
}

static void
assert_names (const char *folder, const char *wanted)
{
  g_autofree char *names = folder_names (folder);

  ck_assert_str_eq (names, wanted);
}

/* Saves the two in turn until it is killed. */
static void
save_for_ever (const char *path, const Aeroplane *const values[2])
{
  for (unsigned turn = 0; ; turn++)
    if (!writer_save_file (values[turn % 2], path, NULL))
      _exit (1);
}

static void
assert_is_one_of (const char *path, const Aeroplane *const values[2])
{
  g_autoptr (GError) error = NULL;
  g_autoptr (Aeroplane) read = reader_read_file (path, NULL, &error);

  ck_assert_msg (read != NULL, "%s", error ? error->message : "");
  ck_assert (aeroplane_equal (read, values[0]) || aeroplane_equal (read, values[1]));
}

/* Files without a name: most file systems have them, some networks' and older overlays do not. */
static bool
folder_has_nameless_files (const char *folder)
{
  const int file = open (folder, O_TMPFILE | O_WRONLY | O_CLOEXEC, 0600);

  if (file >= 0)
    close (file);
  return file >= 0;
}

/* Wherever the blow falls: the document is one of the two, whole, and nothing stands beside it but its backup. */
START_TEST (a_program_killed_while_it_saves_leaves_a_whole_document_and_nothing_else)
{
  char *folder = folder_make ();
  g_autofree char *path = g_build_filename (folder, "a.trammel", NULL);
  g_autoptr (Aeroplane) one = read_sample ("everything.trammel"), other = read_sample ("foreign-survives.trammel");
  const Aeroplane *const values[2] = { one, other };
  Random random = { 4711 };

  ck_assert (writer_save_file (one, path, NULL));
  for (int blow = 0; blow < 25; blow++)
    {
      const pid_t saver = fork ();
      g_autofree char *names = NULL;
      int status;

      if (saver == 0)
        save_for_ever (path, values);
      g_usleep (2000 + random_below (&random, 20000));
      ck_assert_int_eq (kill (saver, SIGKILL), 0);
      ck_assert_int_eq (waitpid (saver, &status, 0), saver);
      ck_assert_msg (WIFSIGNALED (status), "the saver ended by itself");
      assert_is_one_of (path, values);
      names = folder_names (folder);
      ck_assert_msg (strcmp (names, "a.trammel a.trammel~") == 0 || strcmp (names, "a.trammel") == 0
                     || !folder_has_nameless_files (folder), "left behind: %s", names);
    }
  folder_remove (folder);
}
END_TEST

/* full(4): every write to it fails as on a full disk. */
START_TEST (a_full_disk_is_spoken_of)
{
  g_autoptr (GError) error = NULL;

  ck_assert (!writer_replace_file ("/dev/full", "text", 4, false, &error));
  ck_assert_str_eq (error->message, "“/dev/full” was not saved: the disk is full. Make room on it, or save on another.");
}
END_TEST

START_TEST (a_device_is_written_to_and_not_replaced)
{
  struct stat after;

  ck_assert (writer_replace_file ("/dev/null", "text", 4, true, NULL));
  ck_assert_int_eq (stat ("/dev/null", &after), 0);
  ck_assert (S_ISCHR (after.st_mode));
}
END_TEST

START_TEST (a_file_that_is_write_protected_stays_as_it_is)
{
  char *folder = folder_make ();
  g_autofree char *path = g_build_filename (folder, "a.trammel", NULL), *wanted = NULL;
  g_autoptr (GError) error = NULL;
  const bool root = getuid () == 0;      /* who may write everything, so somebody else tries */

  put (path, "dear", 0444);
  ck_assert_int_eq (chmod (folder, 0777), 0);
  ck_assert (!root || seteuid (65534) == 0);
  ck_assert (!writer_replace_file (path, "new", 3, true, &error));
  ck_assert (!root || seteuid (0) == 0);
  wanted = g_strdup_printf ("“%s” was not saved: the file is write-protected. Save it under another name.", path);
  ck_assert_str_eq (error->message, wanted);
  assert_holds (path, "dear");
  assert_names (folder, "a.trammel");
  folder_remove (folder);
}
END_TEST

START_TEST (a_chain_of_links_is_followed_to_where_nothing_is_yet)
{
  char *folder = folder_make ();
  g_autofree char *first = g_build_filename (folder, "first", NULL), *second = g_build_filename (folder, "second", NULL);
  g_autofree char *end = g_build_filename (folder, "end.trammel", NULL);

  ck_assert_int_eq (symlink ("second", first), 0);
  ck_assert_int_eq (symlink (end, second), 0);
  ck_assert (writer_replace_file (first, "text", 4, true, NULL));
  assert_holds (end, "text");
  ck_assert (g_file_test (first, G_FILE_TEST_IS_SYMLINK) && g_file_test (second, G_FILE_TEST_IS_SYMLINK));
  assert_names (folder, "end.trammel first second");
  folder_remove (folder);
}
END_TEST

START_TEST (a_link_that_leads_round_in_a_circle_is_spoken_of)
{
  char *folder = folder_make ();
  g_autofree char *path = g_build_filename (folder, "round", NULL), *wanted = NULL;
  g_autoptr (GError) error = NULL;

  ck_assert_int_eq (symlink ("round", path), 0);
  ck_assert (!writer_replace_file (path, "text", 4, true, &error));
  wanted = g_strdup_printf ("“%s” was not saved: it is a link that leads nowhere. Save it under another name.", path);
  ck_assert_str_eq (error->message, wanted);
  assert_names (folder, "round");
  folder_remove (folder);
}
END_TEST

START_TEST (without_a_backup_there_is_none)
{
  char *folder = folder_make ();
  g_autofree char *path = g_build_filename (folder, "a.png", NULL);

  put (path, "before", 0600);
  ck_assert (writer_replace_file (path, "after", 5, false, NULL));
  assert_holds (path, "after");
  assert_names (folder, "a.png");
  folder_remove (folder);
}
END_TEST

START_TEST (a_backup_that_cannot_be_had_hinders_no_saving)
{
  char *folder = folder_make ();
  g_autofree char *path = g_build_filename (folder, "a.trammel", NULL), *backup = g_build_filename (folder, "a.trammel~", NULL);

  put (path, "before", 0600);
  ck_assert_int_eq (mkdir (backup, 0700), 0);
  ck_assert (writer_replace_file (path, "after", 5, true, NULL));
  assert_holds (path, "after");
  ck_assert (g_file_test (backup, G_FILE_TEST_IS_DIR));
  assert_names (folder, "a.trammel a.trammel~");
  folder_remove (folder);
}
END_TEST

START_TEST (a_new_file_has_the_permissions_that_are_usual_here)
{
  char *folder = folder_make ();
  g_autofree char *path = g_build_filename (folder, "a.trammel", NULL);
  struct stat after;

  umask (027);
  ck_assert (writer_replace_file (path, "text", 4, true, NULL));
  ck_assert_int_eq (stat (path, &after), 0);
  ck_assert_uint_eq (after.st_mode & 07777, 0640);
  folder_remove (folder);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("replace file");

  tcase_set_timeout (tests, 60);
  tcase_add_test (tests, a_program_killed_while_it_saves_leaves_a_whole_document_and_nothing_else);
  tcase_add_test (tests, a_full_disk_is_spoken_of);
  tcase_add_test (tests, a_device_is_written_to_and_not_replaced);
  tcase_add_test (tests, a_file_that_is_write_protected_stays_as_it_is);
  tcase_add_test (tests, a_chain_of_links_is_followed_to_where_nothing_is_yet);
  tcase_add_test (tests, a_link_that_leads_round_in_a_circle_is_spoken_of);
  tcase_add_test (tests, without_a_backup_there_is_none);
  tcase_add_test (tests, a_backup_that_cannot_be_had_hinders_no_saving);
  tcase_add_test (tests, a_new_file_has_the_permissions_that_are_usual_here);
  return run_suite (suite_create ("document replace file"), tests);
}
