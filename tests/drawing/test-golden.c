/* The sheets look as they did: files as they are exported, painted by other programs, beside pictures that were looked at and kept in golden/.
 * Where one differs, the new picture and the difference are put into TRAMMEL_GOLDEN_OUTPUT. `sh tests/update-expected BUILD` keeps new ones. */
#include <glib/gstdio.h>
#include <math.h>
#include <string.h>
#include "drawing/cutting-page.h"
#include "drawing/export-sheet.h"
#include "support/figures-once.h"
#include "support/ink-picture.h"
#include "support/pdf-words.h"
#include "support/pseudo-language.h"
#include "support/run-suite.h"
#include "support/sheets.h"

/* Shares of black. Thirty greys and another version of the painting library make 0.01; another painter, who draws letters as shapes, 0.027. A word
 * that is gone makes 0.04 or more, and so does one that is moved by 3 mm. */
static const double alike = 0.02, alike_by_another_painter = 0.032;

typedef struct {
  const char *name;
  Aeroplane *(*make) (void);
  ExportSheet sheet;
  const char *paper;
  bool portrait;
  int page;
} Golden;

static const Golden goldens[] = {
  { "racer-wall-a4",           example_racer,  EXPORT_WALL_SHEET,  "a4", false, 0 },
  { "racer-wall-a4-portrait",  example_racer,  EXPORT_WALL_SHEET,  "a4", true,  0 },
  { "tourer-wall-a3",          example_tourer, EXPORT_WALL_SHEET,  "a3", false, 0 },
  { "racer-template-a4",       example_racer,  EXPORT_TEMPLATE,    "a4", false, 0 },
  { "racer-template-a4-wing",  example_racer,  EXPORT_TEMPLATE,    "a4", false, 5 },
  { "tourer-template-a3",      example_tourer, EXPORT_TEMPLATE,    "a3", true,  0 },
  { "racer-parts-a4",          example_racer,  EXPORT_PARTS_SHEET, "a4", true,  0 },
  { "tourer-parts-a4",         example_tourer, EXPORT_PARTS_SHEET, "a4", true,  0 },
  { "racer-cutting",           example_racer,  EXPORT_CUTTING,     "a4", false, 0 },
};
enum { GOLDENS = G_N_ELEMENTS (goldens), RACER_WALL = 0, RACER_TEMPLATE = 4, RACER_PARTS = 6 };

/* A file for cutting has hairlines, too thin for a picture; the window shows it with broad ones, and that page is taken. */
static SheetPages *
golden_pages (const Golden *golden)
{
  ExportOptions options = export_default_options (golden->sheet == EXPORT_CUTTING ? "sheet.svg" : "sheet.pdf");
  Aeroplane *aeroplane = golden->make ();
  Figures *figures = figures_once (aeroplane);
  GError *error = NULL;
  SheetPages *pages;

  options.sheet = golden->sheet;
  options.portrait = golden->portrait;
  g_strlcpy (options.paper, golden->paper, sizeof options.paper);
  pages = golden->sheet == EXPORT_CUTTING ? cutting_page (figures, &options, &error) : sheet_pages_new (figures, &options, &error);
  ck_assert_msg (pages != NULL, "%s", error ? error->message : "");
  figures_unref (figures);
  aeroplane_unref (aeroplane);
  return pages;
}

/* Each as a document and as a drawing: laid out once, before the tests, since a wall sheet takes more than a second. */
static GBytes *documents[GOLDENS], *drawings[GOLDENS];

static void
export_all (void)
{
  for (int i = 0; i < GOLDENS; i++)
    {
      g_autoptr (SheetPages) pages = golden_pages (&goldens[i]);

      documents[i] = sheet_pdf (pages, NULL);
      drawings[i] = sheet_svg (pages, goldens[i].page, NULL);
    }
}

static void
forget_all (void)
{
  for (int i = 0; i < GOLDENS; i++)
    {
      g_bytes_unref (documents[i]);
      g_bytes_unref (drawings[i]);
    }
}

static char *
golden_path (const Golden *golden)
{
  g_autofree char *name = g_strconcat (golden->name, ".png", NULL);

  return g_build_filename (g_getenv ("TRAMMEL_SOURCE_ROOT"), "tests", "drawing", "golden", name, NULL);
}

/* Beside what the build's tests say; the path of the difference. */
static char *
keep_to_be_looked_at (const Golden *golden, const InkPicture *kept, const InkPicture *found)
{
  const char *folder = g_getenv ("TRAMMEL_GOLDEN_OUTPUT");
  g_autofree char *place = g_build_filename (folder != NULL ? folder : g_get_tmp_dir (), golden->name, NULL);
  g_autofree char *new_one = g_strconcat (place, ".png", NULL);
  char *difference = g_strconcat (place, "-difference.png", NULL);

  if (folder != NULL)
    g_mkdir_with_parents (folder, 0777);
  ink_save (found, new_one);
  ink_save_difference (kept, found, difference);
  return difference;
}

/* What still looks alike is left, so that a change touches the pictures it changes and no others. */
START_TEST (every_sheet_looks_as_it_did)
{
  const Golden *golden = &goldens[_i];
  g_autofree char *path = golden_path (golden);
  g_autoptr (InkPicture) found = ink_of_pdf (documents[_i], golden->page, NULL), kept = ink_load (path);
  const InkDifference difference = kept != NULL ? ink_compare (kept, found) : (InkDifference) { .most = 1 };
  g_autofree char *shown = NULL;

  if (difference.most <= alike)
    return;
  if (g_strcmp0 (g_getenv ("TRAMMEL_GOLDEN"), "renew") == 0)
    {
      ck_assert_msg (ink_save (found, path), "%s is not written", path);
      return;
    }
  ck_assert_msg (kept != NULL, "There is no picture %s; sh tests/update-expected BUILD makes it.", path);
  shown = keep_to_be_looked_at (golden, kept, found);
  ck_abort_msg ("%s looks otherwise, most of all %.0f mm from the left and %.0f mm from the top: by %.0f %% of black. Look at %s (gone is red, "
                "new is blue); if it is meant to, sh tests/update-expected BUILD keeps it.",
                golden->name, difference.where.x, difference.where.y, 100 * difference.most, shown);
}
END_TEST

START_TEST (the_kept_pictures_are_small)
{
  g_autofree char *path = golden_path (&goldens[_i]);
  GStatBuf about;

  ck_assert_int_eq (g_stat (path, &about), 0);
  ck_assert_int_lt (about.st_size, 60000);
}
END_TEST

START_TEST (a_drawing_looks_like_the_document)
{
  const Golden *golden = &goldens[_i];
  g_autoptr (InkPicture) one = ink_of_pdf (documents[_i], golden->page, NULL), other = ink_of_svg (drawings[_i]);
  const InkDifference difference = ink_compare (one, other);

  ck_assert_msg (difference.most <= alike_by_another_painter, "%s: %.0f, %.0f mm differ by %.3f of black", golden->name, difference.where.x,
                 difference.where.y, difference.most);
}
END_TEST

/* Some words of every part of a sheet; all of them are noticed, but to try each takes long. */
enum { EVERY_SO_MANY = 5 };
static const int kinds[] = { RACER_WALL, RACER_TEMPLATE, RACER_PARTS };

START_TEST (a_word_that_is_gone_or_moved_is_noticed)
{
  g_autoptr (GArray) words = NULL;
  g_autoptr (InkPicture) whole = ink_of_pdf (documents[kinds[_i]], goldens[kinds[_i]].page, &words);

  ck_assert_uint_gt (words->len, 50);
  for (guint i = 0; i < words->len; i += EVERY_SO_MANY)
    {
      const Box word = g_array_index (words, PdfWord, i).box;
      g_autoptr (InkPicture) gone = ink_moved (whole, word, 1000, 0), moved = ink_moved (whole, word, 0, 3);

      ck_assert_msg (ink_compare (whole, gone).most > alike, "the word at %.0f, %.0f mm may go unnoticed", word.min.x, word.min.y);
      ck_assert_msg (ink_compare (whole, moved).most > alike, "the word at %.0f, %.0f mm may move unnoticed", word.min.x, word.min.y);
    }
}
END_TEST

/* The wall sheet as a drawing, with these letters in it replaced. */
static InkPicture *
racer_with (const char *letters, const char *others)
{
  size_t length;
  const char *data = g_bytes_get_data (drawings[RACER_WALL], &length);
  g_autofree char *text = g_strndup (data, length);
  g_auto (GStrv) parts = g_strsplit (text, letters, -1);
  char *made = g_strjoinv (others, parts);
  g_autoptr (GBytes) altered = NULL;

  ck_assert_msg (g_strv_length (parts) > 1, "there is no %s in the drawing", letters);
  altered = g_bytes_new_take (made, strlen (made));
  return ink_of_svg (altered);
}

#define SHEET_GROUP "<g id=\"sheet\" transform=\"scale(0.1)\">"

START_TEST (lines_of_another_weight_are_noticed)
{
  static const struct { const char *was, *is; } weights[] = {
    { "stroke-width:0.5;", "stroke-width:0.35;" }, { "stroke-width:0.35;", "stroke-width:0.25;" },
    { "stroke-width:0.25;", "stroke-width:0.35;" }, { "stroke-width:0.18;", "stroke-width:0.25;" } };
  g_autoptr (InkPicture) whole = racer_with (SHEET_GROUP, SHEET_GROUP), other = racer_with (weights[_i].was, weights[_i].is);

  ck_assert_double_gt (ink_compare (whole, other).most, alike);
}
END_TEST

START_TEST (a_sheet_moved_by_a_hair_is_no_other)
{
  g_autoptr (InkPicture) whole = racer_with (SHEET_GROUP, SHEET_GROUP);
  g_autoptr (InkPicture) moved = racer_with (SHEET_GROUP, "<g id=\"sheet\" transform=\"translate(0.08 -0.05) scale(0.1)\">");

  ck_assert_double_lt (ink_compare (whole, moved).most, alike);
}
END_TEST

/* In every language: no word lies on another or leaves its page. */

static const Golden spoken[] = {
  { "racer's wall sheet on A4",           example_racer,  EXPORT_WALL_SHEET,  "a4", false, 0 },
  { "racer's wall sheet on A4, upright",  example_racer,  EXPORT_WALL_SHEET,  "a4", true,  0 },
  { "tourer's wall sheet on A2",          example_tourer, EXPORT_WALL_SHEET,  "a2", false, 0 },
  { "racer's template on A4",             example_racer,  EXPORT_TEMPLATE,    "a4", false, 0 },
  { "tourer's template on A2",            example_tourer, EXPORT_TEMPLATE,    "a2", false, 0 },
  { "racer's parts sheet on A4",          example_racer,  EXPORT_PARTS_SHEET, "a4", true,  0 },
  { "tourer's parts sheet on A2",         example_tourer, EXPORT_PARTS_SHEET, "a2", true,  0 },
};

/* What finds no room is cut, and ends in points. */
static bool
is_cut (const PdfWord *word)
{
  return g_str_has_suffix (word->text, "…") || g_str_has_suffix (word->text, "...");
}

/* All that is wrong is told, not the first of it. */
static void
check_words_apart (PopplerPage *page, GString *faults)
{
  g_autoptr (GArray) words = pdf_words (page);
  double width, height;

  poppler_page_get_size (page, &width, &height);
  for (guint i = 0; i < words->len; i++)
    {
      const PdfWord *word = &g_array_index (words, PdfWord, i);
      g_autofree char *place = g_strdup_printf ("page %d, %.0f, %.0f mm", poppler_page_get_index (page) + 1, word->box.min.x, word->box.min.y);

      if (word->box.min.x < 0 || word->box.min.y < 0 || word->box.max.x > width * 25.4 / 72 || word->box.max.y > height * 25.4 / 72)
        g_string_append_printf (faults, "%s: “%s” leaves the page\n", place, word->text);
      if (is_cut (word))
        g_string_append_printf (faults, "%s: “%s” is cut\n", place, word->text);
      for (guint j = 0; j < i; j++)
        if (pdf_words_meet (word, &g_array_index (words, PdfWord, j)))
          g_string_append_printf (faults, "%s: “%s” lies on “%s”\n", place, word->text, g_array_index (words, PdfWord, j).text);
    }
}

static void
check_pages_words_apart (const Golden *sheet, GBytes *bytes)
{
  g_autoptr (GString) faults = g_string_new (NULL);
  PopplerDocument *document = poppler_document_new_from_bytes (bytes, NULL, NULL);

  for (int i = 0; i < poppler_document_get_n_pages (document); i++)
    {
      PopplerPage *page = poppler_document_get_page (document, i);

      check_words_apart (page, faults);
      g_object_unref (page);
    }
  ck_assert_msg (faults->len == 0, "%s:\n%s", sheet->name, faults->str);
  g_object_unref (document);
}

START_TEST (no_word_lies_on_another_in_a_language_of_long_words)
{
  g_autoptr (SheetPages) pages = NULL;
  g_autoptr (GBytes) bytes = NULL;

  pseudo_language_speak (true);
  pages = golden_pages (&spoken[_i]);
  bytes = sheet_pdf (pages, NULL);
  pseudo_language_speak (false);
  check_pages_words_apart (&spoken[_i], bytes);
}
END_TEST

static char **languages;

START_TEST (no_word_lies_on_another_in_any_translation)
{
  const Golden *sheet = &spoken[_i % G_N_ELEMENTS (spoken)];
  const char *language = languages[_i / G_N_ELEMENTS (spoken)];
  g_autoptr (SheetPages) pages = NULL;
  g_autoptr (GBytes) bytes = NULL;

  ck_assert_msg (translation_speak (language), "the translation %s is not found, or does not give its own tag as its language", language);
  pages = golden_pages (sheet);
  bytes = sheet_pdf (pages, NULL);
  translation_speak (NULL);
  check_pages_words_apart (sheet, bytes);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("golden");
  int status;

  languages = translation_languages ();
  tcase_set_timeout (tests, 120);
  tcase_add_unchecked_fixture (tests, export_all, forget_all);
  tcase_add_loop_test (tests, every_sheet_looks_as_it_did, 0, GOLDENS);
  if (g_strcmp0 (g_getenv ("TRAMMEL_GOLDEN"), "renew") != 0)
    {
      tcase_add_loop_test (tests, the_kept_pictures_are_small, 0, GOLDENS);
      tcase_add_loop_test (tests, a_drawing_looks_like_the_document, 0, GOLDENS);
      tcase_add_loop_test (tests, a_word_that_is_gone_or_moved_is_noticed, 0, G_N_ELEMENTS (kinds));
      tcase_add_loop_test (tests, lines_of_another_weight_are_noticed, 0, 4);
      tcase_add_loop_test (tests, no_word_lies_on_another_in_a_language_of_long_words, 0, G_N_ELEMENTS (spoken));
      tcase_add_loop_test (tests, no_word_lies_on_another_in_any_translation, 0, G_N_ELEMENTS (spoken) * g_strv_length (languages));
      tcase_add_test (tests, a_sheet_moved_by_a_hair_is_no_other);
    }
  status = run_suite (suite_create ("drawing golden"), tests);
  g_strfreev (languages);
  return status;
}
