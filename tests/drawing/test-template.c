#include "drawing/template-sheet.h"
#include <libxml/parser.h>
#include <math.h>
#include <poppler.h>
#include <string.h>
#include "drawing/export-sheet.h"
#include "drawing/lettering-font.h"
#include "drawing/template-paper.h"
#include "drawing/template-tiles.h"
#include "support/run-suite.h"

static const double mm_in_inch = 25.4, true_to_size = 0.01;      /* mm */

static void
free_piece (gpointer data)
{
  flat_piece_free (data);
}

/* Half a wing as wide as a sheet is long, with an elliptic tip, a hinge line, stations, the mark and its limits, a servo. */
static FlatPiece *
half_wing (void)
{
  FlatPiece *piece = flat_piece_new ("Wing, starboard", "Developed flat: its panels are laid into one plane at 5° dihedral each.");
  const Segment edge[] = {
    segment_line ((Point) { 260, 66 }), segment_arc ((Point) { 260, 106 }, 60, 40, (Point) { 320, 106 }),
    segment_curve ((Point) { 320, 130 }, (Point) { 290, 152 }, (Point) { 260, 156 }), segment_line ((Point) { 0, 168 }) };

  flat_piece_add_line (piece, FLAT_CUT, true, (Point) { 0, 56 }, edge, G_N_ELEMENTS (edge));
  flat_piece_add_straight (piece, FLAT_HINGE, (Point) { 40, 140 }, (Point) { 240, 132 });
  for (int y = 40; y <= 240; y += 40)
    flat_piece_add_straight (piece, FLAT_STATION, (Point) { y, 58 }, (Point) { y, 160 });
  flat_piece_add_straight (piece, FLAT_CENTRE, (Point) { 0, 50 }, (Point) { 0, 174 });
  flat_piece_add_straight (piece, FLAT_MARK, (Point) { 34, 94 }, (Point) { 46, 94 });
  flat_piece_add_straight (piece, FLAT_LIMIT, (Point) { 34, 89 }, (Point) { 46, 89 });
  flat_piece_add_straight (piece, FLAT_LIMIT, (Point) { 34, 99 }, (Point) { 46, 99 });
  flat_piece_add_box (piece, FLAT_ROOM, (Box) { { 150, 100 }, { 173, 112 } });
  flat_piece_add_words (piece, FLAT_MARK, 2.5, (Point) { 50, 95 }, "balance mark, 36 mm");
  flat_piece_add_word (piece, &(FlatWord) { FLAT_HINGE, (char *) "bevel here", { 140, 134 }, 2, 0.5, -2.3 });
  return piece;
}

static FlatPiece *
plate (const char *name, double width, double height)
{
  FlatPiece *piece = flat_piece_new (name, NULL);

  flat_piece_add_box (piece, FLAT_CUT, (Box) { { 0, 0 }, { width, height } });
  flat_piece_add_box (piece, FLAT_OPENING, (Box) { { 6, 6 }, { width / 2, height / 2 } });
  return piece;
}

static GPtrArray *
usual_pieces (void)
{
  GPtrArray *pieces = g_ptr_array_new_with_free_func (free_piece);
  FlatPiece *starboard = half_wing ();

  g_ptr_array_add (pieces, starboard);
  g_ptr_array_add (pieces, flat_piece_mirrored (starboard, "Wing, port"));
  g_ptr_array_add (pieces, plate ("Tail, starboard", 120, 70));
  g_ptr_array_add (pieces, plate ("Fin", 74, 82));
  g_ptr_array_add (pieces, plate ("Hatch", 40, 24));
  return pieces;
}

static TemplateSheet
sheet_of (const GPtrArray *pieces, const char *paper)
{
  return (TemplateSheet) { .pieces = pieces, .title = "Saltmarsh Racer", .paper = paper_find (paper), .read_short = 100, .read_long = 100,
                           .date = "2026-11-25" };
}

static SheetPages *
pages_of (const TemplateSheet *sheet)
{
  GError *error = NULL;
  TemplateLayout *layout = template_layout_new (sheet, &error);

  ck_assert_msg (layout != NULL, "%s", error ? error->message : "");
  return sheet_pages_of (template_pages_kind (), layout, sheet->title, "Template");
}

static SheetPages *
usual_pages (const char *paper, bool portrait, bool one_page)
{
  g_autoptr (GPtrArray) pieces = usual_pieces ();
  TemplateSheet sheet = sheet_of (pieces, paper);

  sheet.portrait = portrait;
  sheet.one_page = one_page;
  return pages_of (&sheet);
}

static PopplerDocument *
pdf_of (const SheetPages *pages)
{
  g_autoptr (GBytes) bytes = sheet_pdf (pages, NULL);
  PopplerDocument *document = poppler_document_new_from_bytes (bytes, NULL, NULL);

  ck_assert_ptr_nonnull (document);
  ck_assert_uint_eq (poppler_document_get_n_pages (document), sheet_pages_count (pages));
  return document;
}

/* What a reader copies out of the page, with plain blanks. */
static char *
words_of (PopplerDocument *document, size_t page)
{
  PopplerPage *read = poppler_document_get_page (document, (int) page);
  g_autofree char *text = poppler_page_get_text (read);
  g_auto (GStrv) parts = g_strsplit (text, "\u00A0", -1);

  g_object_unref (read);
  return g_strjoinv (" ", parts);
}

/* ISO 216 and ANSI/ASME Y14.1, from memory; Letter and Tabloid are 8 1/2 × 11 and 11 × 17 in. */
static const struct { const char *paper; bool portrait; double width, height; } papers[] = {
  { "a4", false, 297, 210 }, { "a4", true, 210, 297 }, { "a3", false, 420, 297 }, { "a2", true, 420, 594 },
  { "letter", false, 11 * 25.4, 8.5 * 25.4 }, { "letter", true, 8.5 * 25.4, 11 * 25.4 }, { "tabloid", false, 17 * 25.4, 11 * 25.4 },
  { "ansi-c", true, 17 * 25.4, 22 * 25.4 } };

START_TEST (every_tile_is_a_page_of_its_papers_exact_size)
{
  g_autoptr (SheetPages) pages = usual_pages (papers[_i].paper, papers[_i].portrait, false);
  PopplerDocument *document = pdf_of (pages);

  for (int i = 0; i < poppler_document_get_n_pages (document); i++)
    {
      PopplerPage *page = poppler_document_get_page (document, i);
      double width, height;

      poppler_page_get_size (page, &width, &height);
      ck_assert_double_eq_tol (width * mm_in_inch / 72, papers[_i].width, true_to_size);
      ck_assert_double_eq_tol (height * mm_in_inch / 72, papers[_i].height, true_to_size);
      g_object_unref (page);
    }
  g_object_unref (document);
}
END_TEST

START_TEST (every_page_says_whose_it_is_which_it_is_and_how_to_print_it)
{
  g_autoptr (SheetPages) pages = usual_pages (papers[_i].paper, papers[_i].portrait, false);
  PopplerDocument *document = pdf_of (pages);
  const size_t count = sheet_pages_count (pages);

  for (size_t i = 0; i < count; i++)
    {
      g_autofree char *words = words_of (document, i), *number = g_strdup_printf ("Page %zu of %zu", i + 1, count);
      const char *const wanted[] = { "Saltmarsh Racer", number, "100 mm", "4 in", "Print at 100 %, no fitting.", "mm apart." };

      for (size_t k = 0; k < G_N_ELEMENTS (wanted); k++)
        ck_assert_msg (strstr (words, wanted[k]) != NULL, "“%s” is not on page %zu: %s", wanted[k], i + 1, words);
    }
  g_object_unref (document);
}
END_TEST

START_TEST (pieces_and_cautions_stand_on_it_by_name)
{
  static const char *const wanted[] = {
    "Wing, starboard", "Wing, port", "Tail, starboard", "Fin", "Hatch", "Developed flat", "balance mark, 36 mm", "SALTMARSH RACER",
    "2026-11-25", "The figures are estimates.", "begin at the forward limit", "Keep clear of propellers", "Charge and store lithium batteries" };
  g_autoptr (SheetPages) pages = usual_pages ("a4", false, _i == 1);
  PopplerDocument *document = pdf_of (pages);
  g_autoptr (GString) all = g_string_new (NULL);

  for (size_t i = 0; i < sheet_pages_count (pages); i++)
    {
      g_autofree char *words = words_of (document, i);
      g_auto (GStrv) lines = g_strsplit (words, "\n", -1);
      g_autofree char *flat = g_strjoinv (" ", lines);

      g_string_append (all, flat);
    }
  for (size_t k = 0; k < G_N_ELEMENTS (wanted); k++)
    ck_assert_msg (strstr (all->str, wanted[k]) != NULL, "“%s” is not in: %s", wanted[k], all->str);
  ck_assert (_i == 0 || sheet_pages_count (pages) == 1);
  g_object_unref (document);
}
END_TEST

/* A path of an SVG, in mm of the page: points by threes, each segment a cubic curve (straight ones too). */
typedef struct { GArray *points; bool closed; } Path;
typedef struct { double a, b, c, d, e, f; } Matrix;

static void
add_point (Path *path, Matrix m, double x, double y)
{
  const Point at = { (m.a * x + m.c * y + m.e) / 10, (m.b * x + m.d * y + m.f) / 10 };      /* the sheet's group is scaled by 0.1 */

  g_array_append_val (path->points, at);
}

static double
next_number (char **at)
{
  return g_ascii_strtod (*at, at);
}

/* cairo writes M, L, C and Z, all absolute, parted by blanks. */
static Path
path_of (char *d, Matrix m)
{
  Path path = { g_array_new (FALSE, FALSE, sizeof (Point)), false };
  double x = 0, y = 0;

  for (char *at = d; *at != '\0';)
    {
      const char kind = *at++;

      if (kind == 'Z')
        path.closed = true;
      if (kind == 'M' && path.points->len > 0)
        break;      /* what cairo writes behind Z: where a next one would begin */
      if (kind != 'M' && kind != 'L' && kind != 'C')
        continue;
      if (kind == 'L')      /* as a curve: its ends twice */
        add_point (&path, m, x, y);
      for (int i = 0; i < (kind == 'C' ? 3 : 1); i++)
        {
          x = next_number (&at);
          y = next_number (&at);
          add_point (&path, m, x, y);
        }
      if (kind == 'L')
        add_point (&path, m, x, y);
    }
  return path;
}

static void
path_clear (gpointer data)
{
  g_array_unref (((Path *) data)->points);
}

static void
collect_paths (xmlNode *node, GArray *paths)
{
  for (; node != NULL; node = node->next)
    {
      xmlChar *d = xmlStrEqual (node->name, (const xmlChar *) "path") ? xmlGetProp (node, (const xmlChar *) "d") : NULL;
      xmlChar *style = d != NULL ? xmlGetProp (node, (const xmlChar *) "style") : NULL;
      xmlChar *width = d != NULL ? xmlGetProp (node, (const xmlChar *) "stroke-width") : NULL;      /* as cairo from 1.17 on writes it */
      xmlChar *matrix = d != NULL ? xmlGetProp (node, (const xmlChar *) "transform") : NULL;
      Matrix m = { 1, 0, 0, 1, 0, 0 };

      if (matrix != NULL)
        ck_assert_int_eq (sscanf ((const char *) matrix, "matrix(%lf,%lf,%lf,%lf,%lf,%lf)", &m.a, &m.b, &m.c, &m.d, &m.e, &m.f), 6);
      if (width != NULL || (style != NULL && strstr ((const char *) style, "stroke-width") != NULL))
        {
          const Path path = path_of ((char *) d, m);
          g_array_append_val (paths, path);
        }
      xmlFree (d);
      xmlFree (style);
      xmlFree (width);
      xmlFree (matrix);
      collect_paths (node->children, paths);
    }
}

/* All strokes of a page. */
static GArray *
strokes_of (const SheetPages *pages, size_t page)
{
  g_autoptr (GBytes) bytes = sheet_svg (pages, page, NULL);
  size_t length;
  const char *data = g_bytes_get_data (bytes, &length);
  xmlDoc *document = xmlReadMemory (data, (int) length, NULL, NULL, XML_PARSE_NONET | XML_PARSE_HUGE);
  GArray *paths = g_array_new (FALSE, FALSE, sizeof (Path));

  ck_assert_ptr_nonnull (document);
  g_array_set_clear_func (paths, path_clear);
  collect_paths (xmlDocGetRootElement (document), paths);
  xmlFreeDoc (document);
  return paths;
}

/* How far from it the straight stroke next to that length is, across the page or down it. */
static double
length_off (const GArray *strokes, double length, bool down)
{
  double nearest = INFINITY;

  for (guint i = 0; i < strokes->len; i++)
    {
      const GArray *points = g_array_index (strokes, Path, i).points;
      const Point a = g_array_index (points, Point, 0), b = g_array_index (points, Point, points->len - 1);
      const double along = down ? b.y - a.y : b.x - a.x, off = down ? b.x - a.x : b.y - a.y;

      if (points->len == 4 && fabs (off) < 1e-4)
        nearest = fmin (nearest, fabs (fabs (along) - length));
    }
  return nearest;
}

START_TEST (control_lines_are_true_on_every_page)
{
  const bool one_page = _i == G_N_ELEMENTS (papers);
  g_autoptr (SheetPages) pages = usual_pages (one_page ? "a4" : papers[_i].paper, !one_page && papers[_i].portrait, one_page);

  for (size_t i = 0; i < sheet_pages_count (pages); i++)
    {
      g_autoptr (GArray) strokes = strokes_of (pages, i);

      ck_assert_double_lt (length_off (strokes, 100, false), true_to_size);
      ck_assert_double_lt (length_off (strokes, 101.6, false), true_to_size);
      ck_assert_double_lt (length_off (strokes, 100, true), true_to_size);
    }
}
END_TEST

/* A printer off by one amount along its paper's short side and by another along its long one, whichever way the page lies. */
static const struct { double read_short, read_long; bool portrait; const char *told; } printers[] = {
  { 99.2, 99.2, false, "Corrected for a printer that draws 100 mm as 99.2 mm." },
  { 99.2, 101, false, "Corrected for a printer that draws 100 mm as 99.2 mm along the paper's short side and as 101 mm along its long side." },
  { 99.2, 101, true, "Corrected for a printer that draws 100 mm as 99.2 mm along the paper's short side and as 101 mm along its long side." } };

START_TEST (what_a_printer_is_off_by_is_made_up_for_by_the_papers_own_sides)
{
  const double across = printers[_i].portrait ? printers[_i].read_short : printers[_i].read_long;
  const double down = printers[_i].portrait ? printers[_i].read_long : printers[_i].read_short;
  g_autoptr (GPtrArray) pieces = usual_pieces ();
  TemplateSheet sheet = sheet_of (pieces, "a4");
  sheet.read_short = printers[_i].read_short;
  sheet.read_long = printers[_i].read_long;
  sheet.portrait = printers[_i].portrait;
  g_autoptr (SheetPages) pages = pages_of (&sheet);
  PopplerDocument *document = pdf_of (pages);

  for (size_t i = 0; i < sheet_pages_count (pages); i++)
    {
      g_autoptr (GArray) strokes = strokes_of (pages, i);
      g_autofree char *words = words_of (document, i);
      double width, height;

      ck_assert_double_lt (length_off (strokes, 100 * 100 / across, false), true_to_size);
      ck_assert_double_lt (length_off (strokes, 101.6 * 100 / across, false), true_to_size);
      ck_assert_double_lt (length_off (strokes, 100 * 100 / down, true), true_to_size);
      ck_assert_msg (strstr (words, printers[_i].told) != NULL, "%s", words);
      sheet_pages_size (pages, i, &width, &height);      /* the paper stays what it is */
      ck_assert_double_eq_tol (width, printers[_i].portrait ? 210 : 297, 1e-9);
      ck_assert_double_eq_tol (height, printers[_i].portrait ? 297 : 210, 1e-9);
    }
  g_object_unref (document);
}
END_TEST

/* Up to 2 %: what was glued already stays of use. */
START_TEST (a_small_correction_leaves_every_tile_where_it_was)
{
  static const double readings[] = { 98.1, 99.5, 100.5, 102 };
  g_autoptr (GPtrArray) pieces = usual_pieces ();
  TemplateSheet sheet = sheet_of (pieces, papers[_i].paper);
  sheet.portrait = papers[_i].portrait;
  TemplatePaper plain, corrected;

  ck_assert (template_paper_divide (&sheet, &plain));
  for (size_t i = 0; i < G_N_ELEMENTS (readings); i++)
    {
      sheet.read_short = readings[i];
      sheet.read_long = readings[G_N_ELEMENTS (readings) - 1 - i];
      ck_assert (template_paper_divide (&sheet, &corrected));
      ck_assert_double_eq (corrected.step.x, plain.step.x);
      ck_assert_double_eq (corrected.step.y, plain.step.y);
      ck_assert_double_le (corrected.field.max.x, corrected.room.max.x);
      ck_assert_double_le (corrected.field.max.y, corrected.room.max.y);
    }
}
END_TEST

static Point
curve_at (const Point p[4], double t)
{
  const double s = 1 - t;

  return (Point) { s * s * s * p[0].x + 3 * s * s * t * p[1].x + 3 * s * t * t * p[2].x + t * t * t * p[3].x,
                   s * s * s * p[0].y + 3 * s * s * t * p[1].y + 3 * s * t * t * p[2].y + t * t * t * p[3].y };
}

/* How far a place is from a line's edge; its closing line counts. */
static double
off_line (const FlatLine *line, Point place)
{
  const Segment closing = segment_line (line->start);
  Point from = line->start;
  double nearest = INFINITY, distance;

  for (size_t k = 0; k <= line->count; k++)
    {
      const Segment *segment = k < line->count ? &line->segments[k] : &closing;

      segment_nearest (from, segment, place, &distance);
      nearest = fmin (nearest, distance);
      from = segment->to;
    }
  return nearest;
}

/* How far the path strays from the line once its start is laid on the line's: along all of it. */
static double
strays (const Path *path, const FlatLine *line, double scale_x)
{
  const Point start = g_array_index (path->points, Point, 0);
  double worst = 0;

  for (guint i = 0; i + 3 < path->points->len; i += 3)
    for (int step = 0; step <= 20; step++)
      {
        const Point at = curve_at (&g_array_index (path->points, Point, i), step / 20.0);

        worst = fmax (worst, off_line (line, (Point) { line->start.x + (at.x - start.x) / scale_x, line->start.y + at.y - start.y }));
      }
  return worst;
}

START_TEST (the_edge_in_the_file_is_the_outline_within_a_hundredth)
{
  g_autoptr (GPtrArray) pieces = usual_pieces ();
  TemplateSheet sheet = sheet_of (pieces, "a4");
  const double read[] = { 100, 99.2 };
  sheet.one_page = true;
  sheet.read_long = read[_i];
  g_autoptr (SheetPages) pages = pages_of (&sheet);
  g_autoptr (GArray) strokes = strokes_of (pages, 0);

  for (guint i = 0; i < 2; i++)      /* both halves: line, ellipse, curve */
    {
      const FlatPiece *piece = pieces->pdata[i];
      double best = INFINITY;

      for (guint k = 0; k < strokes->len; k++)
        {
          const Path *path = &g_array_index (strokes, Path, k);

          if (path->closed && path->points->len > 13)      /* more than a box */
            best = fmin (best, strays (path, &g_array_index (piece->lines, FlatLine, 0), 100 / read[_i]));
        }
      ck_assert_msg (best < true_to_size, "%s: %g mm off", piece->name, best);
    }
}
END_TEST

/* Painted at 4 px a mm. */
enum { FINENESS = 4, NEAR = 2 };

static cairo_surface_t *
picture_new (Point size, cairo_t **cr)
{
  cairo_surface_t *picture = cairo_image_surface_create (CAIRO_FORMAT_A8, (int) ceil (size.x * FINENESS), (int) ceil (size.y * FINENESS));

  *cr = cairo_create (picture);
  cairo_scale (*cr, FINENESS, FINENESS);
  return picture;
}

static bool
is_inked (cairo_surface_t *picture, int x, int y)
{
  const unsigned char *data = cairo_image_surface_get_data (picture);

  return data[y * cairo_image_surface_get_stride (picture) + x] > 90;
}

/* Ink of one within half a mm of any ink of the other: the reader lays thin lines on whole pixels, and dashes move along. */
static bool
is_near_ink (cairo_surface_t *picture, int x, int y)
{
  const unsigned char *data = cairo_image_surface_get_data (picture);

  for (int v = y - NEAR; v <= y + NEAR; v++)
    for (int u = x - NEAR; u <= x + NEAR; u++)
      if (data[v * cairo_image_surface_get_stride (picture) + u] > 20)
        return true;
  return false;
}

/* Where pages have marks of their own: near a line through crosses. */
static bool
is_by_an_edge (double x, double y, Point step)
{
  const double line = 0.6, cross = 4.6;
  const double across = fabs (remainder (x, step.x)), down = fabs (remainder (y, step.y));

  return across < line || down < line || (across < cross && down < cross);
}

/* Pages as another program paints them, each cut along its crosses and laid where it belongs. */
static cairo_surface_t *
pasted (PopplerDocument *document, const TemplatePaper *paper, const TemplateTiles *tiles, Point size)
{
  cairo_t *cr;
  cairo_surface_t *picture = picture_new (size, &cr);
  int page = 0;

  for (size_t i = 0; i < tiles->columns * tiles->rows; i++)
    {
      const Box tile = template_tile_box (tiles, i);

      if (!tiles->drawn[i])
        continue;
      PopplerPage *read = poppler_document_get_page (document, page++);
      cairo_save (cr);
      cairo_rectangle (cr, tile.min.x, tile.min.y, paper->step.x, paper->step.y);
      cairo_clip (cr);
      cairo_translate (cr, tile.min.x - paper->field.min.x - TEMPLATE_OVERLAP / 2, tile.min.y - paper->field.min.y - TEMPLATE_OVERLAP / 2);
      cairo_scale (cr, mm_in_inch / 72, mm_in_inch / 72);
      poppler_page_render_for_printing (read, cr);
      cairo_restore (cr);
      g_object_unref (read);
    }
  ck_assert_int_eq (page, poppler_document_get_n_pages (document));
  cairo_destroy (cr);
  cairo_surface_flush (picture);
  return picture;
}

/* Ink of `a` that `b` lacks, away from the pages' own marks. */
static int
lacking (cairo_surface_t *a, cairo_surface_t *b, Point step, int *inked)
{
  int lacks = 0;

  *inked = 0;
  for (int y = NEAR; y + NEAR < cairo_image_surface_get_height (a); y++)
    for (int x = NEAR; x + NEAR < cairo_image_surface_get_width (a); x++)
      if (is_inked (a, x, y) && !is_by_an_edge ((double) x / FINENESS, (double) y / FINENESS, step))
        {
          *inked += 1;
          lacks += !is_near_ink (b, x, y);
        }
  return lacks;
}

START_TEST (tiles_cut_and_laid_side_by_side_are_the_whole)
{
  g_autoptr (GPtrArray) pieces = usual_pieces ();
  TemplateSheet sheet = sheet_of (pieces, papers[_i].paper);
  sheet.portrait = papers[_i].portrait;
  g_autoptr (SheetPages) pages = pages_of (&sheet);
  PopplerDocument *document = pdf_of (pages);
  const Look look = look_for_paper ();
  const TemplateNotes notes = template_notes_of (&sheet);
  TemplatePaper paper;
  cairo_t *cr;
  int inked, back;

  ck_assert (template_paper_divide (&sheet, &paper));
  SheetPen pen = { .look = &look, .lettering = lettering_begin (NULL, &look) };
  TemplatePlaces places = template_place (&pen, pieces, &notes, &paper.step);
  const Point size = { places.size.x + 1, places.size.y + 1 };
  cairo_surface_t *whole = picture_new (size, &cr), *glued = pasted (document, &paper, &places.tiles, size);
  pen = (SheetPen) { .cr = cr, .look = &look, .lettering = lettering_begin (cr, &look) };
  for (int ink = 0; ink < TEMPLATE_INK_COUNT; ink++)
    template_places_draw (&pen, &places, &notes, (Box) { { 0, 0 }, size }, (TemplateInk) ink);
  cairo_surface_flush (whole);
  ck_assert_int_eq (lacking (whole, glued, paper.step, &inked), 0);
  ck_assert_int_eq (lacking (glued, whole, paper.step, &back), 0);
  ck_assert_int_gt (MIN (inked, back), 10000);
  cairo_destroy (cr);
  cairo_surface_destroy (whole);
  cairo_surface_destroy (glued);
  template_places_clear (&places);
  g_object_unref (document);
}
END_TEST

/* A corner as large as four sheets, of which only two edges are drawn. */
START_TEST (tiles_without_anything_on_them_are_left_out)
{
  g_autoptr (GPtrArray) pieces = g_ptr_array_new_with_free_func (free_piece);
  FlatPiece *corner = flat_piece_new ("Corner", NULL);
  const Segment legs[] = { segment_line ((Point) { 0, 400 }), segment_line ((Point) { 700, 400 }) };
  flat_piece_add_line (corner, FLAT_CUT, false, (Point) { 0, 0 }, legs, 2);
  g_ptr_array_add (pieces, corner);
  const TemplateSheet sheet = sheet_of (pieces, "a4");
  g_autoptr (SheetPages) pages = pages_of (&sheet);
  PopplerDocument *document = pdf_of (pages);
  g_autofree char *first = words_of (document, 0), *second = words_of (document, 1);

  ck_assert_uint_eq (sheet_pages_count (pages), 5);      /* of 3 × 3: three down the one side, three along the other, one in common */
  ck_assert_ptr_nonnull (strstr (first, "A1"));
  ck_assert_ptr_nonnull (strstr (first, "Glue: B1 here"));
  ck_assert_ptr_null (strstr (first, "A2"));
  ck_assert_ptr_nonnull (strstr (second, "B1"));
  ck_assert_ptr_nonnull (strstr (second, "Glue: C1 here"));
  g_object_unref (document);
}
END_TEST

START_TEST (pages_that_nothing_reaches_over_are_not_glued)
{
  g_autoptr (GPtrArray) pieces = g_ptr_array_new_with_free_func (free_piece);
  for (int i = 0; i < 2; i++)
    g_ptr_array_add (pieces, plate ("Plate", 200, 120));
  const TemplateSheet sheet = sheet_of (pieces, "a4");
  g_autoptr (SheetPages) pages = pages_of (&sheet);
  PopplerDocument *document = pdf_of (pages);

  ck_assert_uint_ge (sheet_pages_count (pages), 2);      /* neither is cut by an edge */
  for (size_t i = 0; i < sheet_pages_count (pages); i++)
    {
      g_autofree char *words = words_of (document, i);

      ck_assert_msg (strstr (words, "Glue:") == NULL, "%s", words);
    }
  g_object_unref (document);
}
END_TEST

START_TEST (the_same_pieces_give_the_same_bytes)
{
  g_autoptr (SheetPages) first = usual_pages ("a4", false, _i == 1), second = usual_pages ("a4", false, _i == 1);
  g_autoptr (GBytes) a = sheet_pdf (first, NULL), b = sheet_pdf (second, NULL);

  ck_assert (g_bytes_equal (a, b));
}
END_TEST

START_TEST (what_cannot_be_laid_out_is_refused_in_a_sentence)
{
  const Paper card = { .word = "card", .title = "Card", .width = 148, .height = 105 };
  g_autoptr (GPtrArray) none = g_ptr_array_new (), some = usual_pieces ();
  TemplateSheet sheet = sheet_of (_i == 0 ? none : some, "a4");
  g_autoptr (GError) error = NULL;

  if (_i == 1)
    sheet.paper = &card;
  ck_assert_ptr_null (template_layout_new (&sheet, &error));
  ck_assert_int_eq (error->code, _i == 0 ? EXPORT_ERROR_DRAWING : EXPORT_ERROR_PAPER);
  ck_assert_str_eq (error->message, _i == 0 ? "There is nothing to cut out yet: draw a wing first."
                    : "Card paper leaves no room for the template beside its margins and control lines; take a larger one.");
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("template");

  tcase_set_timeout (tests, 120);
  tcase_add_loop_test (tests, every_tile_is_a_page_of_its_papers_exact_size, 0, G_N_ELEMENTS (papers));
  tcase_add_loop_test (tests, every_page_says_whose_it_is_which_it_is_and_how_to_print_it, 0, G_N_ELEMENTS (papers));
  tcase_add_loop_test (tests, pieces_and_cautions_stand_on_it_by_name, 0, 2);
  tcase_add_loop_test (tests, control_lines_are_true_on_every_page, 0, G_N_ELEMENTS (papers) + 1);
  tcase_add_loop_test (tests, what_a_printer_is_off_by_is_made_up_for_by_the_papers_own_sides, 0, G_N_ELEMENTS (printers));
  tcase_add_loop_test (tests, a_small_correction_leaves_every_tile_where_it_was, 0, G_N_ELEMENTS (papers));
  tcase_add_loop_test (tests, the_edge_in_the_file_is_the_outline_within_a_hundredth, 0, 2);
  tcase_add_loop_test (tests, tiles_cut_and_laid_side_by_side_are_the_whole, 0, G_N_ELEMENTS (papers));
  tcase_add_test (tests, tiles_without_anything_on_them_are_left_out);
  tcase_add_test (tests, pages_that_nothing_reaches_over_are_not_glued);
  tcase_add_loop_test (tests, the_same_pieces_give_the_same_bytes, 0, 2);
  tcase_add_loop_test (tests, what_cannot_be_laid_out_is_refused_in_a_sentence, 0, 2);
  return run_suite (suite_create ("drawing template"), tests);
}
