/* The parts sheet as a PDF, read back by a library that other programs read PDFs with. Paper: ISO 216, ANSI/ASME Y14.1. */
#include <check.h>
#include <math.h>
#include <poppler.h>
#include <string.h>
#include "document/reader.h"
#include "drawing/export.h"
#include "drawing/sheet-pages.h"
#include "drawing/wall-sheet-parts.h"
#include "figures/before-closing.h"
#include "figures/cautions.h"
#include "figures/cutting-list.h"
#include "figures/names.h"
#include "support/figures-once.h"
#include "support/run-suite.h"
#include "support/sheets.h"

static const double mm = 72 / 25.4;      /* in points */

static ExportOptions
parts_on (const char *paper)
{
  ExportOptions options = export_default_options ("parts.pdf");

  options.sheet = EXPORT_PARTS_SHEET;
  g_strlcpy (options.paper, paper, sizeof options.paper);
  return options;
}

static PopplerDocument *
document_of (Aeroplane *takes, ExportOptions options)
{
  g_autoptr (Aeroplane) any_day = takes, aeroplane = aeroplane_with_changed (any_day, "2026-11-25");
  g_autoptr (Figures) figures = figures_once (aeroplane);
  GError *error = NULL;
  g_autoptr (GBytes) bytes = export_bytes (figures, &options, &error);

  ck_assert_msg (bytes != NULL, "%s", error ? error->message : "");
  PopplerDocument *document = poppler_document_new_from_bytes (bytes, NULL, &error);
  ck_assert_msg (document != NULL, "%s", error ? error->message : "");
  return document;
}

/* Letters alone: lines may break anywhere between words, and inside words too long for any line. */
static char *
letters_of (const char *text)
{
  GString *made = g_string_new (NULL);

  for (; *text != '\0'; text = g_utf8_next_char (text))
    {
      const gunichar letter = g_utf8_get_char (text);

      if (!g_unichar_isspace (letter) && letter != 0x200A)
        g_string_append_unichar (made, letter);
    }
  return g_string_free (made, FALSE);
}

static char *
page_words (PopplerDocument *document, int page)
{
  PopplerPage *of = poppler_document_get_page (document, page);
  char *text = poppler_page_get_text (of);

  g_object_unref (of);
  return text;
}

static char *
all_words (PopplerDocument *document)
{
  GString *made = g_string_new (NULL);

  for (int i = 0; i < poppler_document_get_n_pages (document); i++)
    {
      g_autofree char *text = page_words (document, i);

      g_string_append (made, text);
      g_string_append_c (made, '\n');
    }
  return g_string_free (made, FALSE);
}

/* How often the page says that, whatever the lines. */
static int
count_of (const char *text, const char *wanted)
{
  g_autofree char *letters = letters_of (text), *of = letters_of (wanted);
  int count = 0;

  for (const char *at = letters; (at = strstr (at, of)) != NULL; at += strlen (of))
    count++;
  return count;
}

static void
assert_says (const char *text, const char *wanted)
{
  ck_assert_msg (count_of (text, wanted) > 0, "“%s” is not on\n%.1500s", wanted, text);
}

/* Upright, whatever the options say of it; sizes by the standards, in mm. */
static const struct { const char *paper; double width, height; } papers[] = {
  { "a4", 210, 297 }, { "a3", 297, 420 }, { "a2", 420, 594 }, { "a1", 594, 841 }, { "a0", 841, 1189 }, { "letter", 215.9, 279.4 },
  { "tabloid", 279.4, 431.8 }, { "ansi-c", 431.8, 558.8 }, { "ansi-d", 558.8, 863.6 } };

START_TEST (each_page_has_the_paper_s_size_upright)
{
  PopplerDocument *document = document_of (example_racer (), parts_on (papers[_i].paper));

  for (int i = 0; i < poppler_document_get_n_pages (document); i++)
    {
      PopplerPage *page = poppler_document_get_page (document, i);
      double width, height;

      poppler_page_get_size (page, &width, &height);
      ck_assert_double_eq_tol (width / mm, papers[_i].width, 0.01);
      ck_assert_double_eq_tol (height / mm, papers[_i].height, 0.01);
      g_object_unref (page);
    }
  g_object_unref (document);
}
END_TEST

/* Ink on the paper's margins, which no printer reaches: the page drawn at 4 px a mm, 9 mm all round. */
static void
assert_margins_are_empty (PopplerPage *page, const char *what)
{
  const double scale = 4, margin = 9;
  double width, height;

  poppler_page_get_size (page, &width, &height);
  const int across = (int) (width / mm * scale), down = (int) (height / mm * scale), edge = (int) (margin * scale);
  cairo_surface_t *surface = cairo_image_surface_create (CAIRO_FORMAT_A8, across, down);
  cairo_t *cr = cairo_create (surface);
  cairo_scale (cr, scale / mm, scale / mm);
  poppler_page_render_for_printing (page, cr);
  cairo_destroy (cr);
  cairo_surface_flush (surface);
  const unsigned char *pixels = cairo_image_surface_get_data (surface);
  const int stride = cairo_image_surface_get_stride (surface);
  int inked = 0, all = 0;
  for (int y = 0; y < down; y++)
    for (int x = 0; x < across; x++)
      {
        const bool ink = pixels[y * stride + x] > 128;

        all += ink;
        inked += ink && (x < edge || y < edge || x >= across - edge || y >= down - edge);
      }
  ck_assert_msg (inked == 0 && all > 0, "%s: %d of %d px in the margin", what, inked, all);
  cairo_surface_destroy (surface);
}

START_TEST (nothing_stands_in_the_margins_of_any_aeroplane_s_pages)
{
  const SheetCase *of = &sheet_cases ()[_i];
  PopplerDocument *document = document_of (of->make (), parts_on (_i % 2 ? "letter" : "a4"));

  for (int i = 0; i < poppler_document_get_n_pages (document); i++)
    {
      PopplerPage *page = poppler_document_get_page (document, i);

      assert_margins_are_empty (page, of->what);
      g_object_unref (page);
    }
  g_object_unref (document);
}
END_TEST

START_TEST (every_part_and_everything_to_put_in_is_on_the_sheet)
{
  const SheetCase *of = &sheet_cases ()[_i];
  g_autoptr (Aeroplane) aeroplane = of->make ();
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const ExportOptions options = parts_on ("a4");
  PopplerDocument *document = document_of (aeroplane_ref (aeroplane), options);
  g_autofree char *text = all_words (document);
  g_autoptr (GArray) steps = before_closing_of (figures);
  PartList list = part_list_of (figures);

  for (size_t i = 0; i < list.count; i++)
    assert_says (text, list.lines[i].name);
  for (guint i = 0; i < steps->len; i++)
    {
      g_autofree char *what = closing_what (figures, &g_array_index (steps, ClosingStep, i), options.units);

      assert_says (text, what);
    }
  for (size_t i = 0; cautions_sentence (i) != NULL; i++)
    assert_says (text, cautions_sentence (i));
  part_list_clear (&list);
  g_object_unref (document);
}
END_TEST

/* Whatever stands in that strip of the page, points from its upper left corner. */
static void
append_letters_in (GString *made, PopplerPage *page, double right, double top, double foot)
{
  g_autofree char *text = poppler_page_get_text (page);
  PopplerRectangle *places = NULL;
  const char *at = text;
  guint count = 0;

  ck_assert (poppler_page_get_text_layout (page, &places, &count));
  for (guint i = 0; i < count && *at != '\0'; i++, at = g_utf8_next_char (at))
    {
      const double x = (places[i].x1 + places[i].x2) / 2, y = (places[i].y1 + places[i].y2) / 2;

      if (x < right && y > top && y < foot && !g_ascii_isspace (*at))
        g_string_append_len (made, at, g_utf8_next_char (at) - at);
    }
  g_free (places);
}

/* What stands at the left of these words, wherever they stand on the page, parted by blanks. */
static char *
left_of (PopplerPage *page, const char *words)
{
  GString *made = g_string_new (NULL);
  GList *found = poppler_page_find_text (page, words);
  double width, height;

  poppler_page_get_size (page, &width, &height);
  for (GList *at = found; at != NULL; at = at->next)      /* these count up from the foot */
    {
      const PopplerRectangle *match = at->data;

      append_letters_in (made, page, match->x1, height - fmax (match->y1, match->y2), height - fmin (match->y1, match->y2));
      g_string_append_c (made, ' ');
      poppler_rectangle_free (at->data);
    }
  g_list_free (found);
  return g_string_free (made, FALSE);
}

/* The wall sheet's list is where its balloons have their numbers from. */
START_TEST (parts_have_the_numbers_that_they_have_on_the_wall_sheet)
{
  g_autoptr (Aeroplane) aeroplane = example_racer ();
  g_autoptr (Figures) figures = figures_once (aeroplane);
  PopplerDocument *document = document_of (aeroplane_ref (aeroplane), parts_on ("a4"));
  PopplerPage *page = poppler_document_get_page (document, 0);
  PartList list = part_list_of (figures);

  for (size_t i = 0; i < list.count && list.lines[i].number > 0; i++)
    {
      g_autofree char *left = left_of (page, list.lines[i].name), *wanted = g_strdup_printf ("%d", list.lines[i].number);
      g_auto (GStrv) beside = g_strsplit (left, " ", -1);

      ck_assert_msg (g_strv_contains ((const char *const *) beside, wanted), "%s: “%s”", list.lines[i].name, left);
    }
  part_list_clear (&list);
  g_object_unref (page);
  g_object_unref (document);
}
END_TEST

static Aeroplane *
with_many_parts (int count)
{
  g_autoptr (GString) text = g_string_new ("<aeroplane xmlns='urn:trammel:aeroplane' version='1' name='Many'>");

  for (int i = 1; i <= count; i++)
    g_string_append_printf (text, "<part id='p%d' class='other' name='Thing%03dof' mass='2' x='%d' y='%d' z='0'/>", i, i, i, i % 7);
  g_string_append (text, "</aeroplane>");
  return reader_read_data (text->str, (gssize) text->len, "case", NULL, NULL);
}

/* Once with what it weighs, once with where it stands. */
START_TEST (many_parts_go_on_over_the_pages_and_each_is_there_in_both_lists_below_its_heads)
{
  const int count = 150;
  PopplerDocument *document = document_of (with_many_parts (count), parts_on ("a4"));
  const int pages = poppler_document_get_n_pages (document);
  g_autofree char *text = all_words (document);

  ck_assert_int_ge (pages, 3);
  for (int i = 1; i <= count; i++)
    {
      g_autofree char *name = g_strdup_printf ("Thing%03dof", i);

      ck_assert_msg (count_of (text, name) == 2, "%s stands %d times", name, count_of (text, name));
    }
  for (int i = 0; i < pages; i++)
    {
      g_autofree char *page = page_words (document, i), *number = g_strdup_printf ("%d/%d", i + 1, pages);

      assert_says (page, number);
      assert_says (page, "2026-11-25");
      assert_says (page, "Many");
      if (!strstr (page, "Thing"))
        continue;
      ck_assert_int_ge (count_of (page, "to buy") + count_of (page, "front edge"), 1);
      if (i > 0)
        ck_assert_int_ge (count_of (page, "Parts, continued") + count_of (page, "Where Parts Stand"), 1);
    }
  g_object_unref (document);
}
END_TEST

START_TEST (long_names_go_on_below_and_nothing_of_them_is_cut)
{
  PopplerDocument *document = document_of (with_long_names (), parts_on ("a4"));
  g_autofree char *text = all_words (document);

  assert_says (text, "Tray for “The Extraordinarily Long Name of an Aeroplane that Nobody Could Ever Paint on Its Side, Number Seventeen”");
  ck_assert_int_ge (count_of (text, "Servowithouteveranyblankinitsnamewhichcannotbebrokenatall"), 1);
  ck_assert_int_eq (count_of (text, "Aeroplane that Nobody Could Ever Paint on Its Side, Number Seventeen"), 3);      /* the tray, the part and its place */
  g_object_unref (document);
}
END_TEST

START_TEST (an_empty_aeroplane_s_sheet_says_what_to_do)
{
  PopplerDocument *document = document_of (aeroplane_new (), parts_on ("a4"));
  g_autofree char *text = all_words (document);

  ck_assert_int_eq (poppler_document_get_n_pages (document), 1);
  assert_says (text, "Nothing is listed yet. Place parts, draw the body, or say what the structures are made of.");
  assert_says (text, "Unnamed");
  g_object_unref (document);
}
END_TEST

START_TEST (the_cutting_list_says_size_and_sum)
{
  static const char document[] = "<aeroplane xmlns='urn:trammel:aeroplane' version='1'><structure id='deck' x='10'>"
    "<item name='Sides' material='balsa-light' thickness='1.6' width='50' length='400' count='2'/>"
    "<item name='Bottom' material='balsa-light' thickness='1.6' width='40' length='500'/></structure></aeroplane>";
  PopplerDocument *pdf = document_of (reader_read_data (document, (gssize) strlen (document), "case", NULL, NULL), parts_on ("a4"));
  g_autofree char *text = all_words (pdf);

  assert_says (text, "50 × 400");
  assert_says (text, "4.00 dm²");
  assert_says (text, "2.00 dm²");
  assert_says (text, "6.00 dm²");
  g_object_unref (pdf);
}
END_TEST

/* What the racer's file says, in the words of the shop and of the bench. */
START_TEST (the_racer_s_sheet_says_what_to_buy_and_where_things_stand)
{
  static const char *const said[] = {
    "1900 rpm per volt, up to 70 W", "152 × 102 mm (6 × 4 in)", "2 cells, 450 mAh", "12 A", "of about 4.5 g",
    "125 mm to port", "125 mm to starboard", "49 mm aft of the leading edge there, 11 mm outboard of rib R5",
    "forward edge 6 mm ahead of F2, after edge 8 mm ahead of F6", "13 × 12", "R13", "from the one before", "Leading edge, laminated" };
  PopplerDocument *document = document_of (example_racer (), parts_on ("a4"));
  g_autofree char *text = all_words (document);

  for (size_t i = 0; i < G_N_ELEMENTS (said); i++)
    assert_says (text, said[i]);
  g_object_unref (document);
}
END_TEST

START_TEST (who_wants_inches_and_ounces_reads_them)
{
  ExportOptions options = parts_on ("letter");
  PopplerDocument *document;
  g_autofree char *text = NULL;

  options.units = (Units) { LENGTH_INCH, MASS_OZ };
  document = document_of (example_racer (), options);
  text = all_words (document);
  assert_says (text, "in, oz");
  assert_says (text, "0.95");      /* the battery's 27 g */
  assert_says (text, "behind F5, upper face 11/32 in above the thrust line");
  g_object_unref (document);
}
END_TEST

START_TEST (the_same_document_gives_the_same_bytes_of_every_kind)
{
  static const ExportFormat formats[] = { EXPORT_PDF, EXPORT_SVG, EXPORT_PNG };
  g_autoptr (Aeroplane) aeroplane = example_tourer ();
  g_autoptr (Figures) figures = figures_once (aeroplane);
  ExportOptions options = parts_on ("a4");

  options.format = formats[_i];
  options.dpi = 60;
  g_autoptr (GBytes) one = export_bytes (figures, &options, NULL), other = export_bytes (figures, &options, NULL);
  ck_assert (one != NULL && g_bytes_equal (one, other));
}
END_TEST

START_TEST (a_pdf_says_whose_it_is_and_what)
{
  PopplerDocument *document = document_of (example_racer (), parts_on ("a4"));
  g_autofree char *title = poppler_document_get_title (document), *subject = poppler_document_get_subject (document);

  ck_assert_str_eq (title, "Saltmarsh Racer");
  ck_assert_str_eq (subject, "Parts sheet: what goes in before the body is closed, parts and their places, leads, and what to cut");
  g_object_unref (document);
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("parts sheet");
  TCase *tests = tcase_create ("pages");
  int cases = 0;

  while (sheet_cases ()[cases].what != NULL)
    cases++;
  tcase_set_timeout (tests, 120);
  tcase_add_loop_test (tests, each_page_has_the_paper_s_size_upright, 0, G_N_ELEMENTS (papers));
  tcase_add_loop_test (tests, nothing_stands_in_the_margins_of_any_aeroplane_s_pages, 0, cases);
  tcase_add_loop_test (tests, every_part_and_everything_to_put_in_is_on_the_sheet, 0, cases);
  tcase_add_test (tests, parts_have_the_numbers_that_they_have_on_the_wall_sheet);
  tcase_add_test (tests, many_parts_go_on_over_the_pages_and_each_is_there_in_both_lists_below_its_heads);
  tcase_add_test (tests, long_names_go_on_below_and_nothing_of_them_is_cut);
  tcase_add_test (tests, an_empty_aeroplane_s_sheet_says_what_to_do);
  tcase_add_test (tests, the_cutting_list_says_size_and_sum);
  tcase_add_test (tests, the_racer_s_sheet_says_what_to_buy_and_where_things_stand);
  tcase_add_test (tests, who_wants_inches_and_ounces_reads_them);
  tcase_add_loop_test (tests, the_same_document_gives_the_same_bytes_of_every_kind, 0, 3);
  tcase_add_test (tests, a_pdf_says_whose_it_is_and_what);
  return run_suite (suite, tests);
}
