#include <check.h>
#include <string.h>
#include "document/documents.h"
#include "fuzz/fuzz-reader.h"
#include "support/random.h"
#include "support/run-suite.h"

/* The samples as they are and changed at random, the same way in every run. `test-mutations FILE…` reads those files alone. */

enum { MUTATIONS = 80, TOO_LONG = 16384 };

static GPtrArray *names;      /* of all samples, sorted; made once before the tests, read by each */

static const char *const tokens[] = {
  "<", ">", "/>", "\"", "'", "&", "&amp;", "&#0;", "&#x10FFFF;", "&lt;", "<!--", "-->", "<![CDATA[", "]]>", "<?p x?>", "<!DOCTYPE a>",
  " xmlns=\"\"", " xmlns:w=\"u\"", "<w:x/>", "<a:x/>", " id=\"wing\"", " x=\"1e308\"", " x=\"nan\"", "-", "9", "0", ".", "e", "\t", "\r\n",
  "\n", "\xc3\xbc", "\xff", "\xf0\x9f\x9b\xa9", "<note>", "</note>", "<target/>", "<mark station=\"1\"/>", "</aeroplane>", "<start x=\"0\" y=\"0\"/>",
  "<image>AAAA</image>", "=", "<straight>", "</straight>", "<at x=\"1\" y=\"2\"/>", "<plan>", "</plan>", " traced=\"wing-view\"",
};

static void
insert_token (Random *random, GString *text)
{
  g_string_insert (text, (gssize) random_below (random, text->len + 1), tokens[random_below (random, G_N_ELEMENTS (tokens))]);
}

static void
change_byte (Random *random, GString *text)
{
  if (text->len > 0)
    text->str[random_below (random, text->len)] ^= (char) (1 << random_below (random, 8));
}

static void
take_out (Random *random, GString *text)
{
  const size_t at = random_below (random, text->len + 1), length = random_below (random, 40);

  g_string_erase (text, (gssize) at, (gssize) MIN (text->len - at, length));
}

static void
repeat_piece (Random *random, GString *text)
{
  const size_t at = random_below (random, text->len + 1), length = random_below (random, 400);
  g_autofree char *piece = g_strndup (text->str + at, MIN (text->len - at, length));

  g_string_insert (text, (gssize) random_below (random, text->len + 1), piece);
}

static void
cut_short (Random *random, GString *text)
{
  g_string_truncate (text, random_below (random, text->len + 1));
}

/* Another digit for one that is there: what can still be read is reached that way more often than by any other. */
static void
change_digit (Random *random, GString *text)
{
  for (size_t at = random_below (random, text->len + 1); at < text->len; at++)
    if (g_ascii_isdigit (text->str[at]))
      {
        text->str[at] = (char) ('0' + random_below (random, 10));
        return;
      }
}

static void
mutate (Random *random, GString *text)
{
  static void (*const ways[]) (Random *, GString *) = {
    change_digit, change_digit, insert_token, insert_token, change_byte, take_out, repeat_piece, cut_short,
  };

  for (size_t times = 1 + random_below (random, 3); times > 0; times--)
    ways[random_below (random, G_N_ELEMENTS (ways))] (random, text);
}

START_TEST (no_change_to_a_sample_breaks_the_reader)
{
  g_autofree char *path = sample_path (g_ptr_array_index (names, _i)), *text = NULL;
  Random random = { 20260301 + (uint64_t) _i };
  size_t length;

  text = file_text (path, &length);
  LLVMFuzzerTestOneInput ((const uint8_t *) text, length);
  for (int i = 0; i < MUTATIONS && length <= TOO_LONG; i++)
    {
      GString *changed = g_string_new_len (text, (gssize) length);

      mutate (&random, changed);
      LLVMFuzzerTestOneInput ((const uint8_t *) changed->str, changed->len);
      g_string_free (changed, TRUE);
    }
}
END_TEST

/* Sorted, so that the changes are the same whatever order the folder has. */
static void
find_samples (void)
{
  g_autofree char *folder = samples_folder ();
  GDir *dir = g_dir_open (folder, 0, NULL);
  const char *name;

  names = g_ptr_array_new_with_free_func (g_free);
  while (dir && (name = g_dir_read_name (dir)))
    if (g_str_has_suffix (name, ".trammel"))
      g_ptr_array_add (names, g_strdup (name));
  if (dir)
    g_dir_close (dir);
  g_ptr_array_sort (names, name_compare);
}

START_TEST (there_are_samples_to_change)
{
  ck_assert_uint_gt (names->len, 60);
}
END_TEST

static int
replay (char *const paths[])
{
  for (; *paths; paths++)
    {
      g_autofree char *text = NULL;
      size_t length;

      if (!g_file_get_contents (*paths, &text, &length, NULL))
        return EXIT_FAILURE;
      LLVMFuzzerTestOneInput ((const uint8_t *) text, length);
    }
  return EXIT_SUCCESS;
}

int
main (int count, char *arguments[])
{
  TCase *tests = tcase_create ("mutations");
  int status;

  if (count > 1)
    return replay (arguments + 1);
  find_samples ();
  tcase_set_timeout (tests, 60);
  tcase_add_test (tests, there_are_samples_to_change);
  tcase_add_loop_test (tests, no_change_to_a_sample_breaks_the_reader, 0, (int) names->len);
  status = run_suite (suite_create ("document mutations"), tests);
  g_ptr_array_unref (names);
  return status;
}
