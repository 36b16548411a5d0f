#include <check.h>
#include <string.h>
#include "documents.h"
#include "support/run-suite.h"

#define HEAD "<aeroplane xmlns='urn:trammel:aeroplane' version='1'>"

static const struct { const char *text; ReaderError code; const char *sentence; } refused[] = {
  { "", READER_ERROR_FOREIGN, "text: the file is empty; take its backup, the same name with ~ behind it, or another copy" },
  { "\x89PNG\r\n\x1a\n....", READER_ERROR_FOREIGN, "text: this is a picture, not a Trammel document; open a file that ends in .trammel" },
  { "\xff\xd8\xff\xe0..JFIF", READER_ERROR_FOREIGN, "text: this is a picture, not a Trammel document; open a file that ends in .trammel" },
  { "<svg xmlns='http://www.w3.org/2000/svg'/>", READER_ERROR_FOREIGN,
    "text:1: this is a drawing (SVG), not a Trammel document; open a file that ends in .trammel" },
  { "<!DOCTYPE aeroplane>\n" HEAD "</aeroplane>", READER_ERROR_HOSTILE,
    "text:1: a document type declaration (<!DOCTYPE …>) is not read; take it out" },
  { "<?xml version='1.0'?>\n<!DOCTYPE a [<!ENTITY l 'ha'><!ENTITY m '&l;&l;&l;&l;'>]>\n<a>&m;</a>", READER_ERROR_HOSTILE,
    "text:2: a document type declaration (<!DOCTYPE …>) is not read; take it out" },
  { "\n<!DOCTYPE a [<!ENTITY f SYSTEM 'file:///etc/passwd'>]>\n<a>&f;</a>", READER_ERROR_HOSTILE,
    "text:2: a document type declaration (<!DOCTYPE …>) is not read; take it out" },
  { "<aeroplane xmlns='urn:trammel:aeroplane' version='2'><part mass='?'/></aeroplane>", READER_ERROR_NEWER,
    "text:1: this document is of version 2, and this program reads version 1; open it with a newer Trammel" },
  { "<aeroplane xmlns='urn:trammel:aeroplane'/>", READER_ERROR_VALUE, "text:1: <aeroplane> has no version; add version=\"1\"" },
  { "<aeroplane version='1'/>", READER_ERROR_FOREIGN,
    "text:1: <aeroplane> is in no namespace; add xmlns=\"urn:trammel:aeroplane\" to it" },
  { HEAD "<mark station='3'/>", READER_ERROR_BROKEN,
    "text:1: the file ends in the middle; take its backup, the same name with ~ behind it, or another copy" },
  { HEAD "\n<part id='a' mass='1' x='2'/>\n<part id='a' mass='1' x='3'/></aeroplane>", READER_ERROR_VALUE,
    "text:3: the id “a” is used already in line 2; write another" },
};

START_TEST (what_is_no_document_is_refused_with_one_sentence)
{
  g_autofree char *sentence = complaint_of (refused[_i].text, strlen (refused[_i].text), refused[_i].code);

  ck_assert_str_eq (sentence, refused[_i].sentence);
}
END_TEST

/* A document that repeats `piece` inside. */
static GString *
repeated (const char *before, const char *piece, int times, const char *behind)
{
  GString *text = g_string_new (before);

  for (int i = 0; i < times; i++)
    g_string_append (text, piece);
  return g_string_append (text, behind);
}

START_TEST (elements_may_be_nested_64_deep_and_no_deeper)
{
  for (int inner = 63; inner <= 64; inner++)
    {
      g_autofree char *closing = g_string_free (repeated ("", "</n>", inner, "</aeroplane>"), FALSE);
      GString *text = repeated (HEAD, "<n>", inner, closing);
      g_autoptr (Aeroplane) read = reader_read_data (text->str, text->len, "text", NULL, NULL);

      ck_assert_int_eq (read != NULL, inner == 63);
      g_string_free (text, TRUE);
    }
}
END_TEST

START_TEST (a_flood_of_attributes_is_refused)
{
  GString *text = repeated (HEAD "<mark station='1'", " a='1'", 100000, "/></aeroplane>");
  g_autofree char *sentence = complaint_of (text->str, text->len, READER_ERROR_HOSTILE);

  ck_assert_str_eq (sentence, "text:1: more than 128 attributes stand in one tag here; no document needs that, so nothing was read");
  g_string_free (text, TRUE);
}
END_TEST

/* A hundred declarations in each of seven elements that stand beside each other. */
START_TEST (namespaces_count_only_where_they_are_in_force)
{
  GString *one = repeated ("<n", "", 0, "");
  GString *text;
  g_autoptr (Aeroplane) read = NULL;

  for (int i = 0; i < 100; i++)
    g_string_append_printf (one, " xmlns:p%d='urn:x'", i);
  g_string_append (one, "/>");
  text = repeated (HEAD, one->str, 7, "</aeroplane>");
  read = read_bytes (text->str, text->len);
  ck_assert_uint_eq (aeroplane_count (read, PIECE_FOREIGN), 7);
  g_string_free (one, TRUE);
  g_string_free (text, TRUE);
}
END_TEST

/* Within an element of somebody else's they are mere text to us, which keeps this short. */
START_TEST (a_million_elements_are_read_and_no_more)
{
  for (int inner = 999998; inner <= 999999; inner++)
    {
      GString *text = repeated (HEAD "<n>", "<b/>", inner, "</n></aeroplane>");
      g_autoptr (Aeroplane) read = reader_read_data (text->str, text->len, "text", NULL, NULL);

      ck_assert_int_eq (read != NULL, inner == 999998);
      g_string_free (text, TRUE);
    }
}
END_TEST

START_TEST (more_than_64_MB_are_refused)
{
  const size_t length = 64 * 1024 * 1024 + 1;
  g_autofree char *text = g_strnfill (length, ' ');
  g_autofree char *sentence = NULL;

  memcpy (text, HEAD, strlen (HEAD));
  sentence = complaint_of (text, length, READER_ERROR_HOSTILE);
  ck_assert_str_eq (sentence, "text: this file is larger than 64 MB; no document needs that, so nothing was read");
}
END_TEST

START_TEST (at_most_20_problems_are_told_in_the_order_of_their_lines)
{
  GString *text = repeated (HEAD, "\n<mark station='?'/>", 37, "</aeroplane>");
  g_autoptr (GPtrArray) problems = g_ptr_array_new_with_free_func (g_free);

  ck_assert_ptr_null (reader_read_data (text->str, text->len, "text", problems, NULL));
  ck_assert_uint_eq (problems->len, 20);
  for (guint i = 0; i < problems->len; i++)
    {
      g_autofree char *place = g_strdup_printf ("text:%u: ", i + 2);

      ck_assert (g_str_has_prefix (g_ptr_array_index (problems, i), place));
    }
  g_string_free (text, TRUE);
}
END_TEST

/* On either side of 0.001 mm, along the axis, where the distance from the ellipse is the distance from its vertex. */
START_TEST (an_arc_may_miss_its_ellipse_by_a_thousandth_of_a_millimetre)
{
  static const struct { const char *y; bool read; } ends[] = { { "80.0009", true }, { "80.0011", false }, { "79.9991", true }, { "79.9989", false } };

  for (size_t i = 0; i < G_N_ELEMENTS (ends); i++)
    {
      g_autofree char *text = g_strdup_printf (HEAD "<surface role='fin'><outline><start x='10' y='0'/><arc cx='47' cy='0' rx='37' ry='80'"
                                               " x='47' y='%s'/><line x='60' y='0'/></outline></surface></aeroplane>", ends[i].y);
      g_autoptr (Aeroplane) read = reader_read_data (text, strlen (text), "text", NULL, NULL);

      ck_assert_msg ((read != NULL) == ends[i].read, "y = %s", ends[i].y);
    }
}
END_TEST

static const struct { const char *text, *says; } numbers[] = {
  { "nan", "not a number" }, { "inf", "not a number" }, { "-Infinity", "not a number" }, { "1e400", NULL },
  { "1,5", "a point for the decimals" }, { "1.5mm", "not a number" }, { "1.5 2", "not a number" }, { "0x1p3", "not a number" }, { "", NULL },
};

START_TEST (what_is_no_number_is_told_with_its_place)
{
  g_autofree char *text = g_strdup_printf (HEAD "\n<mark station='%s'/></aeroplane>", numbers[_i].text);
  g_autofree char *sentence = complaint_of (text, strlen (text), READER_ERROR_VALUE);

  ck_assert (g_str_has_prefix (sentence, "text:2: <mark>: station is “"));
  ck_assert_msg (!numbers[_i].says || strstr (sentence, numbers[_i].says), "%s", sentence);
}
END_TEST

static void
assert_unreadable (const char *path, const char *wanted)
{
  g_autofree char *sentence = g_strdup_printf ("%s: %s", path, wanted);
  g_autoptr (GError) error = NULL;

  ck_assert_ptr_null (reader_read_file (path, NULL, &error));
  ck_assert (g_error_matches (error, READER_ERROR, READER_ERROR_UNREADABLE));
  ck_assert_str_eq (error->message, sentence);
}

START_TEST (a_folder_and_a_missing_file_are_told)
{
  char *folder = folder_make ();
  g_autofree char *missing = g_build_filename (folder, "no.trammel", NULL);

  assert_unreadable (folder, "this is a folder; name a file in it");
  assert_unreadable (missing, "there is no such file; look at its name and folder");
  folder_remove (folder);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("reader");

  tcase_set_timeout (tests, 60);
  tcase_add_loop_test (tests, what_is_no_document_is_refused_with_one_sentence, 0, G_N_ELEMENTS (refused));
  tcase_add_test (tests, elements_may_be_nested_64_deep_and_no_deeper);
  tcase_add_test (tests, a_flood_of_attributes_is_refused);
  tcase_add_test (tests, namespaces_count_only_where_they_are_in_force);
  tcase_add_test (tests, a_million_elements_are_read_and_no_more);
  tcase_add_test (tests, more_than_64_MB_are_refused);
  tcase_add_test (tests, at_most_20_problems_are_told_in_the_order_of_their_lines);
  tcase_add_test (tests, an_arc_may_miss_its_ellipse_by_a_thousandth_of_a_millimetre);
  tcase_add_loop_test (tests, what_is_no_number_is_told_with_its_place, 0, G_N_ELEMENTS (numbers));
  tcase_add_test (tests, a_folder_and_a_missing_file_are_told);
  return run_suite (suite_create ("document reader"), tests);
}
