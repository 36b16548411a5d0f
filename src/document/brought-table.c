#include "document/brought-lines.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>

/* Two numbers to a row: x aft and y out. Where a comma is the decimal sign, columns are parted by something else. */
typedef struct { bool decimal_comma, unit_known, swapped; double mm; } TableHabits;

static bool
is_between (char c, const TableHabits *habits)
{
  return c == ';' || c == '\t' || c == ' ' || (c == ',' && !habits->decimal_comma);
}

/* A number longer than anybody writes is none, rather than two. */
static bool
read_number (const char **at, const TableHabits *habits, double *value)
{
  char text[48];
  size_t length = 0;
  char *end;

  while (is_between (**at, habits) || **at == '"')
    (*at)++;
  while (**at && !is_between (**at, habits) && **at != '"')
    {
      if (length + 1 >= sizeof text)
        return false;
      text[length++] = *(*at)++;
      if (text[length - 1] == ',')
        text[length - 1] = '.';
    }
  text[length] = '\0';
  *value = g_ascii_strtod (text, &end);
  return length > 0 && *end == '\0' && isfinite (*value);
}

/* Whether numbers are parted by blanks alone: a digit, blanks, and again a number. */
static bool
is_parted_by_blanks (const char *data, size_t length)
{
  for (size_t i = 1; i + 1 < length; i++)
    if (data[i] == ' ' && (data[i + 1] == '-' || g_ascii_isdigit (data[i + 1])))
      {
        size_t before = i;
        while (before > 0 && data[before] == ' ')
          before--;
        if (g_ascii_isdigit (data[before]))
          return true;
      }
  return false;
}

/* A comma with a digit on both sides in a file that parts its columns otherwise is a decimal sign. */
static TableHabits
find_habits (const char *data, size_t length)
{
  TableHabits habits = { .mm = 1 };
  const bool parted = memchr (data, ';', length) || memchr (data, '\t', length) || is_parted_by_blanks (data, length);

  for (size_t i = 1; parted && i + 1 < length; i++)
    if (data[i] == ',' && g_ascii_isdigit (data[i - 1]) && g_ascii_isdigit (data[i + 1]))
      habits.decimal_comma = true;
  return habits;
}

/* The unit that a word of the heading names, mm; 0: it names none. */
static double
unit_of_word (const char *word)
{
  static const struct { const char *word; double mm; } units[] = {
    { "mm", 1 }, { "cm", 10 }, { "m", 1000 }, { "in", 25.4 }, { "inch", 25.4 }, { "inches", 25.4 } };

  for (size_t i = 0; i < G_N_ELEMENTS (units); i++)
    if (strcmp (word, units[i].word) == 0)
      return units[i].mm;
  return 0;
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
      const double mm = unit_of_word (*word);
      habits->mm = mm > 0 ? mm : habits->mm;
      habits->unit_known = habits->unit_known || mm > 0;
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

/* One row; false where it is neither a place nor, before the first, a heading. */
static bool
take_row (char *row, TableHabits *habits, BroughtLines *lines)
{
  Point place;

  if (*row == '\0' || *row == '#')
    return true;
  if (!read_row (row, habits, &place))
    {
      if (lines->under_way || !g_ascii_isalpha (row[*row == '"']))
        return false;
      read_heading (row, habits);
    }
  else if (lines->under_way)
    brought_lines_line (lines, place);
  else
    brought_lines_begin (lines, place, NULL);
  return true;
}

static const char byte_order_mark[] = "\xEF\xBB\xBF";

Brought *
brought_read_table (const char *data, size_t length, const char *name, GError **error)
{
  g_autofree char *text = g_strndup (data, length);
  g_auto (GStrv) rows = g_strsplit (g_str_has_prefix (text, byte_order_mark) ? text + strlen (byte_order_mark) : text, "\n", -1);
  TableHabits habits = find_habits (data, length);
  BroughtLines lines;

  brought_lines_init (&lines);
  for (guint i = 0; rows[i]; i++)
    if (!take_row (g_strstrip (rows[i]), &habits, &lines))
      {
        set_row_error (error, name, i + 1, rows[i]);
        brought_lines_clear (&lines);
        return NULL;
      }
  Brought *made = brought_lines_finish (&lines, habits.mm, habits.unit_known, name, error);
  if (made)
    made->has_place = true;
  return made;
}
