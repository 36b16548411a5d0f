/* What a template's pages hold and say. */
#include <math.h>
#include "drawing/template-line.h"
#include "support/template-stage.h"

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

/* Width and dashes as they are set. */
typedef struct { double width, dashes[6]; int count; } LineLook;

static LineLook
line_look (cairo_t *cr, FlatPurpose purpose)
{
  const Look look = look_for_paper ();
  LineLook looks = { 0 };

  template_line_set (&(SheetPen) { .cr = cr, .look = &look }, purpose);
  looks.width = cairo_get_line_width (cr);
  looks.count = cairo_get_dash_count (cr);
  cairo_get_dash (cr, looks.dashes, NULL);
  return looks;
}

/* All but openings, which are cut as edges are; limits are short, and stand at their mark. */
START_TEST (every_kind_of_line_has_a_look_of_its_own)
{
  static const FlatPurpose purposes[] = { FLAT_CUT, FLAT_HINGE, FLAT_BEVEL, FLAT_STATION, FLAT_CENTRE, FLAT_MARK, FLAT_ROOM };
  cairo_surface_t *picture = cairo_image_surface_create (CAIRO_FORMAT_A8, 1, 1);
  cairo_t *cr = cairo_create (picture);

  for (size_t i = 0; i < G_N_ELEMENTS (purposes); i++)
    for (size_t k = 0; k < i; k++)
      {
        const LineLook a = line_look (cr, purposes[i]), b = line_look (cr, purposes[k]);
        const bool same_dashes = a.count == b.count && memcmp (a.dashes, b.dashes, sizeof a.dashes) == 0;

        ck_assert_msg (!same_dashes || fabs (a.width - b.width) > 0.12, "%d and %d look alike", purposes[i], purposes[k]);
      }
  cairo_destroy (cr);
  cairo_surface_destroy (picture);
}
END_TEST

START_TEST (the_first_page_tells_how_it_is_put_together_and_what_its_lines_say)
{
  static const char *const wanted[] = { "SALTMARSH RACER", "Trim a page along the broken line", "Lay a steel rule along the lines of 100 mm", "Cut out along",
                                        "dash and dot: hinge line, the control comes off here", "dots: how far its edge is bevelled",
                                        "thick, long dashes: opening, cut out", "Ribs and formers themselves are not drawn", "type what you read", "A1", "The figures are estimates." };
  g_autoptr (SheetPages) pages = usual_pages (papers[_i].paper, papers[_i].portrait, false);
  PopplerDocument *document = pdf_of (pages);

  for (size_t i = 0; i < sheet_pages_count (pages); i++)
    {
      g_autofree char *words = words_of (document, i);
      g_auto (GStrv) lines = g_strsplit (words, "\n", -1);
      g_autofree char *flat = g_strjoinv (" ", lines);

      for (size_t k = 0; i == 0 && k < G_N_ELEMENTS (wanted); k++)
        ck_assert_msg (strstr (flat, wanted[k]) != NULL, "“%s” is not in: %s", wanted[k], flat);
      ck_assert (i == 0 || strstr (flat, "Trim a page") == NULL);
      ck_assert (i > 0 || sheet_pages_count (pages) == 1 || strstr (flat, "A2") != NULL || strstr (flat, "B1") != NULL);      /* on the map */
    }
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
  tcase_add_test (tests, every_kind_of_line_has_a_look_of_its_own);
  tcase_add_loop_test (tests, the_first_page_tells_how_it_is_put_together_and_what_its_lines_say, 0, G_N_ELEMENTS (papers));
  tcase_add_test (tests, tiles_without_anything_on_them_are_left_out);
  tcase_add_test (tests, pages_that_nothing_reaches_over_are_not_glued);
  tcase_add_loop_test (tests, the_same_pieces_give_the_same_bytes, 0, 2);
  tcase_add_loop_test (tests, what_cannot_be_laid_out_is_refused_in_a_sentence, 0, 2);
  return run_suite (suite_create ("drawing template"), tests);
}
