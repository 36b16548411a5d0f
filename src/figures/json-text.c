#include "figures/json-text.h"

#include <math.h>
#include "figures/digits.h"

/* A place for the next value: comma, new line, name. */
static void
begin_value (JsonText *self, const char *name)
{
  if (!self->empty)
    g_string_append_c (self->text, ',');
  if (self->depth)
    g_string_append_printf (self->text, "\n%*s", 2 * self->depth, "");
  if (name)
    g_string_append_printf (self->text, "\"%s\": ", name);
  self->empty = FALSE;
}

static void
open_level (JsonText *self, const char *name, char bracket)
{
  begin_value (self, name);
  g_string_append_c (self->text, bracket);
  self->depth++;
  self->empty = TRUE;
}

static void
close_level (JsonText *self, char bracket)
{
  self->depth--;
  if (!self->empty)
    g_string_append_printf (self->text, "\n%*s", 2 * self->depth, "");
  g_string_append_c (self->text, bracket);
  self->empty = FALSE;
}

JsonText
json_text_begin (void)
{
  JsonText made = { g_string_new (NULL), 0, TRUE };

  open_level (&made, NULL, '{');
  return made;
}

char *
json_text_end (JsonText *self)
{
  close_level (self, '}');
  g_string_append_c (self->text, '\n');
  return g_string_free (self->text, FALSE);
}

void
json_text_open_object (JsonText *self, const char *name)
{
  open_level (self, name, '{');
}

void
json_text_close_object (JsonText *self)
{
  close_level (self, '}');
}

void
json_text_open_array (JsonText *self, const char *name)
{
  open_level (self, name, '[');
}

void
json_text_close_array (JsonText *self)
{
  close_level (self, ']');
}

void
json_text_number (JsonText *self, const char *name, double value)
{
  char room[G_ASCII_DTOSTR_BUF_SIZE];

  if (!isfinite (value))
    {
      json_text_null (self, name);
      return;
    }
  begin_value (self, name);
  g_string_append (self->text, digits_of (room, value));
}

void
json_text_pair (JsonText *self, const char *name, double first, double second)
{
  char room[2][G_ASCII_DTOSTR_BUF_SIZE];

  if (!isfinite (first) || !isfinite (second))
    {
      json_text_null (self, name);
      return;
    }
  begin_value (self, name);
  g_string_append_printf (self->text, "[%s, %s]", digits_of (room[0], first), digits_of (room[1], second));
}

void
json_text_string (JsonText *self, const char *name, const char *value)
{
  if (!value)
    {
      json_text_null (self, name);
      return;
    }
  begin_value (self, name);
  g_string_append_c (self->text, '"');
  for (const char *at = value; *at; at++)
    if (*at == '"' || *at == '\\')
      g_string_append_printf (self->text, "\\%c", *at);
    else if ((unsigned char) *at < 0x20)
      g_string_append_printf (self->text, "\\u%04x", (unsigned) *at);
    else
      g_string_append_c (self->text, *at);
  g_string_append_c (self->text, '"');
}

void
json_text_bool (JsonText *self, const char *name, gboolean value)
{
  begin_value (self, name);
  g_string_append (self->text, value ? "true" : "false");
}

void
json_text_null (JsonText *self, const char *name)
{
  begin_value (self, name);
  g_string_append (self->text, "null");
}
