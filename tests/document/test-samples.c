#include <check.h>
#include <string.h>
#include "documents.h"
#include "schema.h"
#include "support/run-suite.h"

/* samples/ holds documents by what they show. NAME.trammel can be read; NAME-invalid.trammel gives exactly the lines in
 * NAME-invalid.message. TRAMMEL_UPDATE=1 writes those files anew, and `git diff` is the review. */

static GPtrArray *valid, *invalid;      /* names of samples; found once before the tests, read by each */

static void
assert_comes_back (const char *path)
{
  g_autofree char *text = NULL, *written = NULL, *again_written = NULL;
  g_autoptr (Aeroplane) read = NULL, again = NULL;
  size_t length, written_length, again_length;
  Schema schema = schema_load ();

  text = file_text (path, &length);
  read = read_bytes (text, length);
  written = writer_text (read, &written_length);
  again = read_bytes (written, written_length);
  again_written = writer_text (again, &again_length);
  ck_assert_msg (schema_allows (&schema, text, length), "%s does not validate", path);
  ck_assert_msg (schema_allows (&schema, written, written_length), "%s does not validate once written", path);
  ck_assert_msg (aeroplane_equal (read, again), "%s comes back another", path);
  ck_assert_str_eq (written, again_written);
  ck_assert_uint_eq (strlen (written), written_length);
  schema_clear (&schema);
}

START_TEST (every_valid_sample_reads_validates_and_comes_back_equal)
{
  g_autofree char *path = sample_path (g_ptr_array_index (valid, _i));

  assert_comes_back (path);
}
END_TEST

START_TEST (the_examples_that_come_with_the_program_read_validate_and_come_back_equal)
{
  g_autofree char *folder = g_build_filename (g_getenv ("TRAMMEL_SOURCE_ROOT"), "data", "examples", NULL), *all = folder_names (folder);
  g_auto (GStrv) each = g_strsplit (all, " ", -1);
  int examples = 0;

  for (char **name = each; *name; name++)
    if (g_str_has_suffix (*name, ".trammel"))
      {
        g_autofree char *path = g_build_filename (folder, *name, NULL);

        assert_comes_back (path);
        examples++;
      }
  ck_assert_int_ge (examples, 2);
}
END_TEST

/* The folder's own place is not part of what is expected. */
static char *
problems_said (const char *path, const GPtrArray *problems)
{
  g_autofree char *folder = g_path_get_dirname (path);
  GString *said = g_string_new (NULL);

  for (guint i = 0; i < problems->len; i++)
    {
      const char *line = g_ptr_array_index (problems, i);

      ck_assert (g_str_has_prefix (line, folder));
      g_string_append_printf (said, "%s\n", line + strlen (folder) + 1);
    }
  return g_string_free (said, FALSE);
}

START_TEST (every_invalid_sample_gives_exactly_its_sentences)
{
  g_autofree char *path = sample_path (g_ptr_array_index (invalid, _i)), *said = NULL, *expected = NULL, *message = NULL;
  g_autoptr (GPtrArray) problems = g_ptr_array_new_with_free_func (g_free);
  g_autoptr (GError) error = NULL;

  ck_assert_ptr_null (reader_read_file (path, problems, &error));
  said = problems_said (path, problems);
  message = g_strdup_printf ("%.*s.message", (int) (strlen (path) - strlen (".trammel")), path);
  if (g_getenv ("TRAMMEL_UPDATE"))
    g_file_set_contents (message, said, -1, NULL);
  expected = file_text (message, NULL);
  ck_assert_str_eq (said, expected);
  ck_assert_uint_ge (problems->len, 1);
  ck_assert_uint_le (problems->len, 20);
  ck_assert_str_eq (error->message, g_ptr_array_index (problems, 0));
}
END_TEST

static void
find_samples (void)
{
  g_autofree char *folder = samples_folder ();
  GDir *dir = g_dir_open (folder, 0, NULL);
  const char *name;

  valid = g_ptr_array_new_with_free_func (g_free);
  invalid = g_ptr_array_new_with_free_func (g_free);
  while (dir && (name = g_dir_read_name (dir)))
    if (g_str_has_suffix (name, "-invalid.trammel"))
      g_ptr_array_add (invalid, g_strdup (name));
    else if (g_str_has_suffix (name, ".trammel"))
      g_ptr_array_add (valid, g_strdup (name));
  if (dir)
    g_dir_close (dir);
}

START_TEST (there_are_samples)
{
  ck_assert_uint_ge (valid->len, 11);
  ck_assert_uint_ge (invalid->len, 63);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("samples");
  int status;

  find_samples ();
  tcase_set_timeout (tests, 60);      /* the schema takes its time where every allocation is traced */
  tcase_add_test (tests, there_are_samples);
  tcase_add_loop_test (tests, every_valid_sample_reads_validates_and_comes_back_equal, 0, (int) valid->len);
  tcase_add_test (tests, the_examples_that_come_with_the_program_read_validate_and_come_back_equal);
  tcase_add_loop_test (tests, every_invalid_sample_gives_exactly_its_sentences, 0, (int) invalid->len);
  status = run_suite (suite_create ("document samples"), tests);
  g_ptr_array_unref (valid);
  g_ptr_array_unref (invalid);
  return status;
}
