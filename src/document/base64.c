#include "document/base64.h"
#include <stdint.h>

enum { NOT_IN_IT = -1, LINE_BYTES = 57 };     /* 57 bytes make a line of 76 signs */

static int
value_of (char sign)
{
  if (sign >= 'A' && sign <= 'Z')
    return sign - 'A';
  if (sign >= 'a' && sign <= 'z')
    return sign - 'a' + 26;
  if (sign >= '0' && sign <= '9')
    return sign - '0' + 52;
  return sign == '+' ? 62 : sign == '/' ? 63 : NOT_IN_IT;
}

/* Four signs make up to three bytes; `signs` of them are no filling. False when one is not in the alphabet or bits are left over. */
static bool
read_four (const char *text, int signs, uint8_t bytes[3])
{
  uint32_t bits = 0;

  for (int i = 0; i < 4; i++)
    {
      const int value = i < signs ? value_of (text[i]) : 0;

      if (value == NOT_IN_IT)
        return false;
      bits = bits << 6 | (uint32_t) value;
    }
  bytes[0] = (uint8_t) (bits >> 16);
  bytes[1] = (uint8_t) (bits >> 8);
  bytes[2] = (uint8_t) bits;
  return signs == 4 || (signs == 3 && bytes[2] == 0) || (signs == 2 && bytes[1] == 0 && bytes[2] == 0);
}

GBytes *
base64_read (const char *text, size_t length)
{
  const int filling = length < 4 ? 0 : text[length - 1] != '=' ? 0 : text[length - 2] != '=' ? 1 : 2;
  const size_t room = length / 4 * 3;
  uint8_t *bytes;

  if (length % 4 != 0)
    return NULL;
  bytes = g_malloc (room + 1);
  for (size_t at = 0; at < length; at += 4)
    if (!read_four (text + at, at + 4 == length ? 4 - filling : 4, bytes + at / 4 * 3))
      {
        g_free (bytes);
        return NULL;
      }
  return g_bytes_new_take (bytes, room - (size_t) filling);
}

void
base64_append (GString *to, GBytes *bytes)
{
  size_t left;
  const uint8_t *at = g_bytes_get_data (bytes, &left);

  while (left > 0)
    {
      const size_t now = MIN (left, LINE_BYTES);
      g_autofree char *line = g_base64_encode (at, now);

      g_string_append (to, line);
      g_string_append_c (to, '\n');
      at += now;
      left -= now;
    }
}
