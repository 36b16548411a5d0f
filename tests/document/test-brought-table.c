/* Tables of points: from a spreadsheet, a measuring arm, the clipboard. No standard says how; RFC 4180 gives the commonest form. */
#include "brought-read.h"
#include "support/run-suite.h"

/* Each is the same triangle: (0, 0), (12.5, 100), (80, 0). */
static const struct { const char *because, *text; bool unit_known; } tables[] = {
  { "commas", "0,0\n12.5,100\n80,0\n", false },
  { "commas with blanks", "0, 0\n12.5, 100\n80, 0\n", false },
  { "the ends of lines of RFC 4180", "0,0\r\n12.5,100\r\n80,0\r\n", false },
  { "no end of line at the end", "0,0\n12.5,100\n80,0", false },
  { "tabs, as a clipboard has them", "0\t0\n12.5\t100\n80\t0\n", false },
  { "blanks", "  0   0\n 12.5 100\n 80   0\n", false },
  { "semicolons", "0;0\n12.5;100\n80;0\n", false },
  { "a comma as the decimal sign, with semicolons", "0;0\n12,5;100\n80,0;0\n", false },
  { "a comma as the decimal sign, with tabs", "0\t0\n12,5\t100,0\n80\t0\n", false },
  { "a comma as the decimal sign, with blanks", "0,0 0,0\n12,5 100,0\n80,0 0,0\n", false },
  { "quoted, as RFC 4180 allows", "\"0\",\"0\"\n\"12.5\",\"100\"\n\"80\",\"0\"\n", false },
  { "further columns", "0,0,5\n12.5,100,5\n80,0,5\n", false },
  { "names of columns", "x,y\n0,0\n12.5,100\n80,0\n", false },
  { "a unit for each", "x (mm),y (mm)\n0,0\n12.5,100\n80,0\n", true },
  { "y first when it is named first", "y;x\n0;0\n100;12,5\n0;80\n", false },
  { "station first", "Station,x\n0,0\n100,12.5\n0,80\n", false },
  { "centimetres", "x [cm]\ty [cm]\n0\t0\n1.25\t10\n8\t0\n", true },
  { "metres", "x m;y m\n0;0\n0,0125;0,1\n0,08;0\n", true },
  { "inches", "x (in),y (in)\n0,0\n0.49212598425196852,3.9370078740157481\n3.1496062992125986,0\n", true },
  { "exponents", "0,0\n1.25e1,1E+2\n8e1,0\n", false },
  { "remarks and empty rows", "# a wing\n\nx,y\n0,0\n\n12.5,100\n# half-way\n80,0\n", false },
  { "a byte order mark", "\xEF\xBB\xBFx;y\n0;0\n12,5;100\n80;0\n", false },
};

START_TEST (a_table_is_read_however_it_is_written)
{
  Brought *read = brought_from (tables[_i].text);
  const BroughtLine *line = &read->lines[0];

  ck_assert_uint_eq (read->count, 1);
  ck_assert_msg (read->unit_known == tables[_i].unit_known, "%s", tables[_i].because);
  ck_assert_uint_eq (line->count, 2);
  ck_assert (!line->closed);
  assert_near (line->start, 0, 0, 1e-9);
  assert_near (brought_node (line, 1), 12.5, 100, 1e-9);
  assert_near (brought_node (line, 2), 80, 0, 1e-9);
  brought_free (read);
}
END_TEST

START_TEST (a_table_that_comes_back_to_its_first_place_is_closed)
{
  Brought *read = brought_from ("0,0\n12.5,100\n80,0\n0,0\n");

  ck_assert (read->lines[0].closed);
  ck_assert_uint_eq (read->lines[0].count, 3);
  brought_free (read);
}
END_TEST

static const struct { const char *because; BroughtError code; const char *text, *says; } refused[] = {
  { "words", BROUGHT_ERROR_FOREIGN, "0,0\n12.5,100\neighty,0\n", "drawing:3: “eighty,0”" },
  { "one number", BROUGHT_ERROR_FOREIGN, "0,0\n12.5\n80,0\n", "drawing:2: “12.5”" },
  { "not a number", BROUGHT_ERROR_FOREIGN, "0,0\nnan,5\n", "drawing:2:" },
  { "infinity", BROUGHT_ERROR_FOREIGN, "0,0\n1e999,5\n", "drawing:2:" },
  { "a number longer than any", BROUGHT_ERROR_FOREIGN, "0,0\n12.500000000000000000000000000000000000000000000001,100\n", "drawing:2:" },
  { "thousands parted", BROUGHT_ERROR_FOREIGN, "0;0\n1.234,5;100\n", "drawing:2:" },
  { "a heading alone", BROUGHT_ERROR_EMPTY, "x,y\n", "drawing:" },
  { "one point", BROUGHT_ERROR_EMPTY, "5,5\n", "drawing:" },
  { "the same point again", BROUGHT_ERROR_EMPTY, "5,5\n5,5\n", "drawing:" },
  { "nothing", BROUGHT_ERROR_EMPTY, "", "drawing:" },
  { "further than 10 m", BROUGHT_ERROR_VALUE, "0,0\n20000,5\n", "drawing:" },
  { "bytes that are no text", BROUGHT_ERROR_FOREIGN, "\xff\xfe\x80gibberish\n", "drawing:1:" },
};

START_TEST (a_table_that_cannot_be_read_names_the_row)
{
  g_autofree char *sentence = brought_refusal (refused[_i].text, refused[_i].code);

  ck_assert_msg (g_str_has_prefix (sentence, refused[_i].says) && g_utf8_validate (sentence, -1, NULL), "%s: %s", refused[_i].because,
                 sentence);
}
END_TEST

START_TEST (a_file_that_is_no_text_is_refused_by_name)
{
  const char picture[] = "\x89PNG\r\n\x1a\n\0\0\0\rIHDR";
  g_autoptr (GError) error = NULL;

  ck_assert_ptr_null (brought_read (picture, sizeof picture, "photo.png", &error));
  ck_assert (g_error_matches (error, BROUGHT_ERROR, BROUGHT_ERROR_FOREIGN));
  ck_assert (g_str_has_prefix (error->message, "photo.png: "));
}
END_TEST

START_TEST (a_file_larger_than_16_megabytes_is_refused_unread)
{
  const size_t length = 16 * 1024 * 1024 + 1;
  g_autofree char *text = g_strnfill (length, ' ');
  g_autoptr (GError) error = NULL;

  ck_assert_ptr_null (brought_read (text, length, "large.csv", &error));
  ck_assert (g_error_matches (error, BROUGHT_ERROR, BROUGHT_ERROR_VALUE));
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("brought table");

  tcase_add_loop_test (tests, a_table_is_read_however_it_is_written, 0, G_N_ELEMENTS (tables));
  tcase_add_test (tests, a_table_that_comes_back_to_its_first_place_is_closed);
  tcase_add_loop_test (tests, a_table_that_cannot_be_read_names_the_row, 0, G_N_ELEMENTS (refused));
  tcase_add_test (tests, a_file_that_is_no_text_is_refused_by_name);
  tcase_add_test (tests, a_file_larger_than_16_megabytes_is_refused_unread);
  return run_suite (suite_create ("brought table"), tests);
}
