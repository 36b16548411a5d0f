#include "document/brought-lines.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>

static const double INCH = 25.4;

/* Two numbers to a row: x aft and y out. Where a comma is the decimal sign, columns are parted by something else. */
typedef struct { bool decimal_comma, inches, unit_known, swapped; } TableHabits;

static bool
is_between (char c, const TableHabits *habits)
{
  return c == ';' || c == '\t' || c == ' ' || (c == ',' && !habits->decimal_comma);
}

static bool
read_number (const char **at, const TableHabits *habits, double *value)
{
  char text[48];
  size_t length = 0;
  char *end;

  while (is_between (**at, habits) || **at == '"')
    (*at)++;
  while (**at && !is_between (**at, habits) && **at != '"' && length + 1 < sizeof text)
    {
      text[length++] = *(*at)++;
      if (text[length - 1] == ',')
        text[length - 1] = '.';
    }
  text[length] = '\0';
  *value = g_ascii_strtod (text, &end);
  return length > 0 && *end == '\0' && isfinite (*value);
}

/* A comma with a digit on both sides in a row that parts its columns otherwise is a decimal sign. */
static TableHabits
find_habits (const char *data, size_t length)
{
  TableHabits habits = { 0 };
  const bool parted = memchr (data, ';', length) || memchr (data, '\t', length);

  for (size_t i = 1; parted && i + 1 < length; i++)
    if (data[i] == ',' && g_ascii_isdigit (data[i - 1]) && g_ascii_isdigit (data[i + 1]))
      habits.decimal_comma = true;
  return habits;
}

/* A row of words: names of the columns, maybe with a unit. */
static void
read_heading (char *row, TableHabits *habits)
{
  g_autofree char *lower = g_ascii_strdown (row, -1);
  g_auto (GStrv) words = g_strsplit_set (lower, ",;\t ()[]\"", -1);
  bool first = true;

  for (char **word = words; *word; word++)
    {
      if (first && (strcmp (*word, "y") == 0 || strcmp (*word, "station") == 0))
        habits->swapped = true;
      first = first && **word == '\0';
      habits->inches = habits->inches || strcmp (*word, "in") == 0 || strcmp (*word, "inch") == 0 || strcmp (*word, "inches") == 0;
      habits->unit_known = habits->unit_known || habits->inches || strcmp (*word, "mm") == 0;
    }
}

static bool
read_row (const char *row, const TableHabits *habits, Point *place)
{
  double first, second;

  if (!read_number (&row, habits, &first) || !read_number (&row, habits, &second))
    return false;
  *place = habits->swapped ? (Point) { second, first } : (Point) { first, second };
  return true;
}

static void
set_row_error (GError **error, const char *name, guint row, const char *text)
{
  g_autofree char *quoted = g_strndup (text, 40);
  g_autofree char *shown = g_utf8_make_valid (quoted, -1);

  g_set_error (error, BROUGHT_ERROR, BROUGHT_ERROR_FOREIGN,
               _("%s:%u: “%s” is not two numbers; a table has x and y in each row."), name, row, shown);
}

Brought *
brought_read_table (const char *data, size_t length, const char *name, GError **error)
{
  g_autofree char *text = g_strndup (data, length);
  g_auto (GStrv) rows = g_strsplit_set (text, "\r\n", -1);
  TableHabits habits = find_habits (data, length);
  BroughtLines lines;
  bool begun = false;

  brought_lines_init (&lines);
  for (guint i = 0; rows[i]; i++)
    {
      char *row = g_strstrip (rows[i]);
      Point place;
      if (*row == '\0' || *row == '#')
        continue;
      if (read_row (row, &habits, &place))
        {
          if (begun)
            brought_lines_line (&lines, place);
          else
            brought_lines_begin (&lines, place, NULL);
          begun = true;
        }
      else if (!begun && g_ascii_isalpha (row[*row == '"']))
        read_heading (row, &habits);
      else
        {
          set_row_error (error, name, i + 1, row);
          brought_lines_clear (&lines);
          return NULL;
        }
    }
  return brought_lines_finish (&lines, habits.inches ? INCH : 1, habits.unit_known, name, error);
}
