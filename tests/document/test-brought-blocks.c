/* What a drawing draws once and shows in many places: blocks of a DXF, used elements of an SVG. */
#include <gio/gio.h>
#include "brought-read.h"
#include "support/run-suite.h"

#define DRAWING(inside) "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink' width='1000mm' height='1000mm' " \
                        "viewBox='0 0 1000 1000'>" inside "</svg>"
#define BLOCKS(blocks, entities) "0\nSECTION\n2\nBLOCKS\n" blocks "0\nENDSEC\n0\nSECTION\n2\nENTITIES\n" entities "0\nENDSEC\n0\nEOF\n"
#define BLOCK(name, inside) "0\nBLOCK\n8\n0\n2\n" name "\n10\n0\n20\n0\n" inside "0\nENDBLK\n"
#define INSERT(name) "0\nINSERT\n8\nA\n2\n" name "\n10\n0\n20\n0\n"
#define LINE "0\nLINE\n8\n0\n10\n0\n20\n0\n11\n10\n21\n0\n"

/* Whether some line of that name has exactly these corners, in the page's axes: x to the right, y up. */
static void
assert_drawn (const Brought *read, const char *name, const double corners[4][2])
{
  for (size_t i = 0; i < read->count; i++)
    {
      const BroughtLine *line = &read->lines[i];
      double most = line->count == 4 && g_strcmp0 (line->name, name) == 0 ? 0 : INFINITY;

      for (size_t k = 0; k < 4 && isfinite (most); k++)
        most = fmax (most, hypot (brought_node (line, k).y - corners[k][0], -brought_node (line, k).x - corners[k][1]));
      if (most < 1e-6)
        return;
    }
  ck_abort_msg ("no line of %s begins at (%g, %g)", name, corners[0][0], corners[0][1]);
}

static Brought *
drawing_of (const char *name)
{
  g_autofree char *path = g_build_filename (g_getenv ("TRAMMEL_SOURCE_ROOT"), "tests/document/drawings", name, NULL), *text = NULL;

  ck_assert (g_file_get_contents (path, &text, NULL, NULL));
  return brought_from (text);
}

/* The files were written by a general library for DXF, and so are these corners: by its own unfolding of the inserts. */
static const struct { const char *layer; double corners[4][2]; } unfolded[] = {
  { "ONE", { { 200, 100 }, { 200, 200 }, { 197, 200 }, { 197, 100 } } },
  { "LEFT", { { 0, 300 }, { 35.355339059, 264.644660941 }, { 39.597979746, 268.887301628 }, { 4.242640687, 304.242640687 } } },
  { "RIGHT", { { 70.710678119, 229.289321881 }, { 22.414386804, 242.230274136 }, { 23.967301075, 248.025829094 },
               { 72.263592389, 235.084876839 } } },
  { "GRID", { { 0, -200 }, { 50, -200 }, { 50, -194 }, { 0, -194 } } },
  { "GRID", { { 140, -180 }, { 190, -180 }, { 190, -174 }, { 140, -174 } } },
  { "BEHIND", { { 300, 0 }, { 253.015368961, 17.101007166 }, { 255.067489821, 22.739162891 }, { 302.05212086, 5.638155725 } } },
};

START_TEST (blocks_are_scaled_turned_mirrored_nested_and_set_in_rows)
{
  const char *const files[] = { "blocks-release-12.dxf", "blocks-release-2000.dxf" };
  Brought *read = drawing_of (files[_i]);

  ck_assert_uint_eq (read->count, 20);         /* ten ribs, each with a hole */
  ck_assert_uint_eq (read->left_out, 0);
  for (size_t i = 0; i < G_N_ELEMENTS (unfolded); i++)
    assert_drawn (read, unfolded[i].layer, unfolded[i].corners);
  brought_named (read, "HOLES");
  brought_free (read);
}
END_TEST

START_TEST (a_block_may_stand_behind_what_inserts_it_and_one_that_is_not_there_is_left_out)
{
  Brought *read = brought_from (BLOCKS (BLOCK ("OUTER", INSERT ("INNER")) BLOCK ("INNER", LINE), INSERT ("OUTER") INSERT ("NOWHERE")));

  ck_assert_uint_eq (read->count, 1);
  ck_assert_str_eq (read->lines[0].name, "A");
  ck_assert_uint_eq (read->left_out, 1);
  brought_free (read);
}
END_TEST

/* Each of twelve blocks inserts the next ten times, or itself: 10¹² lines, and no end. */
START_TEST (blocks_that_come_to_more_than_anybody_waits_for_are_cut_short)
{
  g_autoptr (GString) blocks = g_string_new (NULL);

  for (int i = 0; i < 12; i++)
    {
      g_string_append_printf (blocks, "0\nBLOCK\n8\n0\n2\nB%d\n10\n0\n20\n0\n", i);
      for (int k = 0; k < 10; k++)
        g_string_append_printf (blocks, "0\nINSERT\n8\nA\n2\nB%d\n10\n0\n20\n0\n", i + 1);
      g_string_append (blocks, "0\nENDBLK\n");
    }
  g_autofree char *text = g_strconcat ("0\nSECTION\n2\nBLOCKS\n", blocks->str, BLOCK ("SELF", LINE INSERT ("SELF") INSERT ("SELF")),
                                       "0\nENDSEC\n0\nSECTION\n2\nENTITIES\n", INSERT ("SELF") INSERT ("B0"), "0\nENDSEC\n0\nEOF\n", NULL);
  Brought *read = brought_from (text);
  ck_assert_uint_gt (read->left_out, 0);
  brought_free (read);
}
END_TEST

/* A thousand inserts of nothing, ninety thousand times: no line is drawn, and yet it would take its time. */
START_TEST (inserts_of_what_is_not_there_are_cut_short_too)
{
  g_autoptr (GString) nothing = g_string_new (NULL);

  for (int i = 0; i < 1000; i++)
    g_string_append (nothing, INSERT ("NOWHERE"));
  g_autofree char *text = g_strconcat ("0\nSECTION\n2\nBLOCKS\n0\nBLOCK\n8\n0\n2\nMANY\n10\n0\n20\n0\n", nothing->str,
                                       "0\nENDBLK\n0\nENDSEC\n0\nSECTION\n2\nENTITIES\n", LINE INSERT ("MANY"),
                                       "70\n300\n71\n300\n44\n1\n45\n1\n0\nENDSEC\n0\nEOF\n", NULL);
  Brought *read = brought_from (text);
  ck_assert_uint_eq (read->count, 1);
  ck_assert_uint_gt (read->left_out, 1000);
  ck_assert_uint_lt (read->left_out, 300000);
  brought_free (read);
}
END_TEST

/* SVG */

static const struct { const char *because, *shown, *plain; } same[] = {
  { "5.6: x and y move it behind its own transform", "<defs><path id='p' transform='scale(2)' d='M1 1L5 7'/></defs><use xlink:href='#p' x='10' y='20'/>",
    "<path d='M12 22L20 34'/>" },
  { "5.6: and the use's transform comes before both", "<defs><path id='p' d='M1 1L5 7'/></defs><use href='#p' x='10' transform='rotate(90)'/>",
    "<path d='M-1 11L-7 15'/>" },
  { "5.6: a group", "<g id='g' display='none'/><defs><g id='h' transform='translate(5 0)'><path d='M1 1L5 7'/></g></defs><use href='#h' y='3'/>",
    "<path d='M6 4L10 10'/>" },
  { "5.6: what uses what uses", "<defs><path id='p' d='M1 1L5 7'/><use id='q' href='#p' x='10'/></defs><use href='#q' y='100'/>",
    "<path d='M11 101L15 107'/>" },
  { "5.6.2: a symbol has a view box", "<symbol id='s' viewBox='0 0 10 10'><path d='M1 1L5 7'/></symbol><use href='#s' x='7' width='20' height='20'/>",
    "<path d='M9 2L17 14'/>" },
  { "9.2: a radius alone stands for both, and is no more than half a side", "<rect x='10' y='20' width='30' height='8' ry='9'/>",
    "<path d='M19 20H31A9 4 0 0 1 40 24A9 4 0 0 1 31 28H19A9 4 0 0 1 10 24A9 4 0 0 1 19 20'/>" },
  { "9.2: two radii", "<rect x='10' y='20' width='30' height='40' rx='5' ry='8'/>",
    "<path d='M15 20H35A5 8 0 0 1 40 28V52A5 8 0 0 1 35 60H15A5 8 0 0 1 10 52V28A5 8 0 0 1 15 20'/>" },
};

START_TEST (an_svg_s_use_and_round_corners_bring_the_lines_of_the_specification)
{
  g_autofree char *shown = g_strdup_printf (DRAWING ("%s"), same[_i].shown), *plain = g_strdup_printf (DRAWING ("%s"), same[_i].plain);
  Brought *one = brought_from (shown), *other = brought_from (plain);

  ck_assert_msg (one->count == 1 && one->left_out == 0, "%s", same[_i].because);
  ck_assert_msg (one->lines[0].count == other->lines[0].count, "%s", same[_i].because);
  for (size_t k = 0; k <= other->lines[0].count; k++)
    assert_near (brought_node (&one->lines[0], k), brought_node (&other->lines[0], k).x, brought_node (&other->lines[0], k).y, 1e-9);
  ck_assert_double_eq_tol (brought_line_length (&one->lines[0]), brought_line_length (&other->lines[0]), 1e-3);
  brought_free (one);
  brought_free (other);
}
END_TEST

START_TEST (a_use_of_nothing_or_of_another_file_is_left_out)
{
  Brought *read = brought_from (DRAWING ("<path d='M0 0L5 5'/><use href='#nowhere'/><use href='other.svg#p'/><use/>"));

  ck_assert_uint_eq (read->count, 1);
  ck_assert_uint_eq (read->left_out, 3);
  brought_free (read);
}
END_TEST

START_TEST (a_use_of_itself_and_very_many_uses_end)
{
  g_autoptr (GString) text = g_string_new ("<path d='M0 0L5 5'/><g id='u0'><use href='#u0'/><use href='#u1'/></g>");

  for (int i = 1; i < 40; i++)
    g_string_append_printf (text, "<g id='u%d'><use href='#u%d'/><use href='#u%d'/></g>", i, i + 1, i + 1);
  g_autofree char *whole = g_strdup_printf (DRAWING ("%s"), text->str);
  Brought *read = brought_from (whole);
  ck_assert_uint_gt (read->left_out, 0);
  brought_free (read);
}
END_TEST

/* Few uses, but each of something written so long that together they are longer than any file may be. */
START_TEST (uses_of_something_very_long_are_cut_short)
{
  g_autoptr (GString) text = g_string_new ("<path d='M0 0L5 5'/><defs><path id='p' d='M0 0' style='");

  for (int i = 0; i < 100000; i++)
    g_string_append (text, "a:b;");
  g_string_append (text, "'/></defs>");
  for (int i = 0; i < 100; i++)
    g_string_append (text, "<use href='#p'/>");
  g_autofree char *whole = g_strdup_printf (DRAWING ("%s"), text->str);
  Brought *read = brought_from (whole);
  ck_assert_uint_eq (read->count, 1);
  ck_assert_uint_gt (read->left_out, 0);
  brought_free (read);
}
END_TEST

/* How it is written */

static GBytes *
packed (const char *text)
{
  g_autoptr (GConverter) packing = G_CONVERTER (g_zlib_compressor_new (G_ZLIB_COMPRESSOR_FORMAT_GZIP, -1));
  guchar *bytes = g_malloc (4096);
  gsize read, written;

  ck_assert_int_eq (g_converter_convert (packing, text, strlen (text), bytes, 4096, G_CONVERTER_INPUT_AT_END, &read, &written, NULL),
                    G_CONVERTER_FINISHED);
  return g_bytes_new_take (bytes, written);
}

static void
assert_reads (const void *data, size_t length, double wanted)
{
  GError *error = NULL;
  Brought *read = brought_read (data, length, "drawing", &error);

  ck_assert_msg (read != NULL, "%s", error ? error->message : "");
  ck_assert_double_eq_tol (brought_line_length (&read->lines[0]), wanted, 1e-9);
  brought_free (read);
}

START_TEST (a_drawing_may_be_packed_or_in_utf_16_and_so_may_a_table)
{
  static const char text[] = "<?xml version='1.0' encoding='UTF-16'?>" DRAWING ("<path d='M0 0L30 40'/>");
  static const char table[] = "x\ty\n0\t0\n30\t40\n";
  g_autoptr (GBytes) bytes = packed (strstr (text, "<svg"));
  gsize size;

  assert_reads (g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes), 50);
  for (int i = 0; i < 2; i++)
    {
      g_autofree char *wide = g_convert (i ? table : text, -1, "UTF-16", "UTF-8", NULL, &size, NULL);
      assert_reads (wide, size, 50);
    }
}
END_TEST

START_TEST (what_is_packed_and_damaged_is_refused_in_one_sentence)
{
  g_autoptr (GBytes) bytes = packed (DRAWING ("<path d='M0 0L30 40'/>"));
  g_autoptr (GError) error = NULL;

  ck_assert_ptr_null (brought_read (g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes) - 20, "wing.svgz", &error));
  ck_assert_str_eq (error->message, "wing.svgz: this file is damaged; save it again in the program that drew it.");
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("brought blocks");

  tcase_set_timeout (tests, 60);
  tcase_add_loop_test (tests, blocks_are_scaled_turned_mirrored_nested_and_set_in_rows, 0, 2);
  tcase_add_test (tests, a_block_may_stand_behind_what_inserts_it_and_one_that_is_not_there_is_left_out);
  tcase_add_test (tests, blocks_that_come_to_more_than_anybody_waits_for_are_cut_short);
  tcase_add_test (tests, inserts_of_what_is_not_there_are_cut_short_too);
  tcase_add_loop_test (tests, an_svg_s_use_and_round_corners_bring_the_lines_of_the_specification, 0, G_N_ELEMENTS (same));
  tcase_add_test (tests, a_use_of_nothing_or_of_another_file_is_left_out);
  tcase_add_test (tests, a_use_of_itself_and_very_many_uses_end);
  tcase_add_test (tests, uses_of_something_very_long_are_cut_short);
  tcase_add_test (tests, a_drawing_may_be_packed_or_in_utf_16_and_so_may_a_table);
  tcase_add_test (tests, what_is_packed_and_damaged_is_refused_in_one_sentence);
  return run_suite (suite_create ("brought blocks"), tests);
}
