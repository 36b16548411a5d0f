/* Kinds that are simple enough to be written out, or are kept as bytes. */
#include "support/pictures.h"

#include <stdlib.h>
#include <string.h>

static Bytes
bytes_new (size_t length)
{
  return (Bytes) { calloc (1, length), length };
}

static void
put (unsigned char *to, unsigned value, int count)
{
  for (int i = 0; i < count; i++)
    to[i] = (unsigned char) (value >> 8 * i);
}

static void
put_entry (unsigned char **to, unsigned tag, unsigned type, unsigned count, unsigned value)
{
  put (*to, tag, 2);
  put (*to + 2, type, 2);
  put (*to + 4, count, 4);
  put (*to + 8, value, 4);
  *to += 12;
}

/* Header, bits of the three channels, pixels, directory (TIFF 6.0, section 6). */
Bytes
tiff_drawn (int bits, int orientation, int width, int height)
{
  enum { SHORT = 3, LONG = 4, ENTRIES = 10, PIXELS_AT = 14 };
  const int each = bits / 8, columns = orientation >= 5 ? height : width, rows = orientation >= 5 ? width : height;
  const unsigned size = (unsigned) (3 * each * width * height);
  Bytes tiff = bytes_new (PIXELS_AT + size + 2 + 12 * ENTRIES + 4);
  unsigned char *at = tiff.bytes + PIXELS_AT;

  memcpy (tiff.bytes, "II*\0", 4);
  put (tiff.bytes + 4, PIXELS_AT + size, 4);
  for (int i = 0; i < 3; i++)
    put (tiff.bytes + 8 + 2 * i, (unsigned) bits, 2);
  for (int i = 0; i < columns * rows; i++)
    {
      unsigned char colour[3];
      int x, y;

      upright_place (orientation, i % columns, i / columns, width, height, &x, &y);
      quarters_colour (x, y, width, height, colour);
      for (int byte = 0; byte < 3 * each; byte++)
        *at++ = colour[byte / each];
    }
  put (at, ENTRIES, 2);
  at += 2;
  put_entry (&at, 256, LONG, 1, (unsigned) columns);
  put_entry (&at, 257, LONG, 1, (unsigned) rows);
  put_entry (&at, 258, SHORT, 3, 8);
  put_entry (&at, 259, SHORT, 1, 1);
  put_entry (&at, 262, SHORT, 1, 2);
  put_entry (&at, 273, LONG, 1, PIXELS_AT);
  put_entry (&at, 274, SHORT, 1, (unsigned) orientation);
  put_entry (&at, 277, SHORT, 1, 3);
  put_entry (&at, 278, LONG, 1, (unsigned) rows);
  put_entry (&at, 279, LONG, 1, size);
  return tiff;
}

/* A directory and the pixels behind it; where the next one goes. `last`: there is none. */
static unsigned
put_grey_page (unsigned char *file, unsigned at, int width, int height, int grey, bool thumbnail, bool last)
{
  enum { SHORT = 3, LONG = 4, ENTRIES = 9 };
  const unsigned size = (unsigned) (width * height), pixels = at + 2 + 12 * ENTRIES + 4, next = (pixels + size + 1) / 2 * 2;
  unsigned char *to = file + at + 2;

  put (file + at, ENTRIES, 2);
  put_entry (&to, 254, LONG, 1, thumbnail ? 1 : 0);
  put_entry (&to, 256, LONG, 1, (unsigned) width);
  put_entry (&to, 257, LONG, 1, (unsigned) height);
  put_entry (&to, 258, SHORT, 1, 8);
  put_entry (&to, 259, SHORT, 1, 1);
  put_entry (&to, 262, SHORT, 1, 1);
  put_entry (&to, 273, LONG, 1, pixels);
  put_entry (&to, 278, LONG, 1, (unsigned) height);
  put_entry (&to, 279, LONG, 1, size);
  put (to, last ? 0 : next, 4);
  memset (file + pixels, grey, size);
  return next;
}

Bytes
tiff_of_pages (int pages, bool thumbnails)
{
  Bytes tiff = bytes_new (8 + (size_t) pages * 500);
  unsigned at = 8;

  memcpy (tiff.bytes, "II*\0", 4);
  put (tiff.bytes + 4, at, 4);
  for (int page = 1; page <= pages; page++)
    {
      at = put_grey_page (tiff.bytes, at, 10 + page, 4, 20 * page, false, page == pages && !thumbnails);
      if (thumbnails)
        at = put_grey_page (tiff.bytes, at, 2, 2, 0, true, page == pages);
    }
  return tiff;
}

/* Rows from below, blue first, each a whole number of words. */
Bytes
bmp_drawn (int width, int height)
{
  enum { HEADER = 54 };
  const size_t stride = ((size_t) width * 3 + 3) / 4 * 4;
  Bytes bmp = bytes_new (HEADER + stride * (size_t) height);

  memcpy (bmp.bytes, "BM", 2);
  put (bmp.bytes + 2, (unsigned) bmp.length, 4);
  put (bmp.bytes + 10, HEADER, 4);
  put (bmp.bytes + 14, 40, 4);
  put (bmp.bytes + 18, (unsigned) width, 4);
  put (bmp.bytes + 22, (unsigned) height, 4);
  put (bmp.bytes + 26, 1, 2);
  put (bmp.bytes + 28, 24, 2);
  for (int y = 0; y < height; y++)
    for (int x = 0; x < width; x++)
      {
        unsigned char colour[3], *to = bmp.bytes + HEADER + stride * (size_t) (height - 1 - y) + 3 * x;

        quarters_colour (x, y, width, height, colour);
        to[0] = colour[2];
        to[1] = colour[1];
        to[2] = colour[0];
      }
  return bmp;
}

/* A frame whose codes stay 8 bits wide, since the table is cleared before it grows: a picture of bytes (GIF 89a, appendix F). */
static unsigned char *
put_gif_frame (unsigned char *at, int width, int height, bool black)
{
  enum { CLEAR = 0x80, END = 0x81, BLACK = 4, A_RUN = 100 };

  *at++ = 0x2c;
  put (at + 4, (unsigned) width, 2);
  put (at + 6, (unsigned) height, 2);
  at += 9;
  *at++ = 7;
  for (int i = 0; i < width * height; i += A_RUN)
    {
      const int count = width * height - i < A_RUN ? width * height - i : A_RUN;

      *at++ = (unsigned char) (count + 1);
      *at++ = CLEAR;
      for (int pixel = i; pixel < i + count; pixel++)
        *at++ = black ? BLACK : (unsigned char) ((pixel % width >= width / 2) + 2 * (pixel / width >= height / 2));
    }
  *at++ = 1;
  *at++ = END;
  *at++ = 0;
  return at;
}

Bytes
gif_drawn (int width, int height)
{
  static const unsigned char COLOURS[] = { 255, 0, 0, 0, 255, 0, 0, 0, 255, 255, 255, 255, 0, 0, 0 };
  static const unsigned char PAUSE[] = { 0x21, 0xf9, 4, 0, 10, 0, 0, 0 };
  Bytes gif = bytes_new (1000 + 3 * (size_t) width * (size_t) height);
  unsigned char *at = gif.bytes + 13;

  memcpy (gif.bytes, "GIF89a", 6);
  put (gif.bytes + 6, (unsigned) width, 2);
  put (gif.bytes + 8, (unsigned) height, 2);
  gif.bytes[10] = 0x80 | 6;                                /* 128 colours follow */
  memcpy (at, COLOURS, sizeof COLOURS);
  at += 3 * 128;
  for (int frame = 0; frame < 2; frame++)
    {
      memcpy (at, PAUSE, sizeof PAUSE);
      at = put_gif_frame (at + sizeof PAUSE, width, height, frame == 1);
    }
  *at++ = 0x3b;
  gif.length = (size_t) (at - gif.bytes);
  return gif;
}

/* The chunk of a WebP without loss that shows the quarters, 32 by 16. */
static const unsigned char WEBP_QUARTERS[] = {
  'V', 'P', '8', 'L', 0x2c, 0, 0, 0, 0x2f, 0x1f, 0xc0, 0x03, 0x00, 0x1f, 0x20, 0x10, 0x48, 0xde, 0x1f, 0x3a, 0x8d, 0xf9, 0x17, 0x10, 0x14,
  0xfc, 0x1f, 0xdd, 0xfc, 0x47, 0x64, 0x0f, 0x80, 0x20, 0xdb, 0x66, 0x92, 0x93, 0x9c, 0xe4, 0x01, 0x2e, 0x10, 0xd1, 0xff, 0xa8, 0x52, 0xfd,
  0x01, 0x6c, 0xdb, 0x0f,
};

/* As large, and black. */
static const unsigned char WEBP_BLACK[] = {
  'V', 'P', '8', 'L', 0x0e, 0, 0, 0, 0x2f, 0x1f, 0xc0, 0x03, 0x00, 0x07, 0x10, 0x11, 0xfd, 0x0f, 0x44, 0x44, 0xff, 0x03,
};

static unsigned char *
put_webp_frame (unsigned char *at, const unsigned char *chunk, size_t length)
{
  static const unsigned char FRAME[] = { 'A', 'N', 'M', 'F', 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 31, 0, 0, 15, 0, 0, 100, 0, 0, 0 };

  memcpy (at, FRAME, sizeof FRAME);
  put (at + 4, (unsigned) (sizeof FRAME - 8 + length), 4);
  memcpy (at + sizeof FRAME, chunk, length);
  return at + sizeof FRAME + length;
}

static Bytes
webp_animated (void)
{
  static const unsigned char HEAD[] = {
    'R', 'I', 'F', 'F', 0, 0, 0, 0, 'W', 'E', 'B', 'P', 'V', 'P', '8', 'X', 10, 0, 0, 0, 2, 0, 0, 0, 31, 0, 0, 15, 0, 0,
    'A', 'N', 'I', 'M', 6, 0, 0, 0, 0, 0, 0, 0, 0, 0,
  };
  Bytes webp = bytes_new (sizeof HEAD + 2 * 24 + sizeof WEBP_QUARTERS + sizeof WEBP_BLACK);
  unsigned char *at = webp.bytes + sizeof HEAD;

  memcpy (webp.bytes, HEAD, sizeof HEAD);
  put (webp.bytes + 4, (unsigned) webp.length - 8, 4);
  at = put_webp_frame (at, WEBP_QUARTERS, sizeof WEBP_QUARTERS);
  put_webp_frame (at, WEBP_BLACK, sizeof WEBP_BLACK);
  return webp;
}

Bytes
webp_drawn (bool animated)
{
  Bytes webp;

  if (animated)
    return webp_animated ();
  webp = bytes_new (12 + sizeof WEBP_QUARTERS);
  memcpy (webp.bytes, "RIFF", 4);
  put (webp.bytes + 4, 4 + sizeof WEBP_QUARTERS, 4);
  memcpy (webp.bytes + 8, "WEBP", 4);
  memcpy (webp.bytes + 12, WEBP_QUARTERS, sizeof WEBP_QUARTERS);
  return webp;
}
