#include "figures/csv-text.h"

#include <math.h>
#include <string.h>
#include "figures/digits.h"

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

void
csv_number (GString *text, double value)
{
  char room[G_ASCII_DTOSTR_BUF_SIZE];

  begin_field (text);
  if (isfinite (value))
    g_string_append (text, digits_of (room, value));
}

void
csv_end (GString *text)
{
  g_string_append (text, "\r\n");
}
