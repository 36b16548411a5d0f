#include <check.h>
#include <math.h>
#include <stdio.h>
#include <unistd.h>
#include "support/pictures.h"
#include "support/run-suite.h"

static Raster *
page_at (int file, int page, double dpi, DecodeFacts *facts)
{
  const DecodeRequest request = { .file = file, .page = page, .dpi = dpi };
  Raster *raster = NULL;

  ck_assert_int_eq (decode (&request, NULL, facts, &raster), DECODE_OK);
  return raster;
}

START_TEST (a_page_is_drawn_at_true_size)
{
  const int file = file_of (pdf_drawn (1));
  DecodeFacts facts;
  Raster *raster = page_at (file, 1, 144, &facts);

  ck_assert_int_eq (facts.kind, DECODE_PDF);
  ck_assert_double_eq_tol (facts.page_width_mm, 101 * 25.4 / 72, 1e-9);
  ck_assert_double_eq_tol (facts.page_height_mm, 50 * 25.4 / 72, 1e-9);
  ck_assert_double_eq_tol (facts.width_px, 202, 1e-9);
  ck_assert_int_eq (raster_width (raster), 202);
  ck_assert_int_eq (raster_height (raster), 100);
  ck_assert_int_eq (raster_channels (raster), 1);
  ck_assert_int_eq (raster_row (raster, 19)[19], 0);
  ck_assert_int_eq (raster_row (raster, 20)[20], 255);
  raster_unref (raster);
  close (file);
}
END_TEST

START_TEST (a_page_is_drawn_at_three_hundred_dots_unless_told)
{
  const int file = file_of (pdf_drawn (1));
  DecodeFacts facts;
  Raster *raster = page_at (file, 0, 0, &facts);

  ck_assert_double_eq_tol (facts.width_px, 101 * 300 / 72.0, 1e-9);
  ck_assert_int_eq (raster_width (raster), 421);
  raster_unref (raster);
  close (file);
}
END_TEST

START_TEST (of_a_thousand_pages_one_is_drawn)
{
  const int file = file_of (pdf_drawn (1000));
  DecodeFacts facts;

  raster_unref (page_at (file, 777, 72, &facts));
  ck_assert_int_eq (facts.pages, 1000);
  ck_assert_double_eq_tol (facts.width_px, 100 + 777, 1e-9);
  close (file);
}
END_TEST

static void
assert_tiff_page (int file, int page)
{
  DecodeFacts facts;
  Raster *raster = page_at (file, page, 0, &facts);

  ck_assert_int_eq (facts.kind, DECODE_TIFF);
  ck_assert_int_eq (facts.pages, 4);
  ck_assert_int_eq (raster_width (raster), 10 + page);
  ck_assert_int_eq (raster_row (raster, 3)[5], 20 * page);
  raster_unref (raster);
}

START_TEST (each_page_of_a_tiff_is_read_and_thumbnails_are_none)
{
  const int plain = file_of (tiff_of_pages (4, false)), with_thumbnails = file_of (tiff_of_pages (4, true));
  const DecodeRequest fifth = { .file = with_thumbnails, .page = 5 };

  for (int page = 1; page <= 4; page++)
    {
      assert_tiff_page (plain, page);
      assert_tiff_page (with_thumbnails, page);
    }
  ck_assert_int_eq (decode (&fifth, NULL, NULL, NULL), DECODE_NO_SUCH_PAGE);
  close (plain);
  close (with_thumbnails);
}
END_TEST

/* A directory that names itself, or an earlier one, as the next. */
START_TEST (pages_that_go_round_in_a_ring_are_each_counted_once)
{
  Bytes tiff = tiff_of_pages (4, false);
  size_t at = 8;
  DecodeFacts facts;

  for (int page = 1; page < 4; page++)
    at = tiff.bytes[at + 2 + 12 * 9] + 256u * tiff.bytes[at + 2 + 12 * 9 + 1];
  tiff.bytes[at + 2 + 12 * 9] = 8;
  raster_unref (decoded (file_of (tiff), &facts));
  ck_assert_int_eq (facts.pages, 4);
}
END_TEST

START_TEST (a_page_that_is_not_there_is_told)
{
  const int pdf = file_of (pdf_drawn (3)), png = file_of (png_drawn (LOOK_GREY, 32, 16));
  DecodeRequest request = { .file = pdf, .page = 4 };

  ck_assert_int_eq (decode (&request, NULL, NULL, NULL), DECODE_NO_SUCH_PAGE);
  request.page = -1;
  ck_assert_int_eq (decode (&request, NULL, NULL, NULL), DECODE_NO_SUCH_PAGE);
  request = (DecodeRequest) { .file = png, .page = 2 };
  ck_assert_int_eq (decode (&request, NULL, NULL, NULL), DECODE_NO_SUCH_PAGE);
  close (pdf);
  close (png);
}
END_TEST

START_TEST (a_large_page_is_drawn_coarser_by_a_whole_factor)
{
  const int file = file_of (pdf_drawn (1));
  const DecodeRequest request = { .file = file, .dpi = 144, .most_pixels = 5000 };
  DecodeFacts facts;
  Raster *raster = NULL;

  /* 202 by 100 pixels are 20200; halved 5050 are still too many. */
  ck_assert_int_eq (decode (&request, NULL, &facts, &raster), DECODE_OK);
  ck_assert_int_eq (facts.reduced, 3);
  ck_assert_int_eq (raster_reduced (raster), 3);
  ck_assert_double_eq_tol (facts.width_px, 202, 1e-9);
  ck_assert_int_eq (raster_width (raster), 68);
  ck_assert_int_eq (raster_row (raster, 5)[5], 0);
  ck_assert_int_eq (raster_row (raster, 7)[7], 255);
  raster_unref (raster);
  close (file);
}
END_TEST

START_TEST (a_locked_document_asks_for_its_password)
{
  ck_assert_int_eq (decoding_ends (file_of (pdf_locked ())), DECODE_NEEDS_PASSWORD);
}
END_TEST

static DecodeFacts
drawing_facts (const char *size)
{
  char text[400];
  DecodeFacts facts;
  Raster *raster;

  snprintf (text, sizeof text, "<?xml version='1.0'?>\n<svg xmlns='http://www.w3.org/2000/svg' %s>"
            "<rect width='50%%' height='100%%' fill='red'/></svg>", size);
  raster = decoded (file_of (text_bytes (text)), &facts);
  ck_assert_int_eq (facts.kind, DECODE_SVG);
  ck_assert_int_eq (raster_width (raster), 600);
  ck_assert_int_eq (raster_row (raster, 0)[1], 0);
  ck_assert_int_eq (raster_row (raster, 0)[3 * raster_width (raster) - 2], 255);
  raster_unref (raster);
  return facts;
}

START_TEST (a_drawing_in_units_of_paper_has_its_true_size)
{
  static const char *const INCHES[] = {
    "width='50.8mm' height='25.4mm'", "width='5.08cm' height='2.54cm'", "width='2in' height='1in'", "width='144pt' height='72pt'",
    "width='12pc' height='6pc'", "width='2in' viewBox='0 0 400 200'", "height='1in' viewBox='0 0 400 200'",
  };

  for (size_t i = 0; i < sizeof INCHES / sizeof *INCHES; i++)
    {
      const DecodeFacts facts = drawing_facts (INCHES[i]);

      ck_assert_double_eq_tol (facts.page_width_mm, 50.8, 1e-5);
      ck_assert_double_eq_tol (facts.page_height_mm, 25.4, 1e-5);
      ck_assert_double_eq_tol (facts.width_px, 600, 1e-4);
      ck_assert_double_eq_tol (facts.height_px, 300, 1e-4);
    }
}
END_TEST

/* A user unit is 1/96 inch by convention, but whoever drew it may have meant anything. */
START_TEST (a_drawing_in_other_units_is_drawn_but_has_no_true_size)
{
  static const char *const UNITS[] = { "width='192' height='96'", "width='192px' height='96px'", "viewBox='0 0 192 96'",
                                       "width='100%' height='100%' viewBox='10 10 192 96'" };

  for (size_t i = 0; i < sizeof UNITS / sizeof *UNITS; i++)
    {
      const DecodeFacts facts = drawing_facts (UNITS[i]);

      ck_assert (isnan (facts.page_width_mm) && isnan (facts.page_height_mm));
      ck_assert_double_eq_tol (facts.width_px, 600, 1e-4);
      ck_assert_double_eq_tol (facts.height_px, 300, 1e-4);
    }
}
END_TEST

START_TEST (a_drawing_without_a_size_is_told)
{
  ck_assert_int_eq (decoding_ends (file_of (text_bytes ("<svg xmlns='http://www.w3.org/2000/svg'><rect/></svg>"))), DECODE_NO_PIXELS);
  ck_assert_int_eq (decoding_ends (file_of (text_bytes ("<svg xmlns='http://www.w3.org/2000/svg' width='0mm' height='3mm'/>"))),
                    DECODE_NO_PIXELS);
}
END_TEST

START_TEST (a_drawing_reaches_no_other_file)
{
  char text[600];
  Raster *raster;

  snprintf (text, sizeof text, "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink' width='90' height='90'>"
            "<image width='90' height='90' xlink:href='file://%s/data/screenshots/window.png'/></svg>", getenv ("TRAMMEL_SOURCE_ROOT"));
  raster = decoded (file_of (text_bytes (text)), NULL);
  ck_assert_int_eq (raster_channels (raster), 1);
  for (int y = 0; y < raster_height (raster); y++)
    for (int x = 0; x < raster_width (raster); x++)
      ck_assert_int_eq (raster_row (raster, y)[x], 255);
  raster_unref (raster);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("pages");

  tcase_add_test (tests, a_page_is_drawn_at_true_size);
  tcase_add_test (tests, a_page_is_drawn_at_three_hundred_dots_unless_told);
  tcase_add_test (tests, of_a_thousand_pages_one_is_drawn);
  tcase_add_test (tests, each_page_of_a_tiff_is_read_and_thumbnails_are_none);
  tcase_add_test (tests, pages_that_go_round_in_a_ring_are_each_counted_once);
  tcase_add_test (tests, a_page_that_is_not_there_is_told);
  tcase_add_test (tests, a_large_page_is_drawn_coarser_by_a_whole_factor);
  tcase_add_test (tests, a_locked_document_asks_for_its_password);
  tcase_add_test (tests, a_drawing_in_units_of_paper_has_its_true_size);
  tcase_add_test (tests, a_drawing_in_other_units_is_drawn_but_has_no_true_size);
  tcase_add_test (tests, a_drawing_without_a_size_is_told);
  tcase_add_test (tests, a_drawing_reaches_no_other_file);
  return run_suite (suite_create ("pages of plans"), tests);
}
