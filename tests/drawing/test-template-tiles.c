/* How a template's tiles are put together, and what its words keep off. */
#include <math.h>
#include "drawing/flat-body.h"
#include "drawing/flat-pieces.h"
#include "drawing/lettering-font.h"
#include "drawing/template-keep.h"
#include "drawing/template-paper.h"
#include "drawing/template-tiles.h"
#include "support/figures-once.h"
#include "support/sheets.h"
#include "support/template-stage.h"

/* Painted at 4 px a mm. */
enum { FINENESS = 4, NEAR = 2 };

static cairo_surface_t *
picture_new (Point size, cairo_t **cr)
{
  cairo_surface_t *picture = cairo_image_surface_create (CAIRO_FORMAT_RGB24, (int) ceil (size.x * FINENESS), (int) ceil (size.y * FINENESS));

  *cr = cairo_create (picture);
  cairo_set_source_rgb (*cr, 1, 1, 1);
  cairo_paint (*cr);
  cairo_scale (*cr, FINENESS, FINENESS);
  return picture;
}

/* 0 white to 255 black: all of it is grey. */
static int
black_at (cairo_surface_t *picture, int x, int y)
{
  return 255 - cairo_image_surface_get_data (picture)[y * cairo_image_surface_get_stride (picture) + 4 * x];
}

static bool
is_inked (cairo_surface_t *picture, int x, int y)
{
  return black_at (picture, x, y) > 90;
}

/* Ink of one within half a mm of any ink of the other: the reader lays thin lines on whole pixels, and dashes move along. */
static bool
is_near_ink (cairo_surface_t *picture, int x, int y)
{
  for (int v = y - NEAR; v <= y + NEAR; v++)
    for (int u = x - NEAR; u <= x + NEAR; u++)
      if (black_at (picture, u, v) > 20)
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

/* A page's own place in the area, and how far content reaches on it: over a glued edge, no further than the crosses elsewhere. */
static Box
seen_of (const TemplatePaper *paper, const TemplatePlaces *places, size_t tile)
{
  const double half = TEMPLATE_OVERLAP / 2;
  Box box = template_tile_box (&places->tiles, tile);

  box.min.x -= template_tiles_join (places, tile, -1, 0) ? half : 0;
  box.min.y -= template_tiles_join (places, tile, 0, -1) ? half : 0;
  box.max.x += template_tiles_join (places, tile, 1, 0) ? half : 0;
  box.max.y += template_tiles_join (places, tile, 0, 1) ? half : 0;
  return box;
}

/* The page as another program paints it, laid so that the tile's corner is at the crosses' place on the paper. */
static cairo_surface_t *
page_picture (PopplerDocument *document, int page, const TemplateSheet *sheet)
{
  const Point size = { sheet->portrait ? sheet->paper->height : sheet->paper->width, sheet->portrait ? sheet->paper->width : sheet->paper->height };
  PopplerPage *read = poppler_document_get_page (document, page);
  cairo_t *cr;
  cairo_surface_t *picture = picture_new (size, &cr);

  cairo_scale (cr, mm_in_inch / 72, mm_in_inch / 72);
  poppler_page_render_for_printing (read, cr);
  g_object_unref (read);
  cairo_destroy (cr);
  cairo_surface_flush (picture);
  return picture;
}

/* Edges, hinges and marks alone, as they lie on that page. */
static cairo_surface_t *
firm_picture (const TemplateSheet *sheet, const TemplatePaper *paper, const TemplatePlaces *places, const TemplateNotes *notes, size_t tile)
{
  const Point size = { sheet->portrait ? sheet->paper->height : sheet->paper->width, sheet->portrait ? sheet->paper->width : sheet->paper->height };
  const Box own = template_tile_box (&places->tiles, tile), seen = seen_of (paper, places, tile);
  const Look look = look_for_paper ();
  cairo_t *cr;
  cairo_surface_t *picture = picture_new (size, &cr);
  const SheetPen pen = { .cr = cr, .look = &look, .lettering = lettering_begin (cr, &look) };

  cairo_translate (cr, paper->field.min.x + TEMPLATE_OVERLAP / 2 - own.min.x, paper->field.min.y + TEMPLATE_OVERLAP / 2 - own.min.y);
  cairo_rectangle (cr, seen.min.x, seen.min.y, seen.max.x - seen.min.x, seen.max.y - seen.min.y);
  cairo_clip (cr);
  template_places_draw (&pen, places, notes, own, TEMPLATE_FIRM);
  cairo_destroy (cr);
  cairo_surface_flush (picture);
  return picture;
}

START_TEST (no_word_and_no_hatch_hides_an_edge_a_hinge_or_a_mark)
{
  g_autoptr (GPtrArray) pieces = usual_pieces ();
  /* Letters so large that between them their ground would show. */
  flat_piece_add_words (pieces->pdata[0], FLAT_STATION, 6, (Point) { 100, 63 }, "upon the edge");
  flat_piece_add_words (pieces->pdata[1], FLAT_STATION, 6, (Point) { -160, 139 }, "upon the hinge");
  TemplateSheet sheet = sheet_of (pieces, papers[_i].paper);
  sheet.portrait = papers[_i].portrait;
  g_autoptr (SheetPages) pages = pages_of (&sheet);
  PopplerDocument *document = pdf_of (pages);
  const TemplateNotes notes = template_notes_of (&sheet);
  const Look look = look_for_paper ();
  const SheetPen pen = { .look = &look, .lettering = lettering_begin (NULL, &look) };
  TemplatePaper paper;
  int page = 0, inked = 0, all = 0;

  ck_assert (template_paper_divide (&sheet, &paper));
  TemplatePlaces places = template_place (&pen, pieces, &notes, &paper.step);
  for (size_t i = 0; i < places.tiles.columns * places.tiles.rows; i++)
    if (places.tiles.drawn[i])
      {
        cairo_surface_t *firm = firm_picture (&sheet, &paper, &places, &notes, i), *whole = page_picture (document, page++, &sheet);

        ck_assert_int_eq (lacking (firm, whole, (Point) { 1e6, 1e6 }, &inked), 0);
        all += inked;
        cairo_surface_destroy (firm);
        cairo_surface_destroy (whole);
      }
  ck_assert_int_gt (all, 10000);
  template_places_clear (&places);
  g_object_unref (document);
}
END_TEST

static bool
is_in_one_tile (Box box, Point step)
{
  return floor (box.min.x / step.x) == floor (box.max.x / step.x) && floor (box.min.y / step.y) == floor (box.max.y / step.y);
}

/* Words all over the piece, so that some would be cut wherever edges of tiles are. */
static FlatPiece *
wordy_piece (void)
{
  FlatPiece *piece = flat_piece_new ("Wordy plate, starboard", "Its remark is long enough to be broken into several lines above a plate as wide as this.");

  flat_piece_add_box (piece, FLAT_CUT, (Box) { { 0, 0 }, { 500, 300 } });
  for (int x = 0; x < 480; x += 37)
    for (int y = 5; y < 295; y += 23)
      flat_piece_add_words (piece, FLAT_STATION, 2, (Point) { x, y }, "in one piece");
  return piece;
}

START_TEST (no_word_and_no_name_is_cut_by_a_trim_or_glue_line)
{
  g_autoptr (GPtrArray) pieces = usual_pieces ();
  g_ptr_array_add (pieces, wordy_piece ());
  TemplateSheet sheet = sheet_of (pieces, papers[_i].paper);
  sheet.portrait = papers[_i].portrait;
  const TemplateNotes notes = template_notes_of (&sheet);
  const Look look = look_for_paper ();
  const SheetPen pen = { .look = &look, .lettering = lettering_begin (NULL, &look) };
  TemplatePaper paper;
  int moved = 0;

  ck_assert (template_paper_divide (&sheet, &paper));
  TemplatePlaces places = template_place (&pen, pieces, &notes, &paper.step);
  ck_assert (is_in_one_tile (places.notes, paper.step));
  for (guint i = 0; i < places.cells->len; i++)
    {
      const TemplateCell *cell = &g_array_index (places.cells, TemplateCell, i);
      const Point name = template_keep_caption (cell);

      ck_assert_msg (is_in_one_tile ((Box) { name, point_add (name, cell->caption) }, paper.step), "%s", cell->piece->name);
      for (guint k = 0; k < cell->piece->words->len; k++)
        {
          const Point by = template_keep_shift (&pen, cell, k);

          ck_assert (is_in_one_tile (template_keep_word (&pen, cell, k), paper.step));
          moved += by.x != 0 || by.y != 0;
        }
    }
  ck_assert (moved > 0 || _i > 0);      /* pieces lie so that few must give way; on the first of the papers some must */
  template_places_clear (&places);
}
END_TEST

/* Drawn up to a tile's middle such a piece would lie too near to what ends just above. */
START_TEST (pieces_that_fill_a_tile_find_a_place_of_their_own)
{
  g_autoptr (GPtrArray) pieces = usual_pieces ();
  TemplateSheet sheet = sheet_of (pieces, papers[_i].paper);
  sheet.portrait = papers[_i].portrait;
  const TemplateNotes notes = template_notes_of (&sheet);
  const Look look = look_for_paper ();
  const SheetPen pen = { .look = &look, .lettering = lettering_begin (NULL, &look) };
  TemplatePaper paper;

  ck_assert (template_paper_divide (&sheet, &paper));
  for (double left = 2; left < 24; left += 1)
    g_ptr_array_add (pieces, plate ("Lid", paper.step.x - 30, paper.step.y - left));
  TemplatePlaces places = template_place (&pen, pieces, &notes, &paper.step);
  ck_assert (isfinite (places.size.x) && isfinite (places.size.y));
  for (guint i = 0; i < places.cells->len; i++)
    for (guint k = 0; k < i; k++)
      ck_assert (!boxes_meet (g_array_index (places.cells, TemplateCell, i).box, g_array_index (places.cells, TemplateCell, k).box));
  template_places_clear (&places);
}
END_TEST

/* How wide and high what lies on the tile is there, at most: of notes and of each piece. */
static Point
most_on (const TemplatePlaces *places, Box tile)
{
  Point most = { 0, 0 };

  for (guint i = 0; i <= places->cells->len; i++)
    {
      const Box box = i < places->cells->len ? g_array_index (places->cells, TemplateCell, i).box : places->notes;
      const Point on = { fmin (box.max.x, tile.max.x) - fmax (box.min.x, tile.min.x), fmin (box.max.y, tile.max.y) - fmax (box.min.y, tile.min.y) };

      if (on.x > 0 && on.y > 0)
        most = (Point) { fmax (most.x, on.x), fmax (most.y, on.y) };
    }
  return most;
}

/* As few as were found, and one more for the racer on A4, which all but fills them. */
static const struct { Aeroplane *(*make) (void); const char *paper; size_t pages; } few[] = {
  { example_racer, "a4", 8 }, { example_racer, "a3", 4 }, { example_tourer, "a4", 9 }, { example_tourer, "letter", 9 } };

START_TEST (an_example_needs_few_pages_and_none_for_a_tip_alone)
{
  const double sliver = 15;
  Aeroplane *aeroplane = few[_i].make ();
  Figures *figures = figures_once (aeroplane);
  g_autoptr (GPtrArray) pieces = flat_pieces_of (figures, export_default_options ("template.pdf").units, EXPORT_BOTH_HALVES);
  flat_body_add (pieces, figures);
  TemplateSheet sheet = sheet_of (pieces, few[_i].paper);
  const TemplateNotes notes = template_notes_of (&sheet);
  const Look look = look_for_paper ();
  const SheetPen pen = { .look = &look, .lettering = lettering_begin (NULL, &look) };
  TemplatePaper paper;
  size_t pages = 0;

  ck_assert (template_paper_divide (&sheet, &paper));
  TemplatePlaces places = template_place (&pen, pieces, &notes, &paper.step);
  for (size_t i = 0; i < places.tiles.columns * places.tiles.rows; i++)
    if (places.tiles.drawn[i])
      {
        const Point most = most_on (&places, template_tile_box (&places.tiles, i));

        pages++;
        ck_assert_msg (most.x > sliver && most.y > sliver, "tile %zu holds %.0f × %.0f mm", i, most.x, most.y);
      }
  ck_assert_uint_le (pages, few[_i].pages);
  template_places_clear (&places);
  figures_unref (figures);
  aeroplane_unref (aeroplane);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("template, its tiles");

  lettering_font_add ();
  tcase_set_timeout (tests, 120);
  tcase_add_loop_test (tests, tiles_cut_and_laid_side_by_side_are_the_whole, 0, G_N_ELEMENTS (papers));
  tcase_add_loop_test (tests, no_word_and_no_hatch_hides_an_edge_a_hinge_or_a_mark, 0, G_N_ELEMENTS (papers));
  tcase_add_loop_test (tests, no_word_and_no_name_is_cut_by_a_trim_or_glue_line, 0, G_N_ELEMENTS (papers));
  tcase_add_loop_test (tests, pieces_that_fill_a_tile_find_a_place_of_their_own, 0, G_N_ELEMENTS (papers));
  tcase_add_loop_test (tests, an_example_needs_few_pages_and_none_for_a_tip_alone, 0, G_N_ELEMENTS (few));
  return run_suite (suite_create ("drawing template, its tiles"), tests);
}
