#include "document/xml-text.h"
#include <string.h>

static const char *
escape_of (unsigned char sign, bool quoted)
{
  switch (sign)
    {
    case '&':  return "&amp;";
    case '<':  return "&lt;";
    case '>':  return "&gt;";
    case '\r': return "&#13;";
    case '"':  return quoted ? "&quot;" : NULL;
    case '\n': return quoted ? "&#10;" : NULL;
    case '\t': return quoted ? "&#9;" : NULL;
    default:   return NULL;
    }
}

/* How many bytes at `at` are one character that XML 1.0 (section 2.2) allows; 0 when they are none. */
static size_t
allowed_length (const char *at, size_t left)
{
  const gunichar sign = g_utf8_get_char_validated (at, (gssize) left);

  if (sign >= 0x110000 || sign == 0xFFFE || sign == 0xFFFF || (sign < 0x20 && sign != '\t' && sign != '\n' && sign != '\r'))
    return 0;
  return (size_t) g_unichar_to_utf8 (sign, NULL);
}

static bool
is_plain (unsigned char sign)
{
  return sign >= 0x20 && sign < 0x80 && sign != '&' && sign != '<' && sign != '>' && sign != '"';
}

static void
append_escaped (GString *to, const char *text, size_t length, bool quoted)
{
  const char *end = text + length;

  while (text < end)
    {
      const char *plain = text, *escape;
      size_t bytes;

      while (text < end && is_plain ((unsigned char) *text))
        text++;
      g_string_append_len (to, plain, text - plain);
      if (text == end)
        return;
      escape = escape_of ((unsigned char) *text, quoted);
      bytes = escape ? 1 : allowed_length (text, (size_t) (end - text));
      if (escape)
        g_string_append (to, escape);
      else if (bytes > 0)
        g_string_append_len (to, text, (gssize) bytes);
      else
        g_string_append (to, "\uFFFD");
      text += MAX (bytes, 1);
    }
}

void
xml_append_text (GString *to, const char *text, gssize length)
{
  append_escaped (to, text, length < 0 ? strlen (text) : (size_t) length, false);
}

void
xml_append_value (GString *to, const char *text, gssize length)
{
  append_escaped (to, text, length < 0 ? strlen (text) : (size_t) length, true);
}

void
xml_append_attribute (GString *to, const char *name, const char *value, gssize length)
{
  g_string_append_c (to, ' ');
  g_string_append (to, name);
  g_string_append (to, "=\"");
  xml_append_value (to, value, length);
  g_string_append_c (to, '"');
}
