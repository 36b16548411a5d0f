/* A template's files measured as another program reads them. */
#include <libxml/parser.h>
#include <math.h>
#include "drawing/flat-body.h"
#include "drawing/flat-pieces.h"
#include "drawing/template-paper.h"
#include "support/figures-once.h"
#include "support/sheets.h"
#include "support/template-stage.h"

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

/* Of a whole aeroplane: surfaces, body, hatch, floor, strip and stand. */
START_TEST (every_edge_of_an_aeroplane_is_in_the_file_within_a_hundredth)
{
  Aeroplane *aeroplane = example_racer ();
  Figures *figures = figures_once (aeroplane);
  ExportOptions options = export_default_options ("template.svg");
  g_autoptr (GPtrArray) pieces = flat_pieces_of (figures, options.units, options.halves);
  options.sheet = EXPORT_TEMPLATE;
  g_autoptr (SheetPages) pages = sheet_pages_new (figures, &options, NULL);
  g_autoptr (GArray) strokes = strokes_of (pages, 0);

  flat_body_add (pieces, figures);
  ck_assert_uint_eq (pieces->len, 11);
  for (guint i = 0; i < pieces->len; i++)
    {
      const FlatPiece *piece = pieces->pdata[i];
      double best = INFINITY;

      for (guint k = 0; k < strokes->len; k++)
        if (g_array_index (strokes, Path, k).closed)
          best = fmin (best, strays (&g_array_index (strokes, Path, k), &g_array_index (piece->lines, FlatLine, 0), 1));
      ck_assert_msg (best < true_to_size, "%s: %g mm off", piece->name, best);
    }
  figures_unref (figures);
  aeroplane_unref (aeroplane);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("template, true to size");

  tcase_set_timeout (tests, 120);
  tcase_add_loop_test (tests, control_lines_are_true_on_every_page, 0, G_N_ELEMENTS (papers) + 1);
  tcase_add_loop_test (tests, what_a_printer_is_off_by_is_made_up_for_by_the_papers_own_sides, 0, G_N_ELEMENTS (printers));
  tcase_add_loop_test (tests, a_small_correction_leaves_every_tile_where_it_was, 0, G_N_ELEMENTS (papers));
  tcase_add_loop_test (tests, the_edge_in_the_file_is_the_outline_within_a_hundredth, 0, 2);
  tcase_add_test (tests, every_edge_of_an_aeroplane_is_in_the_file_within_a_hundredth);
  return run_suite (suite_create ("drawing template, true to size"), tests);
}
