#define _GNU_SOURCE
#include "decoder/sniff.h"

#include <string.h>

typedef struct {
  DecodeKind kind;
  size_t at, length;
  const char *bytes;
} Magic;

static const Magic MAGICS[] = {
  { DECODE_PNG,  0, 8, "\x89PNG\r\n\x1a\n" },
  { DECODE_JPEG, 0, 3, "\xff\xd8\xff" },
  { DECODE_TIFF, 0, 4, "II*\0" },
  { DECODE_TIFF, 0, 4, "MM\0*" },
  { DECODE_WEBP, 8, 4, "WEBP" },
  { DECODE_GIF,  0, 4, "GIF8" },
  { DECODE_BMP,  0, 2, "BM" },
};
/* PDF readers look for the mark this far into the file. */
static const size_t PDF_MARK_WITHIN = 1024;
/* Comments and declarations may stand before an SVG's first element. */
enum { SVG_WITHIN = 8192 };

/* In UTF-16, which every reader of XML knows by its first two bytes, each letter of ASCII has an empty byte beside it. */
static size_t
without_empty_bytes (const unsigned char *bytes, size_t length, unsigned char *kept)
{
  size_t count = 0;

  for (size_t i = 2; i < length; i++)
    if (bytes[i])
      kept[count++] = bytes[i];
  return count;
}

static bool
begins_like_svg (const unsigned char *bytes, size_t length)
{
  size_t at = length >= 3 && memcmp (bytes, "\xef\xbb\xbf", 3) == 0 ? 3 : 0;

  while (at < length && strchr (" \t\r\n", bytes[at]) && bytes[at])
    at++;
  if (at == length || bytes[at] != '<')
    return false;
  length = length < SVG_WITHIN ? length : SVG_WITHIN;
  return memmem (bytes, length, "<svg", 4) || memmem (bytes, length, ":svg", 4);
}

bool
sniff_svg (const unsigned char *bytes, size_t length)
{
  unsigned char kept[SVG_WITHIN];

  if (length < 2 || (memcmp (bytes, "\xff\xfe", 2) != 0 && memcmp (bytes, "\xfe\xff", 2) != 0))
    return begins_like_svg (bytes, length);
  return begins_like_svg (kept, without_empty_bytes (bytes, length < SVG_WITHIN ? length : SVG_WITHIN, kept));
}

bool
sniff_packed (const unsigned char *bytes, size_t length)
{
  return length >= 3 && memcmp (bytes, "\x1f\x8b\x08", 3) == 0;
}

bool
sniff_kind (const unsigned char *bytes, size_t length, DecodeKind *kind)
{
  const size_t head = length < PDF_MARK_WITHIN ? length : PDF_MARK_WITHIN;

  for (size_t i = 0; i < sizeof MAGICS / sizeof *MAGICS; i++)
    if (length >= MAGICS[i].at + MAGICS[i].length && memcmp (bytes + MAGICS[i].at, MAGICS[i].bytes, MAGICS[i].length) == 0)
      {
        *kind = MAGICS[i].kind;
        return true;
      }
  *kind = memmem (bytes, head, "%PDF-", 5) ? DECODE_PDF : DECODE_SVG;
  /* No other kind comes packed; whether an SVG is in it is looked at when it is unpacked. */
  return *kind == DECODE_PDF || sniff_packed (bytes, length) || sniff_svg (bytes, length);
}
