/* Loaders make do with a file that is cut short and leave the rest of the picture grey. A plan with its lower half missing would be
 * traced and measured all the same, so the frame of the file is walked first. */
#include "decoder/sniff.h"

#include <string.h>

static unsigned
big_endian (const unsigned char *bytes, int count)
{
  unsigned value = 0;

  for (int i = 0; i < count; i++)
    value = value << 8 | bytes[i];
  return value;
}

static size_t
little_endian (const unsigned char *bytes, int count)
{
  size_t value = 0;

  for (int i = 0; i < count; i++)
    value |= (size_t) bytes[i] << 8 * i;
  return value;
}

/* Chunks of a PNG: length, name, contents, checksum (PNG specification, section 5.3). */
static bool
png_chunk (const unsigned char *bytes, size_t length, const char *name, size_t *begin, size_t *end)
{
  for (size_t at = 8; length - at >= 12; )
    {
      const size_t size = big_endian (bytes + at, 4);

      if (size > length - at - 12)
        return false;
      if (memcmp (bytes + at + 4, name, 4) == 0)
        {
          *begin = at + 8;
          *end = at + 12 + size;
          return true;
        }
      at += 12 + size;
    }
  return false;
}

static size_t
png_end (const unsigned char *bytes, size_t length)
{
  size_t begin, end;

  return png_chunk (bytes, length, "IEND", &begin, &end) ? end : 0;
}

bool
sniff_png_density (const unsigned char *bytes, size_t length, unsigned density[2])
{
  size_t begin, end;

  if (!png_chunk (bytes, length, "pHYs", &begin, &end) || end - begin < 9 + 4 || bytes[begin + 8] != 1)
    return false;
  density[0] = big_endian (bytes + begin, 4);
  density[1] = big_endian (bytes + begin + 4, 4);
  return density[0] > 0 && density[1] > 0;
}

int
sniff_png_orientation (const unsigned char *bytes, size_t length)
{
  size_t begin, end;

  return png_chunk (bytes, length, "eXIf", &begin, &end) ? sniff_tiff_orientation (bytes + begin, end - 4 - begin) : 1;
}

void
sniff_png_size (const unsigned char *bytes, size_t length, unsigned size[2])
{
  size[0] = length >= 24 ? big_endian (bytes + 16, 4) : 0;
  size[1] = length >= 24 ? big_endian (bytes + 20, 4) : 0;
}

static bool
stands_alone (unsigned char marker)
{
  return marker == 0x01 || (marker >= 0xd0 && marker <= 0xd8);
}

/* Marked segments of a JPEG, each with its length, between them coded data in which 0xff is followed by 0 or a restart mark
 * (ITU-T T.81, annex B). Progressive files have several scans; the end mark is what counts. */
static size_t
jpeg_end (const unsigned char *bytes, size_t length)
{
  size_t at = 2;

  while (length - at >= 2)
    {
      const unsigned char *mark = memchr (bytes + at, 0xff, length - at - 1);

      if (!mark)
        return 0;
      at = (size_t) (mark - bytes) + 1;
      if (bytes[at] == 0xd9)
        return at + 1;
      if (bytes[at] == 0xff)
        continue;
      at++;
      if (bytes[at - 1] == 0 || stands_alone (bytes[at - 1]))
        continue;
      const size_t size = length - at < 2 ? SIZE_MAX : big_endian (bytes + at, 2);
      if (size > length - at)
        return 0;
      at += size;
    }
  return 0;
}

/* A RIFF file states its own size in its second word, least byte first. */
static size_t
webp_end (const unsigned char *bytes, size_t length)
{
  const size_t stated = 8 + little_endian (bytes + 4, 4);

  return stated <= length ? length : 0;
}

/* Past blocks of data, each with its length in front, the last empty (GIF 89a, section 15). 0: the file ends before. */
static size_t
past_sub_blocks (const unsigned char *bytes, size_t length, size_t at)
{
  while (at < length && bytes[at])
    at += 1 + (size_t) bytes[at];
  return at < length ? at + 1 : 0;
}

static size_t
colours_size (unsigned char packed)
{
  return packed & 0x80 ? (size_t) 3 << ((packed & 7) + 1) : 0;
}

/* Only the first frame counts. */
static size_t
gif_end (const unsigned char *bytes, size_t length)
{
  size_t at = length >= 13 ? 13 + colours_size (bytes[10]) : 0;

  while (at && at < length && bytes[at] == 0x21)
    at = past_sub_blocks (bytes, length, at + 2);
  if (!at || at >= length || length - at < 11 || bytes[at] != 0x2c)
    return 0;
  at += 10 + colours_size (bytes[at + 9]);
  return past_sub_blocks (bytes, length, at + 1);
}

/* Rows of whole words behind the headers; packed ones have no length that could be told. */
static size_t
bmp_end (const unsigned char *bytes, size_t length)
{
  enum { HEADERS = 54 };
  double rows, stride;

  if (length < 26)
    return 0;
  if (little_endian (bytes + 14, 4) < 40)
    return length;
  if (length < HEADERS)
    return 0;
  if (little_endian (bytes + 30, 4) != 0)
    return length;
  rows = fabs ((double) (int32_t) little_endian (bytes + 22, 4));
  stride = 4 * ceil ((double) little_endian (bytes + 18, 4) * (double) little_endian (bytes + 28, 2) / 32);
  return (double) (length - HEADERS) >= stride * rows ? length : 0;
}

size_t
sniff_end (DecodeKind kind, const unsigned char *bytes, size_t length)
{
  switch (kind)
    {
    case DECODE_PNG:  return png_end (bytes, length);
    case DECODE_JPEG: return jpeg_end (bytes, length);
    case DECODE_WEBP: return webp_end (bytes, length);
    case DECODE_GIF:  return gif_end (bytes, length);
    case DECODE_BMP:  return bmp_end (bytes, length);
    default:          return length;
    }
}
