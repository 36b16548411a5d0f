#include "drawing/export.h"
#include <glib/gstdio.h>
#include <libxml/parser.h>
#include <math.h>
#include <png.h>
#include <poppler.h>
#include <string.h>
#include <unistd.h>
#include "drawing/wall-sheet-layout.h"
#include "drawing/wall-sheet-section.h"
#include "figures/report.h"
#include "support/comma-locale.h"
#include "support/figures-once.h"
#include "support/run-suite.h"
#include "support/sheets.h"

static const double mm_in_inch = 25.4, true_to_size = 0.01;      /* mm */

static ExportOptions
options_of (ExportFormat format, const char *paper)
{
  ExportOptions options = export_default_options ("sheet.png");

  options.format = format;
  g_strlcpy (options.paper, paper, sizeof options.paper);
  return options;
}

static GBytes *
exported (Aeroplane *takes, const ExportOptions *options)
{
  Figures *figures = figures_once (takes);
  GError *error = NULL;
  GBytes *bytes = export_bytes (figures, options, &error);

  ck_assert_msg (bytes != NULL, "%s", error ? error->message : "");
  figures_unref (figures);
  aeroplane_unref (takes);
  return bytes;
}

/* Reads a PNG's head as any other program would. */
typedef struct { unsigned width, height, per_metre_x, per_metre_y; int unit; char title[64]; } PngHead;
typedef struct { const unsigned char *data; size_t at; } PngSource;

static void
read_from_memory (png_structp png, png_bytep to, png_size_t length)
{
  PngSource *source = png_get_io_ptr (png);

  memcpy (to, source->data + source->at, length);
  source->at += length;
}

static PngHead
png_head (GBytes *bytes)
{
  PngSource source = { g_bytes_get_data (bytes, NULL), 0 };
  png_structp png = png_create_read_struct (PNG_LIBPNG_VER_STRING, NULL, NULL, NULL);
  png_infop info = png_create_info_struct (png);
  PngHead head = { 0 };
  png_textp texts;

  png_set_read_fn (png, &source, read_from_memory);
  png_read_info (png, info);
  head.width = png_get_image_width (png, info);
  head.height = png_get_image_height (png, info);
  png_get_pHYs (png, info, &head.per_metre_x, &head.per_metre_y, &head.unit);
  if (png_get_text (png, info, &texts, NULL) > 0)
    g_strlcpy (head.title, texts[0].text, sizeof head.title);
  png_destroy_read_struct (&png, &info, NULL);
  return head;
}

START_TEST (a_png_records_the_resolution_at_which_it_is_true_to_size)
{
  static const int dpi[] = { 150, 96 };
  ExportOptions options = options_of (EXPORT_PNG, "a3");
  g_autoptr (GBytes) bytes = NULL;
  PngHead head;

  options.dpi = dpi[_i];
  bytes = exported (example_racer (), &options);
  head = png_head (bytes);
  ck_assert_int_eq (head.unit, PNG_RESOLUTION_METER);
  ck_assert_uint_eq (head.per_metre_x, (unsigned) lround (dpi[_i] / mm_in_inch * 1000));
  ck_assert_uint_eq (head.per_metre_y, head.per_metre_x);
  ck_assert_double_eq_tol (head.width * 1000.0 / head.per_metre_x, 420, 500.0 / head.per_metre_x);      /* half a pixel */
  ck_assert_double_eq_tol (head.height * 1000.0 / head.per_metre_x, 297, 500.0 / head.per_metre_x);
  ck_assert_str_eq (head.title, "Saltmarsh Racer");
}
END_TEST

/* What a reader copies out of the page, with plain blanks. */
static char *
pdf_words (PopplerDocument *document)
{
  PopplerPage *page = poppler_document_get_page (document, 0);
  g_autofree char *text = poppler_page_get_text (page), *no_hair = NULL;
  g_auto (GStrv) hair = g_strsplit (text, "\u200A", -1), blanks = NULL;

  g_object_unref (page);
  no_hair = g_strjoinv ("", hair);
  blanks = g_strsplit (no_hair, "\u00A0", -1);
  return g_strjoinv (" ", blanks);
}

static PopplerDocument *
pdf_of (GBytes *bytes)
{
  PopplerDocument *document = poppler_document_new_from_bytes (bytes, NULL, NULL);

  ck_assert_ptr_nonnull (document);
  ck_assert_int_eq (poppler_document_get_n_pages (document), 1);
  return document;
}

static const struct { const char *paper; bool portrait; double width, height; } pages[] = {
  { "a3", false, 420, 297 }, { "a4", true, 210, 297 }, { "tabloid", true, 11 * 25.4, 17 * 25.4 } };

START_TEST (a_pdf_is_one_page_of_the_papers_exact_size)
{
  ExportOptions options = options_of (EXPORT_PDF, pages[_i].paper);
  g_autoptr (GBytes) bytes = NULL;
  PopplerDocument *document;
  PopplerPage *page;
  double width, height;

  options.portrait = pages[_i].portrait;
  bytes = exported (example_tourer (), &options);
  document = pdf_of (bytes);
  page = poppler_document_get_page (document, 0);
  poppler_page_get_size (page, &width, &height);
  ck_assert_double_eq_tol (width * mm_in_inch / 72, pages[_i].width, true_to_size);
  ck_assert_double_eq_tol (height * mm_in_inch / 72, pages[_i].height, true_to_size);
  g_object_unref (page);
  g_object_unref (document);
}
END_TEST

START_TEST (the_words_of_a_pdf_can_be_searched)
{
  static const char *const wanted[] = {
    "SALTMARSH RACER", "36 mm at station 40", "107 mm aft of datum", "1 : 2.5 (1 : 1)", "A3", "mm, g", "Balance mark, full size",
    "Battery 2S 450", "all-up mass", "151 g", "6.53 dm²", "39 ± 4 %", "12 ± 4 %", "640", "112", "MAC 110", "100 mm", "4 in",
    "Print at 100 %, no fitting.", "The figures are estimates. Check the balance on the bench before", "begin at the forward limit",
    "Keep clear of propellers", "Charge and store lithium batteries", "Blades, adhesives", "local rules and the flying field" };
  const ExportOptions options = options_of (EXPORT_PDF, "a3");
  g_autoptr (GBytes) bytes = exported (example_racer (), &options);
  PopplerDocument *document = pdf_of (bytes);
  g_autofree char *words = pdf_words (document);

  for (size_t i = 0; i < G_N_ELEMENTS (wanted); i++)
    ck_assert_msg (strstr (words, wanted[i]) != NULL, "“%s” is not in: %s", wanted[i], words);
  g_object_unref (document);
}
END_TEST

/* The same words as in the report, where the paper has room for them beside the drawing; what has no former has no such columns. */
START_TEST (where_trays_go_stands_in_the_parts_table)
{
  const ExportOptions options = options_of (EXPORT_PDF, _i ? "ansi-d" : "a2");
  g_autoptr (GBytes) bytes = exported (example_racer (), &options), other = exported (wing_only (), &options);
  PopplerDocument *document = pdf_of (bytes), *without = pdf_of (other);
  g_autofree char *words = pdf_words (document), *none = pdf_words (without);

  ck_assert_msg (strstr (words, "front edge") && strstr (words, "above the bottom"), "%s", words);
  ck_assert_msg (strstr (words, "19 mm behind F3") && strstr (words, "20 to 23 mm"), "%s", words);
  ck_assert_ptr_null (strstr (none, "front edge"));
  g_object_unref (document);
  g_object_unref (without);
}
END_TEST

START_TEST (inches_and_ounces_stand_on_the_sheet_of_who_wants_them)
{
  ExportOptions options = options_of (EXPORT_PDF, "tabloid");
  g_autoptr (GBytes) bytes = NULL;
  g_autofree char *words = NULL;
  PopplerDocument *document;

  options.units = (Units) { LENGTH_INCH, MASS_OZ };
  bytes = exported (example_racer (), &options);
  document = pdf_of (bytes);
  words = pdf_words (document);
  ck_assert_ptr_nonnull (strstr (words, "1 13/32 in at station 1 9/16"));      /* 36.1 mm and 40 mm */
  ck_assert_ptr_nonnull (strstr (words, "25 3/16"));                            /* 640 mm */
  ck_assert_ptr_nonnull (strstr (words, "5.31 oz"));
  ck_assert_ptr_nonnull (strstr (words, "in, oz"));
  g_object_unref (document);
}
END_TEST

static Aeroplane *
changed_on (Aeroplane *takes, const char *day)
{
  Aeroplane *made = aeroplane_with_changed (takes, day);

  aeroplane_unref (takes);
  return made;
}

START_TEST (a_pdf_carries_its_title_and_no_date_but_the_documents)
{
  const ExportOptions options = options_of (EXPORT_PDF, "a3");
  g_autoptr (GBytes) undated = exported (changed_on (example_racer (), ""), &options), dated = NULL;
  PopplerDocument *document = pdf_of (undated);
  g_autofree char *title = poppler_document_get_title (document), *words = NULL;

  ck_assert_str_eq (title, "Saltmarsh Racer");
  ck_assert_int_eq (poppler_document_get_creation_date (document), -1);
  g_object_unref (document);
  dated = exported (changed_on (example_racer (), "2026-11-25"), &options);
  document = pdf_of (dated);
  words = pdf_words (document);
  ck_assert_ptr_nonnull (strstr (words, "2026-11-25"));
  ck_assert_int_eq (poppler_document_get_creation_date (document), 1795564800);      /* midnight, UTC */
  g_object_unref (document);
}
END_TEST

START_TEST (only_the_drawings_own_lettering_is_used_and_travels_with_it)
{
  const ExportOptions options = options_of (EXPORT_PDF, "a3");
  g_autoptr (GBytes) bytes = exported (example_racer (), &options);
  PopplerDocument *document = pdf_of (bytes);
  PopplerFontInfo *info = poppler_font_info_new (document);
  PopplerFontsIter *fonts = NULL;

  ck_assert (poppler_font_info_scan (info, 1, &fonts));
  do
    {
      ck_assert_str_eq (poppler_fonts_iter_get_name (fonts), "RoutedGothic");
      ck_assert (poppler_fonts_iter_is_embedded (fonts));
    }
  while (poppler_fonts_iter_next (fonts));
  poppler_fonts_iter_free (fonts);
  g_object_unref (info);
  g_object_unref (document);
}
END_TEST

/* What is missing is said; what is null is not made up. */
static const struct { Aeroplane *(*make) (void); const char *words[6]; const char *never; } incomplete[] = {
  { aeroplane_new, { "Nothing is drawn yet.", "UNNAMED", "not yet", "No body is drawn yet.", "Keep clear of propellers" }, "full size section" },
  { wing_only,     { "PLANK", "neutral point of the wing alone", "There is no tailplane yet", "not yet", "Not yet: it is drawn as soon as" }, "at station" },
  { without_tail,  { "neutral point of the wing alone", "static margin at the mark", "not yet", "side outline is not drawn yet" }, "at station" },
};

START_TEST (an_unfinished_aeroplanes_sheet_says_what_is_missing)
{
  const ExportOptions options = options_of (EXPORT_PDF, "a4");
  g_autoptr (GBytes) bytes = exported (incomplete[_i].make (), &options);
  PopplerDocument *document = pdf_of (bytes);
  g_autofree char *words = pdf_words (document);

  for (size_t i = 0; i < G_N_ELEMENTS (incomplete[_i].words) && incomplete[_i].words[i]; i++)
    ck_assert_msg (strstr (words, incomplete[_i].words[i]) != NULL, "“%s” is not in: %s", incomplete[_i].words[i], words);
  ck_assert_msg (strstr (words, incomplete[_i].never) == NULL, "%s", words);
  g_object_unref (document);
}
END_TEST

START_TEST (names_too_long_for_their_place_are_cut)
{
  const ExportOptions options = options_of (EXPORT_PDF, "a4");
  g_autoptr (GBytes) bytes = exported (with_long_names (), &options);
  PopplerDocument *document = pdf_of (bytes);
  g_autofree char *words = pdf_words (document), *title = poppler_document_get_title (document);

  ck_assert_ptr_nonnull (strstr (words, "THE EXTRAORDINARILY LONG NAME"));
  ck_assert_ptr_nonnull (strstr (words, "..."));
  ck_assert_ptr_null (strstr (words, "NUMBER SEVENTEEN"));
  ck_assert_str_eq (title + strlen (title) - 16, "Number Seventeen");      /* it is whole where there is room */
  g_object_unref (document);
}
END_TEST

/* All straight strokes of an SVG that are level or upright on the paper, mm: where they begin, how long they are. */
typedef struct { double x, y, length; } LevelLine;

static Point
on_paper (const double matrix[6], Point at)
{
  return (Point) { matrix[0] * at.x + matrix[2] * at.y + matrix[4], matrix[1] * at.x + matrix[3] * at.y + matrix[5] };
}

static void
collect_lines (xmlNode *node, double scale, GArray *lines)
{
  for (; node; node = node->next)
    {
      xmlChar *path = xmlStrEqual (node->name, (const xmlChar *) "path") ? xmlGetProp (node, (const xmlChar *) "d") : NULL;
      xmlChar *matrix = path ? xmlGetProp (node, (const xmlChar *) "transform") : NULL;
      double m[6] = { 1, 0, 0, 1, 0, 0 };
      Point from, to;

      if (matrix)
        ck_assert_int_eq (sscanf ((const char *) matrix, "matrix(%lf,%lf,%lf,%lf,%lf,%lf)", &m[0], &m[1], &m[2], &m[3], &m[4], &m[5]), 6);
      if (path && sscanf ((const char *) path, "M %lf %lf L %lf %lf", &from.x, &from.y, &to.x, &to.y) == 4)
        {
          const Point a = on_paper (m, from), b = on_paper (m, to);
          const LevelLine line = { fmin (a.x, b.x) * scale, fmin (a.y, b.y) * scale, point_distance (a, b) * scale };

          if (fabs (a.x - b.x) < 1e-6 || fabs (a.y - b.y) < 1e-6)
            g_array_append_val (lines, line);
        }
      xmlFree (matrix);
      xmlFree (path);
      collect_lines (node->children, scale, lines);
    }
}

static GArray *
svg_lines (GBytes *bytes)
{
  size_t length;
  const char *data = g_bytes_get_data (bytes, &length);
  xmlDoc *document = xmlReadMemory (data, (int) length, NULL, NULL, XML_PARSE_NONET);
  GArray *lines = g_array_new (FALSE, FALSE, sizeof (LevelLine));

  ck_assert_ptr_nonnull (document);
  ck_assert_ptr_nonnull (strstr (data, "<g id=\"sheet\" transform=\"scale(0.1)\">"));
  collect_lines (xmlDocGetRootElement (document), 0.1, lines);
  xmlFreeDoc (document);
  return lines;
}

static void
check_line (const GArray *lines, double length, const char *what)
{
  double nearest = INFINITY;

  for (guint i = 0; i < lines->len; i++)
    nearest = fmin (nearest, fabs (g_array_index (lines, LevelLine, i).length - length));
  ck_assert_msg (nearest < true_to_size, "%s, %g mm: the nearest line is %g mm off", what, length, nearest);
}

START_TEST (control_lines_and_the_full_size_section_are_true_to_size)
{
  static const char *const sizes[] = { "a3", "tabloid" };
  const ExportOptions options = options_of (EXPORT_SVG, sizes[_i]);
  Figures *figures;
  Aeroplane *racer = example_racer ();
  g_autoptr (GBytes) bytes = exported (aeroplane_ref (racer), &options);
  GArray *lines = svg_lines (bytes);

  figures = figures_once (racer);
  check_line (lines, 100, "the control line of 100 mm");
  check_line (lines, 101.6, "the control line of 4 in");
  check_line (lines, figures->balance.marks[0].target_mm, "the mark");
  check_line (lines, figures->balance.marks[0].forward_mm, "the forward limit");
  check_line (lines, figures->balance.marks[0].aft_mm, "the aft limit");
  check_line (lines, figures->balance.marks[0].chord_mm + 12, "the chord with 6 mm beyond either end");
  g_array_unref (lines);
  figures_unref (figures);
  aeroplane_unref (racer);
}
END_TEST

START_TEST (control_lines_stand_on_small_paper_too)
{
  static const char *const sizes[] = { "a4", "letter" };
  ExportOptions options = options_of (EXPORT_SVG, sizes[_i]);
  g_autoptr (GBytes) bytes = NULL;
  GArray *lines;

  options.portrait = _i == 1;
  bytes = exported (example_tourer (), &options);
  lines = svg_lines (bytes);
  check_line (lines, 100, "the control line of 100 mm");
  check_line (lines, 101.6, "the control line of 4 in");
  g_array_unref (lines);
}
END_TEST

/* The same lines in the PDF, painted by another program at 100 px a mm. */
static double
black_run (PopplerPage *page, Point from_mm, double length_mm)
{
  enum { FINENESS = 100, ROWS = 4, BEFORE = 200 };
  const int width = (int) (length_mm * FINENESS) + 2 * BEFORE;
  cairo_surface_t *picture = cairo_image_surface_create (CAIRO_FORMAT_A8, width, ROWS);
  cairo_t *cr = cairo_create (picture);
  const unsigned char *row = cairo_image_surface_get_data (picture) + 2 * cairo_image_surface_get_stride (picture);
  int first = width, last = -1;

  cairo_translate (cr, BEFORE - from_mm.x * FINENESS, 2 - from_mm.y * FINENESS);
  cairo_scale (cr, FINENESS * mm_in_inch / 72, FINENESS * mm_in_inch / 72);
  poppler_page_render_for_printing (page, cr);
  cairo_surface_flush (picture);
  for (int x = 0; x < width; x++)
    if (row[x] > 127)
      {
        first = MIN (first, x);
        last = MAX (last, x);
      }
  cairo_destroy (cr);
  cairo_surface_destroy (picture);
  return (last - first + 1) / (double) FINENESS;
}

START_TEST (the_control_lines_of_a_pdf_are_true_to_size)
{
  Aeroplane *racer = example_racer ();
  const ExportOptions svg = options_of (EXPORT_SVG, "a3"), pdf = options_of (EXPORT_PDF, "a3");
  g_autoptr (GBytes) drawn = exported (aeroplane_ref (racer), &svg), bytes = exported (racer, &pdf);
  GArray *lines = svg_lines (drawn);
  PopplerDocument *document = pdf_of (bytes);
  PopplerPage *page = poppler_document_get_page (document, 0);
  int found = 0;

  for (guint i = 0; i < lines->len; i++)
    {
      const LevelLine line = g_array_index (lines, LevelLine, i);

      if (fabs (line.length - 100) > 1e-3 && fabs (line.length - 101.6) > 5e-3)
        continue;
      ck_assert_double_eq_tol (black_run (page, (Point) { line.x, line.y }, line.length), line.length, true_to_size);
      found++;
    }
  ck_assert_int_eq (found, 2);
  g_array_unref (lines);
  g_object_unref (page);
  g_object_unref (document);
}
END_TEST

START_TEST (an_svg_is_measured_in_mm_and_says_what_it_is_in_every_locale)
{
  char *folder = _i ? comma_locale_enter () : NULL;
  const ExportOptions options = options_of (EXPORT_SVG, "tabloid");
  g_autoptr (GBytes) bytes = exported (example_racer (), &options);
  size_t length;
  const char *data = g_bytes_get_data (bytes, &length);
  xmlDoc *document = xmlReadMemory (data, (int) length, NULL, NULL, XML_PARSE_NONET);
  xmlNode *root = xmlDocGetRootElement (document), *title = xmlFirstElementChild (root);
  xmlChar *width = xmlGetProp (root, (const xmlChar *) "width"), *box = xmlGetProp (root, (const xmlChar *) "viewBox"), *words = xmlNodeGetContent (title);

  ck_assert_double_eq_tol (g_ascii_strtod ((const char *) width, NULL), 431.8, true_to_size);
  ck_assert_str_eq ((const char *) width + strlen ((const char *) width) - 2, "mm");
  ck_assert_int_eq (strncmp ((const char *) box, "0 0 431.8 279.4", 15), 0);
  ck_assert_str_eq ((const char *) title->name, "title");
  ck_assert_str_eq ((const char *) words, "Saltmarsh Racer");
  ck_assert_str_eq ((const char *) xmlNextElementSibling (title)->name, "desc");
  xmlFree (width);
  xmlFree (box);
  xmlFree (words);
  xmlFreeDoc (document);
  if (folder)
    comma_locale_leave (folder);
}
END_TEST

START_TEST (the_same_document_gives_the_same_bytes)
{
  const ExportOptions options = options_of (_i, "a3");
  g_autoptr (GBytes) first = exported (example_racer (), &options), other = exported (example_tourer (), &options);
  g_autoptr (GBytes) second = exported (example_racer (), &options);

  ck_assert (g_bytes_equal (first, second));
  ck_assert (!g_bytes_equal (first, other));
}
END_TEST

START_TEST (lists_and_figures_are_the_reports)
{
  Aeroplane *racer = example_racer ();
  Figures *figures = figures_once (racer);
  g_autofree char *csv = report_parts_csv (figures), *json = report_json (figures);
  const ExportOptions list = options_of (EXPORT_CSV, "no paper at all"), all = options_of (EXPORT_JSON, "a4");
  g_autoptr (GBytes) list_bytes = exported (aeroplane_ref (racer), &list), all_bytes = exported (racer, &all);

  ck_assert_uint_eq (g_bytes_get_size (list_bytes), strlen (csv));
  ck_assert_mem_eq (g_bytes_get_data (list_bytes, NULL), csv, strlen (csv));
  ck_assert_uint_eq (g_bytes_get_size (all_bytes), strlen (json));
  ck_assert_mem_eq (g_bytes_get_data (all_bytes, NULL), json, strlen (json));
  figures_unref (figures);
}
END_TEST

START_TEST (the_format_is_told_by_the_files_ending)
{
  static const struct { const char *path; bool known; ExportFormat format; } names[] = {
    { "a/b.c/Sheet.PNG", true, EXPORT_PNG }, { "sheet.pdf", true, EXPORT_PDF }, { "x.svg", true, EXPORT_SVG }, { "x.csv", true, EXPORT_CSV },
    { "x.dxf", true, EXPORT_DXF }, { "x.json", true, EXPORT_JSON }, { "x.jpeg", false, EXPORT_PNG }, { "x", false, EXPORT_PNG }, { "pdf", false, EXPORT_PNG } };
  ExportFormat format = EXPORT_SVG;

  for (size_t i = 0; i < G_N_ELEMENTS (names); i++)
    {
      ck_assert_int_eq (export_format_of (names[i].path, &format), names[i].known);
      ck_assert_int_eq (export_default_options (names[i].path).format, names[i].format);
    }
  ck_assert_int_eq (format, EXPORT_JSON);      /* unknown endings leave it alone */
}
END_TEST

/* Each refusal names what is wrong, and the file that is there stays. */
static const struct { const char *because, *paper, *says; int dpi; ExportFormat format; ExportError code; ExportSheet sheet; double kerf; } refused[] = {
  { "a paper nobody knows", "foolscap", "foolscap", 150, EXPORT_PDF, EXPORT_ERROR_PAPER, EXPORT_WALL_SHEET, 0 },
  { "no dots to speak of", "a4", "29", 29, EXPORT_PNG, EXPORT_ERROR_FORMAT, EXPORT_WALL_SHEET, 0 },
  { "more dots than are made", "a4", "1201", 1201, EXPORT_PNG, EXPORT_ERROR_FORMAT, EXPORT_WALL_SHEET, 0 },
  { "a picture without end", "a0", "20000", 600, EXPORT_PNG, EXPORT_ERROR_TOO_LARGE, EXPORT_WALL_SHEET, 0 },
  { "a format that is none", "a4", "PNG, PDF, SVG, DXF, CSV or JSON", 150, (ExportFormat) 77, EXPORT_ERROR_FORMAT, EXPORT_WALL_SHEET, 0 },
  { "a page to be cut", "a4", "an SVG or a DXF", 150, EXPORT_PDF, EXPORT_ERROR_FORMAT, EXPORT_CUTTING, 0 },
  { "a cut wider than any", "a4", "0 to 2 mm", 150, EXPORT_DXF, EXPORT_ERROR_FORMAT, EXPORT_CUTTING, 2.5 },
};

START_TEST (what_cannot_be_exported_is_refused_in_a_sentence_and_the_old_file_stays)
{
  g_autofree char *folder = g_dir_make_tmp ("trammel-export-XXXXXX", NULL), *path = g_build_filename (folder, "sheet.png", NULL), *text = NULL;
  ExportOptions options = options_of (refused[_i].format, refused[_i].paper);
  Aeroplane *racer = example_racer ();
  Figures *figures = figures_once (racer);
  GError *error = NULL;

  options.dpi = refused[_i].dpi;
  options.sheet = refused[_i].sheet;
  options.kerf = refused[_i].kerf;
  g_file_set_contents (path, "yesterday's", -1, NULL);
  ck_assert_msg (!export_write (figures, &options, path, &error), "%s", refused[_i].because);
  ck_assert_msg (g_error_matches (error, EXPORT_ERROR, refused[_i].code), "%s", error->message);
  ck_assert_msg (strstr (error->message, refused[_i].says) != NULL, "%s", error->message);
  g_file_get_contents (path, &text, NULL, NULL);
  ck_assert_str_eq (text, "yesterday's");
  g_error_free (error);
  figures_unref (figures);
  aeroplane_unref (racer);
  g_remove (path);
  g_rmdir (folder);
}
END_TEST

START_TEST (a_folder_that_is_not_there_is_said_and_nothing_is_left_behind)
{
  g_autofree char *folder = g_dir_make_tmp ("trammel-export-XXXXXX", NULL), *path = g_build_filename (folder, "none", "sheet.csv", NULL);
  const ExportOptions options = export_default_options (path);
  Aeroplane *racer = example_racer ();
  Figures *figures = figures_once (racer);
  GError *error = NULL;

  ck_assert (!export_write (figures, &options, path, &error));
  ck_assert_msg (strstr (error->message, "sheet.csv") != NULL, "%s", error->message);
  ck_assert_int_eq (g_rmdir (folder), 0);      /* empty */
  g_error_free (error);
  figures_unref (figures);
  aeroplane_unref (racer);
}
END_TEST

START_TEST (a_written_file_holds_the_bytes_and_takes_the_old_ones_place)
{
  g_autofree char *folder = g_dir_make_tmp ("trammel-export-XXXXXX", NULL), *path = g_build_filename (folder, "sheet.svg", NULL), *text = NULL;
  g_autofree char *backup = g_strconcat (path, "~", NULL);
  const ExportOptions options = export_default_options (path);
  Aeroplane *racer = example_racer ();
  Figures *figures = figures_once (racer);
  g_autoptr (GBytes) bytes = export_bytes (figures, &options, NULL);
  size_t length;

  g_file_set_contents (path, "yesterday's", -1, NULL);
  ck_assert (export_write (figures, &options, path, NULL));
  g_file_get_contents (path, &text, &length, NULL);
  ck_assert_uint_eq (length, g_bytes_get_size (bytes));
  ck_assert_mem_eq (text, g_bytes_get_data (bytes, NULL), length);
  ck_assert (!g_file_test (backup, G_FILE_TEST_EXISTS));
  figures_unref (figures);
  aeroplane_unref (racer);
  g_remove (path);
  g_rmdir (folder);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("export");

  tcase_set_timeout (tests, 120);
  tcase_add_loop_test (tests, a_png_records_the_resolution_at_which_it_is_true_to_size, 0, 2);
  tcase_add_loop_test (tests, a_pdf_is_one_page_of_the_papers_exact_size, 0, G_N_ELEMENTS (pages));
  tcase_add_test (tests, the_words_of_a_pdf_can_be_searched);
  tcase_add_loop_test (tests, where_trays_go_stands_in_the_parts_table, 0, 2);
  tcase_add_test (tests, inches_and_ounces_stand_on_the_sheet_of_who_wants_them);
  tcase_add_test (tests, a_pdf_carries_its_title_and_no_date_but_the_documents);
  tcase_add_test (tests, only_the_drawings_own_lettering_is_used_and_travels_with_it);
  tcase_add_loop_test (tests, an_unfinished_aeroplanes_sheet_says_what_is_missing, 0, G_N_ELEMENTS (incomplete));
  tcase_add_test (tests, names_too_long_for_their_place_are_cut);
  tcase_add_loop_test (tests, control_lines_and_the_full_size_section_are_true_to_size, 0, 2);
  tcase_add_loop_test (tests, control_lines_stand_on_small_paper_too, 0, 2);
  tcase_add_test (tests, the_control_lines_of_a_pdf_are_true_to_size);
  tcase_add_loop_test (tests, an_svg_is_measured_in_mm_and_says_what_it_is_in_every_locale, 0, 2);
  tcase_add_loop_test (tests, the_same_document_gives_the_same_bytes, EXPORT_PNG, EXPORT_DXF + 1);
  tcase_add_test (tests, lists_and_figures_are_the_reports);
  tcase_add_test (tests, the_format_is_told_by_the_files_ending);
  tcase_add_loop_test (tests, what_cannot_be_exported_is_refused_in_a_sentence_and_the_old_file_stays, 0, G_N_ELEMENTS (refused));
  tcase_add_test (tests, a_folder_that_is_not_there_is_said_and_nothing_is_left_behind);
  tcase_add_test (tests, a_written_file_holds_the_bytes_and_takes_the_old_ones_place);
  return run_suite (suite_create ("drawing export"), tests);
}
