#include "trammel-config.h"
#include "drawing/picture.h"
#include <glib/gi18n-lib.h>
#include <png.h>
#include <setjmp.h>
#include <string.h>
#include "drawing/export.h"

enum { BAND = 512 };      /* rows */

static void
stream_write (png_structp png, png_bytep bytes, png_size_t length)
{
  g_byte_array_append (png_get_io_ptr (png), bytes, length);
}

static void
stream_flush (png_structp png)
{
}

static void
header_write (png_structp png, png_infop info, const Picture *picture)
{
  png_text text = { .compression = PNG_ITXT_COMPRESSION_NONE, .key = (char *) "Title", .text = (char *) picture->title };

  png_set_IHDR (png, info, picture->width, picture->height, 8, PNG_COLOR_TYPE_RGB, PNG_INTERLACE_NONE,
                PNG_COMPRESSION_TYPE_DEFAULT, PNG_FILTER_TYPE_DEFAULT);
  png_set_pHYs (png, info, picture->per_metre, picture->per_metre, PNG_RESOLUTION_METER);
  if (picture->title != NULL)
    png_set_text (png, info, &text, 1);
  png_write_info (png, info);
}

/* Paints the rows from `top` on. */
static cairo_status_t
band_paint (cairo_surface_t *band, const Picture *picture, int top)
{
  cairo_t *cr = cairo_create (band);
  cairo_status_t status;

  cairo_set_source_rgb (cr, 1, 1, 1);
  cairo_paint (cr);
  cairo_translate (cr, 0, -top);
  picture->paint (cr, picture->data);
  status = cairo_status (cr);
  cairo_destroy (cr);
  cairo_surface_flush (band);
  return status;
}

/* cairo's words of 32 bits, 0xXXRRGGBB, as three bytes a pixel. */
static void
row_convert (const unsigned char *from, png_bytep to, int width)
{
  for (int x = 0; x < width; x++)
    {
      guint32 word;

      memcpy (&word, from + 4 * x, sizeof word);
      to[3 * x] = word >> 16 & 0xFF;
      to[3 * x + 1] = word >> 8 & 0xFF;
      to[3 * x + 2] = word & 0xFF;
    }
}

static cairo_status_t
bands_write (png_structp png, const Picture *picture, cairo_surface_t *band, png_bytep row)
{
  for (int top = 0; top < picture->height; top += BAND)
    {
      const cairo_status_t status = band_paint (band, picture, top);

      if (status != CAIRO_STATUS_SUCCESS)
        return status;
      for (int y = 0; y < MIN (BAND, picture->height - top); y++)
        {
          const size_t offset = (size_t) y * cairo_image_surface_get_stride (band);

          row_convert (cairo_image_surface_get_data (band) + offset, row, picture->width);
          png_write_row (png, row);
        }
    }
  return CAIRO_STATUS_SUCCESS;
}

/* libpng leaves by longjmp: everything it must not lose belongs to the caller. */
static cairo_status_t
png_encode (png_structp png, png_infop info, const Picture *picture, cairo_surface_t *band, png_bytep row)
{
  cairo_status_t status;

  if (setjmp (png_jmpbuf (png)))
    return CAIRO_STATUS_WRITE_ERROR;
  header_write (png, info, picture);
  status = bands_write (png, picture, band, row);
  if (status == CAIRO_STATUS_SUCCESS)
    png_write_end (png, info);
  return status;
}

GBytes *
picture_png (const Picture *picture, GError **error)
{
  png_structp png = png_create_write_struct (PNG_LIBPNG_VER_STRING, NULL, NULL, NULL);
  png_infop info = png != NULL ? png_create_info_struct (png) : NULL;
  cairo_surface_t *band = cairo_image_surface_create (CAIRO_FORMAT_RGB24, picture->width, MIN (BAND, picture->height));
  cairo_status_t status = info != NULL ? cairo_surface_status (band) : CAIRO_STATUS_NO_MEMORY;
  g_autofree png_byte *row = g_try_malloc ((size_t) 3 * picture->width);
  g_autoptr (GByteArray) bytes = g_byte_array_new ();

  if (status == CAIRO_STATUS_SUCCESS)
    {
      png_set_write_fn (png, bytes, stream_write, stream_flush);
      status = row != NULL ? png_encode (png, info, picture, band, row) : CAIRO_STATUS_NO_MEMORY;
    }
  cairo_surface_destroy (band);
  png_destroy_write_struct (&png, &info);
  if (status == CAIRO_STATUS_SUCCESS)
    return g_byte_array_free_to_bytes (g_steal_pointer (&bytes));
  g_set_error (error, EXPORT_ERROR, EXPORT_ERROR_DRAWING, _("The picture could not be made: %s."), cairo_status_to_string (status));
  return NULL;
}
