#include "trammel-config.h"
#include "drawing/export-sheet.h"
#include <cairo-pdf.h>
#include <cairo-svg.h>
#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>
#include "drawing/export.h"
#include "drawing/pdf-finish.h"
#include "drawing/picture.h"

enum { MOST_PX = 20000 };
static const double mm_in_inch = 25.4, points_in_inch = 72;
static const double svg_fineness = 10;      /* cairo writes letters in 64ths of its unit: a tenth of a mm is fine enough */

typedef struct { const SheetPages *pages; size_t page; double scale; } ScaledPage;

static void
paint_scaled (cairo_t *cr, const void *data)
{
  const ScaledPage *scaled = data;

  cairo_save (cr);
  cairo_scale (cr, scaled->scale, scaled->scale);
  sheet_pages_draw (scaled->pages, scaled->page, cr);
  cairo_restore (cr);
}

GBytes *
sheet_png (const SheetPages *pages, size_t page, int dpi, GError **error)
{
  const int per_metre = (int) lround (dpi * 1000 / mm_in_inch);
  const ScaledPage scaled = { pages, page, per_metre / 1000.0 };
  double width, height;
  Picture picture = { .per_metre = per_metre, .title = sheet_pages_title (pages), .paint = paint_scaled, .data = &scaled };

  sheet_pages_size (pages, page, &width, &height);
  picture.width = (int) lround (width * scaled.scale);
  picture.height = (int) lround (height * scaled.scale);
  if (MAX (picture.width, picture.height) > MOST_PX)
    {
      g_set_error (error, EXPORT_ERROR, EXPORT_ERROR_TOO_LARGE,
                   _("At %d dots an inch the picture would be %d × %d px; at most %d a side can be made. Take fewer dots or a smaller paper."),
                   dpi, picture.width, picture.height, MOST_PX);
      return NULL;
    }
  return picture_png (&picture, error);
}

static cairo_status_t
append_bytes (void *closure, const unsigned char *bytes, unsigned length)
{
  g_byte_array_append (closure, bytes, length);
  return CAIRO_STATUS_SUCCESS;
}

/* Ends a surface that wrote into `bytes`, and both with it: all are taken. */
static GBytes *
bytes_drawn (cairo_t *cr, cairo_surface_t *surface, GByteArray *bytes, GError **error)
{
  cairo_status_t status = cairo_status (cr);

  cairo_destroy (cr);
  cairo_surface_finish (surface);
  if (status == CAIRO_STATUS_SUCCESS)
    status = cairo_surface_status (surface);
  cairo_surface_destroy (surface);
  if (status == CAIRO_STATUS_SUCCESS)
    return g_byte_array_free_to_bytes (bytes);
  g_byte_array_unref (bytes);
  g_set_error (error, EXPORT_ERROR, EXPORT_ERROR_DRAWING, _("The sheet could not be drawn: %s."), cairo_status_to_string (status));
  return NULL;
}

/* The language of the words that are drawn, whatever the desktop's is. */
static const char *
words_language (void)
{
  /* Translators: the tag of the language that you translate into: "de", "pt-BR" */
  return C_("language", "en");
}

/* An empty date leaves the entry out, where cairo would put the clock's. */
GBytes *
sheet_pdf (const SheetPages *pages, GError **error)
{
  const double scale = points_in_inch / mm_in_inch;
  GByteArray *bytes = g_byte_array_new ();
  double width, height;

  sheet_pages_size (pages, 0, &width, &height);
  cairo_surface_t *surface = cairo_pdf_surface_create_for_stream (append_bytes, bytes, width * scale, height * scale);
  cairo_t *cr = cairo_create (surface);
  cairo_pdf_surface_restrict_to_version (surface, CAIRO_PDF_VERSION_1_4);
  cairo_pdf_surface_set_metadata (surface, CAIRO_PDF_METADATA_TITLE, sheet_pages_title (pages));
  cairo_pdf_surface_set_metadata (surface, CAIRO_PDF_METADATA_SUBJECT, sheet_pages_subject (pages));
  cairo_pdf_surface_set_metadata (surface, CAIRO_PDF_METADATA_CREATOR, "Trammel");
  cairo_pdf_surface_set_metadata (surface, CAIRO_PDF_METADATA_CREATE_DATE, sheet_pages_date (pages));
  for (size_t page = 0; page < sheet_pages_count (pages); page++)
    {
      sheet_pages_size (pages, page, &width, &height);
      cairo_pdf_surface_set_size (surface, width * scale, height * scale);
      paint_scaled (cr, &(ScaledPage) { pages, page, scale });
      cairo_show_page (cr);
    }
  GBytes *raw = bytes_drawn (cr, surface, bytes, error);
  return raw != NULL ? pdf_finished (raw, words_language ()) : NULL;
}

/* The head is written anew: mm outside, cairo's finer units inside, and words for those who cannot see it. cairo's own name for the
 * drawing counts the surfaces of the process; it goes. */
static GBytes *
svg_finished (GBytes *takes, const SheetPages *pages, size_t page)
{
  g_autoptr (GBytes) raw = takes;
  g_autofree char *text = g_strndup (g_bytes_get_data (raw, NULL), g_bytes_get_size (raw));
  g_autofree char *title = g_markup_escape_text (sheet_pages_title (pages), -1);
  g_autofree char *description = g_markup_escape_text (sheet_pages_subject (pages), -1);
  char *definitions = strstr (text, "<defs>"), *drawing = strstr (text, "<g id=\"surface"), *inside = drawing ? strchr (drawing, '>') : NULL;
  GString *made = g_string_new ("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
  double width, height;
  char number[G_ASCII_DTOSTR_BUF_SIZE], number2[G_ASCII_DTOSTR_BUF_SIZE];

  sheet_pages_size (pages, page, &width, &height);
  g_ascii_formatd (number, sizeof number, "%.8g", width);
  g_ascii_formatd (number2, sizeof number2, "%.8g", height);
  g_string_append_printf (made, "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" version=\"1.1\" role=\"img\" xml:lang=\"%s\" "
                          "width=\"%smm\" height=\"%smm\" viewBox=\"0 0 %s %s\">\n<title>%s</title>\n<desc>%s</desc>\n",
                          words_language (), number, number2, number, number2, title, description);
  if (definitions != NULL && definitions < drawing)
    g_string_append_len (made, definitions, drawing - definitions);
  g_string_append_printf (made, "<g id=\"sheet\" transform=\"scale(%s)\">", g_ascii_formatd (number, sizeof number, "%g", 1 / svg_fineness));
  g_string_append (made, inside != NULL ? inside + 1 : "</g>\n</svg>\n");
  return g_string_free_to_bytes (made);
}

GBytes *
sheet_svg (const SheetPages *pages, size_t page, GError **error)
{
  GByteArray *bytes = g_byte_array_new ();
  double width, height;

  sheet_pages_size (pages, page, &width, &height);
  cairo_surface_t *surface = cairo_svg_surface_create_for_stream (append_bytes, bytes, width * svg_fineness, height * svg_fineness);
  cairo_t *cr = cairo_create (surface);
  paint_scaled (cr, &(ScaledPage) { pages, page, svg_fineness });
  cairo_show_page (cr);
  GBytes *raw = bytes_drawn (cr, surface, bytes, error);
  return raw != NULL ? svg_finished (raw, pages, page) : NULL;
}
