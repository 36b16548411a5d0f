#include "figures/text-table.h"

#include <stdbool.h>

TextTable
text_table_new (unsigned columns, unsigned left)
{
  return (TextTable) { .columns = columns, .left = left | 1, .cells = g_ptr_array_new_with_free_func (g_free) };
}

void
text_table_cell (TextTable *table, char *takes)
{
  g_ptr_array_add (table->cells, takes ? takes : g_strdup (""));
}

static void
append_blanks (GString *text, size_t count)
{
  for (size_t i = 0; i < count; i++)
    g_string_append_c (text, ' ');
}

static void
append_cell (GString *text, const char *cell, size_t width, bool left)
{
  const size_t room = width - (size_t) g_utf8_strlen (cell, -1);

  if (!left)
    append_blanks (text, room);
  g_string_append (text, cell);
  if (left)
    append_blanks (text, room);
}

static size_t
column_width (const TextTable *table, unsigned column)
{
  size_t width = 0;

  for (guint at = column; at < table->cells->len; at += table->columns)
    width = MAX (width, (size_t) g_utf8_strlen (g_ptr_array_index (table->cells, at), -1));
  return width;
}

void
text_table_print (TextTable *table, GString *text)
{
  g_autofree size_t *widths = g_new (size_t, table->columns);

  for (unsigned column = 0; column < table->columns; column++)
    widths[column] = column_width (table, column);
  for (guint at = 0; at < table->cells->len; at++)
    {
      const unsigned column = at % table->columns;

      append_blanks (text, 2);
      append_cell (text, g_ptr_array_index (table->cells, at), widths[column], table->left & 1u << column);
      if (column + 1 < table->columns)
        continue;
      while (text->str[text->len - 1] == ' ')
        g_string_truncate (text, text->len - 1);
      g_string_append_c (text, '\n');
    }
  g_clear_pointer (&table->cells, g_ptr_array_unref);
}

void
text_wrap (GString *text, const char *paragraph, unsigned indent, unsigned width)
{
  g_auto (GStrv) words = g_strsplit (paragraph, " ", -1);
  size_t column = indent;

  for (char **word = words; *word; word++)
    {
      const size_t length = (size_t) g_utf8_strlen (*word, -1);

      if (column > indent && column + 1 + length > width)
        {
          g_string_append_c (text, '\n');
          append_blanks (text, indent);
          column = indent;
        }
      else if (column > indent)
        {
          g_string_append_c (text, ' ');
          column++;
        }
      g_string_append (text, *word);
      column += length;
    }
  g_string_append_c (text, '\n');
}
