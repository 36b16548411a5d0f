#include <check.h>
#include <errno.h>
#include <locale.h>
#include <signal.h>
#include <stdio.h>
#include <string.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>
#include "documents.h"
#include "support/run-suite.h"

static void
run (const char *const command[])
{
  g_spawn_sync (NULL, (char **) command, NULL, G_SPAWN_SEARCH_PATH, NULL, NULL, NULL, NULL, NULL, NULL);
}

/* Decimal commas, other digits, and letters that change their case otherwise. */
static const char *const locales[][2] = { { "de_DE", "de_DE.UTF-8" }, { "ar_EG", "ar_EG.UTF-8" }, { "tr_TR", "tr_TR.UTF-8" } };

START_TEST (the_bytes_are_the_same_in_every_language)
{
  char *folder = folder_make ();
  g_autofree char *made = g_build_filename (folder, locales[_i][1], NULL);
  g_autoptr (Aeroplane) read = read_sample ("everything.trammel"), there = NULL;
  g_autofree char *written = writer_text (read, NULL), *written_there = NULL;

  run ((const char *const[]) { "localedef", "-i", locales[_i][0], "-f", "UTF-8", made, NULL });
  g_setenv ("LOCPATH", folder, TRUE);
  if (setlocale (LC_ALL, locales[_i][1]))
    {
      there = read_sample ("everything.trammel");
      written_there = writer_text (there, NULL);
      ck_assert (aeroplane_equal (read, there));
      ck_assert_str_eq (written_there, written);
    }
  else
    printf ("SKIPPED: there is no locale %s (package locales)\n", locales[_i][0]);
  setlocale (LC_ALL, "C");
  folder_remove (folder);
}
END_TEST

/* IEEE 754-2008, 5.12.2: 17 digits tell any double from its neighbours. */
START_TEST (numbers_come_back_to_the_last_digit)
{
  static const double stations[] = { 0.1, 1.0 / 3.0, 123.456789012345678, 9999999.999999998, 5e-324, 2.2250738585072014e-308, 70.80000000000001 };

  for (size_t i = 0; i < G_N_ELEMENTS (stations); i++)
    {
      Piece *pieces[] = { &mark_new (stations[i])->piece };
      g_autoptr (Aeroplane) made = aeroplane_from_pieces ((AeroplaneTraits) { .target = { 5, 15, 12 } }, pieces, 1), again = NULL;
      size_t length;
      g_autofree char *text = writer_text (made, &length);

      again = read_bytes (text, length);
      ck_assert (aeroplane_mark (again, 0)->station == stations[i]);
    }
}
END_TEST

/* Once each in the samples, at every level; none of it means anything here. */
static const struct { const char *sample, *kept; } survivors[] = {
  { "foreign-survives.trammel", "<?workshop sheet=\"3\"?>" },
  { "foreign-survives.trammel", "<!-- written by a later version -->" },
  { "foreign-survives.trammel", "generation=\"2\"" },
  { "foreign-survives.trammel", "w:shelf=\"top\"" },
  { "foreign-survives.trammel", "unit=\"percent\"" },
  { "foreign-survives.trammel", "gusts" },
  { "foreign-survives.trammel", "w:colour=\"cream &amp; red\"" },
  { "foreign-survives.trammel", "traced=\"by hand\"" },
  { "foreign-survives.trammel", "w:pin=\"1\"" },
  { "foreign-survives.trammel", "knots=\"4\"" },
  { "foreign-survives.trammel", "<!-- behind the last -->" },
  { "foreign-survives.trammel", "without a namespace" },
  { "foreign-survives.trammel", "wood=\"3/32\"" },
  { "foreign-survives.trammel", "<![CDATA[raw <kept> & so on]]>" },
  { "foreign-survives.trammel", "w:lock=\"yes\"" },
  { "foreign-survives.trammel", "clip=\"yes\"" },
  { "foreign-survives.trammel", "AAAA BBBB\nCCCC" },
  { "foreign-survives.trammel", "<!-- behind everything -->" },
  { "everything.trammel", "material=\"plywood\"" },
  { "everything.trammel", "<!-- formers of light ply -->" },
  { "everything.trammel", "<?workshop keep?>" },
};

START_TEST (what_belongs_to_somebody_else_survives_once_at_every_level)
{
  g_autoptr (Aeroplane) read = read_sample (survivors[_i].sample);
  g_autofree char *text = writer_text (read, NULL);
  const char *found = strstr (text, survivors[_i].kept);

  ck_assert_msg (found != NULL, "%s is lost", survivors[_i].kept);
  ck_assert_msg (!strstr (found + 1, survivors[_i].kept), "%s stands twice", survivors[_i].kept);
}
END_TEST

START_TEST (where_the_hatch_opens_is_read_and_written_where_it_is_chosen)
{
  g_autoptr (Aeroplane) chosen = read_sample ("everything.trammel"), open = read_elements ("<mark station='71.3'/>");
  g_autofree char *text = writer_text (chosen, NULL), *without = writer_text (open, NULL);

  ck_assert_int_eq (aeroplane_traits (chosen).hatch, HATCH_ON_BOTTOM);
  ck_assert_int_eq (aeroplane_traits (open).hatch, HATCH_NOT_CHOSEN);
  ck_assert_ptr_nonnull (strstr (text, " hatch=\"bottom\""));
  ck_assert_ptr_null (strstr (without, "hatch"));
}
END_TEST

START_TEST (pieces_keep_their_order)
{
  static const char *const order[] = { "station=\"71.3\"", "id=\"zebra\"", "<!-- between -->", "station=\"3.9\"", "id=\"ant\"" };
  g_autoptr (Aeroplane) read = read_elements ("<mark station='71.3'/><part id='zebra' mass='1.5' x='2'/><!-- between -->"
                                              "<mark station='3.9'/><part id='ant' mass='2.5' x='7'/>");
  g_autofree char *text = writer_text (read, NULL);
  const char *at = text;

  for (size_t i = 0; i < G_N_ELEMENTS (order); i++)
    ck_assert_msg ((at = strstr (at, order[i])) != NULL, "%s is not where it was", order[i]);
}
END_TEST

static void
put (const char *folder, const char *name, const char *text)
{
  g_autofree char *path = g_build_filename (folder, name, NULL);

  ck_assert (g_file_set_contents (path, text, -1, NULL));
}

static void
assert_holds (const char *folder, const char *name, const char *wanted)
{
  g_autofree char *path = g_build_filename (folder, name, NULL), *text = file_text (path, NULL);

  ck_assert_str_eq (text, wanted);
}

static void
assert_names (const char *folder, const char *wanted)
{
  g_autofree char *names = folder_names (folder);

  ck_assert_str_eq (names, wanted);
}

START_TEST (saving_keeps_permissions_and_the_file_before)
{
  char *folder = folder_make ();
  g_autofree char *path = g_build_filename (folder, "a.trammel", NULL), *wanted = NULL;
  g_autoptr (Aeroplane) made = read_elements ("<mark station='71.3'/>");
  struct stat after;

  wanted = writer_text (made, NULL);
  put (folder, "a.trammel", "before");
  put (folder, "a.trammel~", "long before");
  ck_assert_int_eq (chmod (path, 0640), 0);
  ck_assert (writer_save_file (made, path, NULL));
  ck_assert_int_eq (stat (path, &after), 0);
  ck_assert_uint_eq (after.st_mode & 07777, 0640);
  assert_holds (folder, "a.trammel", wanted);
  assert_holds (folder, "a.trammel~", "before");
  assert_names (folder, "a.trammel a.trammel~");
  folder_remove (folder);
}
END_TEST

START_TEST (saving_through_a_link_leaves_the_link)
{
  char *folder = folder_make ();
  g_autofree char *path = g_build_filename (folder, "link.trammel", NULL), *wanted = NULL;
  g_autoptr (Aeroplane) made = read_elements ("<mark station='71.3'/>");

  wanted = writer_text (made, NULL);
  put (folder, "real.trammel", "before");
  ck_assert_int_eq (symlink ("real.trammel", path), 0);
  ck_assert (writer_save_file (made, path, NULL));
  ck_assert (g_file_test (path, G_FILE_TEST_IS_SYMLINK));
  assert_holds (folder, "real.trammel", wanted);
  assert_holds (folder, "real.trammel~", "before");
  folder_remove (folder);
}
END_TEST

/* Whatever stands in the way: one sentence, the old file as it was, nothing beside it. */
static void
assert_refused (const char *folder, const char *name, const char *wanted)
{
  g_autofree char *path = g_build_filename (folder, name, NULL), *sentence = g_strdup_printf ("“%s” was not saved: %s", path, wanted);
  g_autoptr (Aeroplane) made = read_elements ("<mark station='71.3'/>");
  g_autoptr (GError) error = NULL;

  ck_assert (!writer_save_file (made, path, &error));
  ck_assert_str_eq (error->message, sentence);
}

START_TEST (a_disk_that_takes_no_more_leaves_the_old_file)
{
  char *folder = folder_make ();
  const struct rlimit small = { 20, RLIM_INFINITY };

  put (folder, "a.trammel", "before");
  signal (SIGXFSZ, SIG_IGN);
  ck_assert_int_eq (setrlimit (RLIMIT_FSIZE, &small), 0);
  assert_refused (folder, "a.trammel", "files as large as that are not allowed there. Save it in another folder.");
  ck_assert_int_eq (setrlimit (RLIMIT_FSIZE, &(struct rlimit) { RLIM_INFINITY, RLIM_INFINITY }), 0);
  assert_holds (folder, "a.trammel", "before");
  assert_names (folder, "a.trammel");
  folder_remove (folder);
}
END_TEST

START_TEST (a_folder_that_may_not_be_written_leaves_the_old_file)
{
  char *folder = folder_make ();

  put (folder, "a.trammel", "before");
  ck_assert_int_eq (chmod (folder, 0555), 0);
  if (access (folder, W_OK) == 0 && (chown (folder, 65534, 65534) < 0 || seteuid (65534) < 0))
    printf ("SKIPPED: this user may write everywhere\n");
  else
    assert_refused (folder, "b.trammel", "you may not write into that folder. Save it in another.");
  if (getuid () == 0)
    ck_assert_int_eq (seteuid (0), 0);
  assert_names (folder, "a.trammel");
  ck_assert_int_eq (chmod (folder, 0755), 0);
  folder_remove (folder);
}
END_TEST

START_TEST (a_name_that_cannot_be_is_told)
{
  char *folder = folder_make ();
  g_autofree char *long_name = g_strnfill (300, 'a');

  assert_refused (folder, "no/such.trammel", "there is no such folder. Save it in another.");
  assert_refused (folder, ".", "a folder has that name. Choose another name.");
  assert_refused (folder, long_name, "the name is too long. Choose a shorter one.");
  assert_names (folder, "");
  folder_remove (folder);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("writer");

  tcase_set_timeout (tests, 60);
  tcase_add_loop_test (tests, the_bytes_are_the_same_in_every_language, 0, G_N_ELEMENTS (locales));
  tcase_add_test (tests, numbers_come_back_to_the_last_digit);
  tcase_add_loop_test (tests, what_belongs_to_somebody_else_survives_once_at_every_level, 0, G_N_ELEMENTS (survivors));
  tcase_add_test (tests, where_the_hatch_opens_is_read_and_written_where_it_is_chosen);
  tcase_add_test (tests, pieces_keep_their_order);
  tcase_add_test (tests, saving_keeps_permissions_and_the_file_before);
  tcase_add_test (tests, saving_through_a_link_leaves_the_link);
  tcase_add_test (tests, a_disk_that_takes_no_more_leaves_the_old_file);
  tcase_add_test (tests, a_folder_that_may_not_be_written_leaves_the_old_file);
  tcase_add_test (tests, a_name_that_cannot_be_is_told);
  return run_suite (suite_create ("document writer"), tests);
}
