#include "drawing/pdf-finish.h"
#include <cairo-pdf.h>
#include <check.h>
#include <poppler.h>
#include <string.h>
#include "support/run-suite.h"

static cairo_status_t
append_bytes (void *closure, const unsigned char *bytes, unsigned length)
{
  g_byte_array_append (closure, bytes, length);
  return CAIRO_STATUS_SUCCESS;
}

/* Two pages with a line each. */
static GBytes *
drawn_pdf (void)
{
  GByteArray *bytes = g_byte_array_new ();
  cairo_surface_t *surface = cairo_pdf_surface_create_for_stream (append_bytes, bytes, 200, 100);
  cairo_t *cr = cairo_create (surface);

  cairo_pdf_surface_restrict_to_version (surface, CAIRO_PDF_VERSION_1_4);
  cairo_pdf_surface_set_metadata (surface, CAIRO_PDF_METADATA_TITLE, "Saltmarsh");
  for (int page = 0; page < 2; page++)
    {
      cairo_move_to (cr, 10, 10);
      cairo_line_to (cr, 90, 90);
      cairo_stroke (cr);
      cairo_show_page (cr);
    }
  cairo_destroy (cr);
  cairo_surface_destroy (surface);
  return g_byte_array_free_to_bytes (bytes);
}

static void
expect_untouched (GBytes *takes)
{
  GBytes *before = g_bytes_ref (takes), *after = pdf_finished (takes, "en");

  ck_assert (g_bytes_equal (before, after));
  g_bytes_unref (before);
  g_bytes_unref (after);
}

START_TEST (viewers_are_asked_to_print_it_unscaled)
{
  GBytes *finished = pdf_finished (drawn_pdf (), "de");
  PopplerDocument *document = poppler_document_new_from_bytes (finished, NULL, NULL);

  ck_assert_ptr_nonnull (document);
  ck_assert_int_eq (poppler_document_get_n_pages (document), 2);
  ck_assert_int_eq (poppler_document_get_print_scaling (document), POPPLER_PRINT_SCALING_NONE);
  g_autofree char *title = poppler_document_get_title (document);
  ck_assert_str_eq (title, "Saltmarsh");
  g_object_unref (document);
  g_bytes_unref (finished);
}
END_TEST

START_TEST (what_was_there_stays_byte_for_byte_and_language_and_title_are_asked_for_behind_it)
{
  GBytes *drawn = drawn_pdf (), *finished = pdf_finished (g_bytes_ref (drawn), "pt-BR");
  size_t before, after;
  const char *old = g_bytes_get_data (drawn, &before), *made = g_bytes_get_data (finished, &after);

  ck_assert_uint_gt (after, before);
  ck_assert_int_eq (memcmp (old, made, before), 0);
  g_autofree char *update = g_strndup (made + before, after - before);
  ck_assert_ptr_nonnull (strstr (update, "/Lang (pt-BR)"));
  ck_assert_ptr_nonnull (strstr (update, "/DisplayDocTitle true"));
  g_bytes_unref (drawn);
  g_bytes_unref (finished);
}
END_TEST

START_TEST (what_is_no_such_file_is_handed_back)
{
  GBytes *whole = drawn_pdf ();

  expect_untouched (g_bytes_new_static ("", 0));
  expect_untouched (g_bytes_new_static ("trailer", 7));
  expect_untouched (g_bytes_new_static ("endstream trailer /Size 1 /Root 2 /Info 3 startxref 4", 53));
  expect_untouched (g_bytes_new_from_bytes (whole, 0, g_bytes_get_size (whole) / 2));
  g_bytes_unref (whole);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("a finished document");

  tcase_add_test (tests, viewers_are_asked_to_print_it_unscaled);
  tcase_add_test (tests, what_was_there_stays_byte_for_byte_and_language_and_title_are_asked_for_behind_it);
  tcase_add_test (tests, what_is_no_such_file_is_handed_back);
  return run_suite (suite_create ("pdf finish"), tests);
}
