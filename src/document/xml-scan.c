#include "document/xml-scan.h"
#include <glib.h>
#include <stdbool.h>
#include <string.h>

typedef struct { const char *data, *at, *end; } Scan;

static int
line_of (const char *data, const char *at)
{
  int line = 1;

  for (; (data = memchr (data, '\n', (size_t) (at - data))); data++)
    line++;
  return line;
}

static bool
begins (const Scan *scan, const char *word)
{
  const size_t length = strlen (word);

  return (size_t) (scan->end - scan->at) >= length && memcmp (scan->at, word, length) == 0;
}

/* Behind the next `word`, or at the end. */
static void
skip_behind (Scan *scan, const char *word)
{
  const char *found = g_strstr_len (scan->at, scan->end - scan->at, word);

  scan->at = found ? found + strlen (word) : scan->end;
}

/* Passes a tag and counts its quoted values. A tag without an end is the parser's to complain about. */
static int
pass_tag (Scan *scan)
{
  int values = 0;

  for (scan->at++; scan->at < scan->end && *scan->at != '>' && *scan->at != '<'; scan->at++)
    if (*scan->at == '"' || *scan->at == '\'')
      {
        const char *close = memchr (scan->at + 1, *scan->at, (size_t) (scan->end - scan->at - 1));

        values++;
        if (!close)
          {
            scan->at = scan->end;
            return values;
          }
        scan->at = close;
      }
  return values;
}

/* Whether the XML declaration, if there is one, names an encoding that is not ours. */
static bool
declares_other_encoding (const char *data, size_t length)
{
  const char *end = length > 5 && memcmp (data, "<?xml", 5) == 0 ? memchr (data, '>', MIN (length, 512)) : NULL;
  const char *name = end ? g_strstr_len (data, end - data, "encoding") : NULL;
  size_t count;

  if (!name)
    return false;
  name += 8;
  name += strspn (name, " \t\r\n=\"'");
  count = strcspn (name, "\"'? >");
  return !(count == 5 && g_ascii_strncasecmp (name, "utf-8", 5) == 0) && !(count == 4 && g_ascii_strncasecmp (name, "utf8", 4) == 0)
         && !(count == 8 && g_ascii_strncasecmp (name, "us-ascii", 8) == 0);
}

static ScanResult
scan_markup (Scan *scan)
{
  if (begins (scan, "<!--"))
    skip_behind (scan, "-->");
  else if (begins (scan, "<![CDATA["))
    skip_behind (scan, "]]>");
  else if (begins (scan, "<?"))
    skip_behind (scan, "?>");
  else if (begins (scan, "<!"))
    return SCAN_DECLARATION;
  else if (pass_tag (scan) > SCAN_ATTRIBUTES_MOST)
    return SCAN_ATTRIBUTES;
  return SCAN_SOUND;
}

ScanResult
xml_scan (const char *data, size_t length, int *line)
{
  Scan scan = { data, data, data + length };
  const char *broken;

  *line = 1;
  if (declares_other_encoding (data, length))
    return SCAN_ENCODING;
  if (!g_utf8_validate_len (data, length, &broken))
    {
      *line = line_of (data, broken);
      return SCAN_NOT_UTF8;
    }
  while (scan.at < scan.end && (scan.at = memchr (scan.at, '<', (size_t) (scan.end - scan.at))))
    {
      const char *began = scan.at;
      const ScanResult result = scan_markup (&scan);

      if (result != SCAN_SOUND)
        {
          *line = line_of (data, began);
          return result;
        }
    }
  return SCAN_SOUND;
}
