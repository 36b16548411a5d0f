#define _GNU_SOURCE
#include "support/pictures.h"

#include <check.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/mman.h>
#include <unistd.h>

void
quarters_colour (int x, int y, int width, int height, unsigned char colour[3])
{
  static const unsigned char QUARTERS[4][3] = { { 255, 0, 0 }, { 0, 255, 0 }, { 0, 0, 255 }, { 255, 255, 255 } };

  memcpy (colour, QUARTERS[(x >= width / 2) + 2 * (y >= height / 2)], 3);
}

void
upright_place (int orientation, int column, int row, int width, int height, int *x, int *y)
{
  /* What the stored first row and first column are on the upright picture. */
  static const struct { char row, column; } SIDES[9] = {
    { 't', 'l' }, { 't', 'l' }, { 't', 'r' }, { 'b', 'r' }, { 'b', 'l' }, { 'l', 't' }, { 'r', 't' }, { 'r', 'b' }, { 'l', 'b' },
  };
  const bool turned = orientation >= 5;
  const char across = turned ? SIDES[orientation].row : SIDES[orientation].column;
  const char down = turned ? SIDES[orientation].column : SIDES[orientation].row;
  const int along_x = turned ? row : column, along_y = turned ? column : row;

  *x = across == 'l' ? along_x : width - 1 - along_x;
  *y = down == 't' ? along_y : height - 1 - along_y;
}

Bytes
text_wide (const char *text, bool big_endian)
{
  const size_t length = strlen (text);
  Bytes wide = { calloc (2, length + 1), 2 * (length + 1) };

  wide.bytes[big_endian ? 0 : 1] = 0xfe;
  wide.bytes[big_endian ? 1 : 0] = 0xff;
  for (size_t i = 0; i < length; i++)
    wide.bytes[2 * i + 2 + (big_endian ? 1 : 0)] = (unsigned char) text[i];
  return wide;
}

Bytes
text_bytes (const char *text)
{
  return (Bytes) { (unsigned char *) strdup (text), strlen (text) };
}

void
bytes_free (Bytes bytes)
{
  free (bytes.bytes);
}

int
file_of (Bytes bytes)
{
  const int file = memfd_create ("picture", MFD_CLOEXEC);

  ck_assert_int_ge (file, 0);
  ck_assert_int_eq (ftruncate (file, (off_t) bytes.length), 0);
  ck_assert_int_eq (pwrite (file, bytes.bytes, bytes.length, 0), (ssize_t) bytes.length);
  bytes_free (bytes);
  return file;
}

Raster *
decoded (int file, DecodeFacts *facts)
{
  const DecodeRequest request = { .file = file };
  Raster *raster = NULL;
  const DecodeStatus status = decode (&request, NULL, facts, &raster);

  close (file);
  ck_assert_msg (status == DECODE_OK, "%s", decode_status_sentence (status));
  ck_assert_ptr_nonnull (raster);
  return raster;
}

DecodeStatus
decoding_ends (int file)
{
  const DecodeRequest request = { .file = file };
  Raster *raster = NULL;
  const DecodeStatus status = decode (&request, NULL, NULL, &raster);

  ck_assert ((raster != NULL) == (status == DECODE_OK));
  raster_unref (raster);
  close (file);
  return status;
}

void
assert_quarters (const Raster *raster, int off)
{
  const int width = raster_width (raster), height = raster_height (raster);

  ck_assert_int_eq (raster_channels (raster), 3);
  for (int y = 0; y < height; y++)
    for (int x = 0; x < width; x++)
      for (int channel = 0; channel < 3; channel++)
        {
          unsigned char colour[3];

          quarters_colour (x, y, width, height, colour);
          ck_assert_int_le (abs (raster_row (raster, y)[3 * x + channel] - colour[channel]), off);
        }
}
