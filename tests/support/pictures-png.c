#include "support/pictures.h"

#include <check.h>
#include <png.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <zlib.h>

static const unsigned char GREYS[4] = { 0, 64, 128, 255 };
static const unsigned char ALPHAS[4] = { 128, 255, 0, 255 };

static int
quarter (int x, int y, int width, int height)
{
  return (x >= width / 2) + 2 * (y >= height / 2);
}

/* One pixel's bytes; how many. */
static int
put_pixel (PngLook look, int x, int y, int width, int height, unsigned char *to)
{
  const int which = quarter (x, y, width, height);
  unsigned char colour[3];

  quarters_colour (x, y, width, height, colour);
  switch (look)
    {
    case LOOK_GREY:           to[0] = GREYS[which]; return 1;
    case LOOK_EQUAL_CHANNELS: memset (to, GREYS[which], 3); return 3;
    case LOOK_GREY_16:        to[0] = to[1] = GREYS[which]; return 2;
    case LOOK_COLOUR_16:      for (int i = 0; i < 6; i++) to[i] = colour[i / 2]; return 6;
    case LOOK_PALETTE:        to[0] = (unsigned char) which; return 1;
    case LOOK_ALPHA:          memcpy (to, colour, 3); to[3] = ALPHAS[which]; return 4;
    default:                  memcpy (to, colour, 3); return 3;
    }
}

static void
put_header (png_structp png, png_infop info, PngLook look, int width, int height)
{
  static const png_color PALETTE[4] = { { 255, 0, 0 }, { 0, 255, 0 }, { 0, 0, 255 }, { 255, 255, 255 } };
  const bool deep = look == LOOK_GREY_16 || look == LOOK_COLOUR_16, grey = look == LOOK_GREY || look == LOOK_GREY_16;
  const int type = grey ? PNG_COLOR_TYPE_GRAY : look == LOOK_PALETTE ? PNG_COLOR_TYPE_PALETTE
                 : look == LOOK_ALPHA ? PNG_COLOR_TYPE_RGB_ALPHA : PNG_COLOR_TYPE_RGB;

  png_set_IHDR (png, info, (png_uint_32) width, (png_uint_32) height, deep ? 16 : 8, type,
                look == LOOK_INTERLACED ? PNG_INTERLACE_ADAM7 : PNG_INTERLACE_NONE, PNG_COMPRESSION_TYPE_BASE, PNG_FILTER_TYPE_BASE);
  if (look == LOOK_PALETTE)
    png_set_PLTE (png, info, PALETTE, 4);
  png_set_pHYs (png, info, 11811, 11811, PNG_RESOLUTION_METER);
  png_write_info (png, info);
}

Bytes
png_drawn (PngLook look, int width, int height)
{
  png_structp png = png_create_write_struct (PNG_LIBPNG_VER_STRING, NULL, NULL, NULL);
  png_infop info = png_create_info_struct (png);
  unsigned char *row = malloc ((size_t) width * 6);
  char *bytes;
  size_t length;
  FILE *file = open_memstream (&bytes, &length);

  png_init_io (png, file);
  put_header (png, info, look, width, height);
  for (int passes = png_set_interlace_handling (png); passes > 0; passes--)
    for (int y = 0; y < height; y++)
      {
        for (int x = 0, at = 0; x < width; x++)
          at += put_pixel (look, x, y, width, height, row + at);
        png_write_row (png, row);
      }
  png_write_end (png, info);
  png_destroy_write_struct (&png, &info);
  fclose (file);
  free (row);
  return (Bytes) { (unsigned char *) bytes, length };
}

/* An eXIf chunk holds a TIFF's head and one directory (PNG extensions 1.5.0, section 3.7). */
static void
put_orientation (png_structp png, png_infop info, int orientation)
{
  png_byte exif[] = { 'M', 'M', 0, 42, 0, 0, 0, 8, 0, 1, 1, 18, 0, 3, 0, 0, 0, 1, 0, 0, 0, 0, 0, 0, 0, 0 };

  exif[19] = (png_byte) orientation;
  png_set_eXIf_1 (png, info, sizeof exif, exif);
  png_write_info (png, info);
}

Bytes
png_oriented (int orientation, int width, int height)
{
  png_structp png = png_create_write_struct (PNG_LIBPNG_VER_STRING, NULL, NULL, NULL);
  png_infop info = png_create_info_struct (png);
  const int columns = orientation >= 5 ? height : width, rows = orientation >= 5 ? width : height;
  unsigned char *row = malloc ((size_t) columns * 3);
  char *bytes;
  size_t length;
  FILE *file = open_memstream (&bytes, &length);

  png_init_io (png, file);
  png_set_IHDR (png, info, (png_uint_32) columns, (png_uint_32) rows, 8, PNG_COLOR_TYPE_RGB, PNG_INTERLACE_NONE,
                PNG_COMPRESSION_TYPE_BASE, PNG_FILTER_TYPE_BASE);
  put_orientation (png, info, orientation);
  for (int y = 0; y < rows; y++)
    {
      for (int x = 0; x < columns; x++)
        {
          int across, down;

          upright_place (orientation, x, y, width, height, &across, &down);
          quarters_colour (across, down, width, height, row + 3 * x);
        }
      png_write_row (png, row);
    }
  png_write_end (png, info);
  png_destroy_write_struct (&png, &info);
  fclose (file);
  free (row);
  return (Bytes) { (unsigned char *) bytes, length };
}

Bytes
text_packed (const char *text)
{
  z_stream stream = { .next_in = (Bytef *) (uintptr_t) text, .avail_in = (uInt) strlen (text) };
  Bytes packed = { malloc (strlen (text) + 100), 0 };

  ck_assert_int_eq (deflateInit2 (&stream, Z_DEFAULT_COMPRESSION, Z_DEFLATED, 16 + MAX_WBITS, 8, Z_DEFAULT_STRATEGY), Z_OK);
  stream.next_out = packed.bytes;
  stream.avail_out = (uInt) strlen (text) + 100;
  ck_assert_int_eq (deflate (&stream, Z_FINISH), Z_STREAM_END);
  packed.length = stream.total_out;
  deflateEnd (&stream);
  return packed;
}

Bytes
png_of_paper (int width, int height)
{
  png_structp png = png_create_write_struct (PNG_LIBPNG_VER_STRING, NULL, NULL, NULL);
  png_infop info = png_create_info_struct (png);
  unsigned char *row = malloc ((size_t) width / 8 + 1);
  char *bytes;
  size_t length;
  FILE *file = open_memstream (&bytes, &length);

  memset (row, 255, (size_t) width / 8 + 1);
  png_init_io (png, file);
  png_set_compression_level (png, 1);
  png_set_IHDR (png, info, (png_uint_32) width, (png_uint_32) height, 1, PNG_COLOR_TYPE_GRAY, PNG_INTERLACE_NONE,
                PNG_COMPRESSION_TYPE_BASE, PNG_FILTER_TYPE_BASE);
  png_write_info (png, info);
  for (int y = 0; y < height; y++)
    png_write_row (png, row);
  png_write_end (png, info);
  png_destroy_write_struct (&png, &info);
  fclose (file);
  free (row);
  return (Bytes) { (unsigned char *) bytes, length };
}

void
png_claim_size (Bytes png, unsigned width, unsigned height)
{
  unsigned char *header = png.bytes + 12;                /* "IHDR", then the size; 17 bytes under the checksum */

  png_save_uint_32 (header + 4, width);
  png_save_uint_32 (header + 8, height);
  png_save_uint_32 (header + 17, (png_uint_32) crc32 (0, header, 17));
}
