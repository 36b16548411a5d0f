#include "figures/csv-text.h"

#include <float.h>
#include <math.h>
#include <string.h>

static void
begin_field (GString *text)
{
  if (text->len && text->str[text->len - 1] != '\n')
    g_string_append_c (text, ',');
}

/* Quoted where a comma, a quote or a line's end would mislead, and where it is empty at a row's beginning; quotes doubled. */
void
csv_field (GString *text, const char *field)
{
  const bool first = !text->len || text->str[text->len - 1] == '\n', plain = field && *field && !strpbrk (field, ",\"\r\n");

  begin_field (text);
  if (plain || ((!field || !*field) && !first))
    {
      g_string_append (text, field ? field : "");
      return;
    }
  g_string_append_c (text, '"');
  for (const char *at = field ? field : ""; *at; at++)
    {
      if (*at == '"')
        g_string_append_c (text, '"');
      g_string_append_c (text, *at);
    }
  g_string_append_c (text, '"');
}

/* Rounded before it is written, so that no negative zero is. */
static void
add_rounded (GString *text, double value, double steps, const char *format)
{
  char room[DBL_MAX_10_EXP + 16];
  const double rounded = round (value * steps) / steps;
  size_t length;

  begin_field (text);
  if (!isfinite (value))
    return;
  g_ascii_formatd (room, sizeof room, format, rounded == 0 ? 0 : rounded);
  for (length = strlen (room); strchr (room, '.') && room[length - 1] == '0'; length--)
    room[length - 1] = '\0';
  if (length && room[length - 1] == '.')
    room[length - 1] = '\0';
  g_string_append (text, room);
}

void
csv_number (GString *text, double value)
{
  add_rounded (text, value, 1e2, "%.2f");
}

void
csv_share (GString *text, double value)
{
  add_rounded (text, value, 1e4, "%.4f");
}

void
csv_end (GString *text)
{
  g_string_append (text, "\r\n");
}
