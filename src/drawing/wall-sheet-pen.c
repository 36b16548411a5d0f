#include "drawing/wall-sheet-pen.h"
#include <math.h>

SheetPen
pen_begin (cairo_t *cr, const WallSheet *sheet, const Look *look)
{
  const double desk = 250;      /* mm: A4 and Letter are shorter across */
  const bool small = fmin (sheet->paper->width, sheet->paper->height) < desk;

  return (SheetPen) {
    .cr = cr, .sheet = sheet, .look = look, .lettering = lettering_begin (cr, look), .figure_caps = small ? caps_text : caps_figure };
}

static Letters
script_letters (const SheetPen *pen, Script script, const char *text)
{
  return (Letters) {
    .text = text, .place = script.at, .size = look_em_of_caps (pen->look, script.caps), .across = script.across };
}

static void
fill_box (const SheetPen *pen, Box box)
{
  look_set_source (pen->cr, pen->look->graphite);
  cairo_rectangle (pen->cr, box.min.x, box.min.y, box_width (box), box_height (box));
  cairo_fill (pen->cr);
}

void
pen_write (const SheetPen *pen, Script script, const char *text)
{
  const Letters letters = script_letters (pen, script, text);

  if (pen->words_are_solid)
    fill_box (pen, lettering_box (&pen->lettering, &letters));
  else
    lettering_draw (&pen->lettering, &letters);
}

void
pen_dimension (const SheetPen *pen, Dimension dimension)
{
  if (dimension.size == 0)
    dimension.size = look_em_of_caps (pen->look, pen->figure_caps);
  dimension_draw (&pen->lettering, &dimension);
  if (pen->words_are_solid)
    fill_box (pen, dimension_figure_box (&pen->lettering, &dimension));
}

double
pen_width (const SheetPen *pen, double caps, const char *text)
{
  const Letters letters = script_letters (pen, (Script) { .caps = caps }, text);

  return box_width (lettering_box (&pen->lettering, &letters));
}

static char *
text_cut (const char *text, long characters)
{
  g_autofree char *kept = g_utf8_substring (text, 0, characters);

  return g_strconcat (g_strchomp (kept), "...", NULL);      /* the lettering has no sign for it */
}

char *
pen_fitted (const SheetPen *pen, double caps, double width, const char *text)
{
  long fits = 0, too_many = g_utf8_strlen (text, -1);

  if (pen_width (pen, caps, text) <= width)
    return g_strdup (text);
  while (too_many - fits > 1)
    {
      const long middle = (fits + too_many) / 2;
      g_autofree char *cut = text_cut (text, middle);

      if (pen_width (pen, caps, cut) <= width)
        fits = middle;
      else
        too_many = middle;
    }
  return text_cut (text, fits);
}

void
pen_write_within (const SheetPen *pen, Script script, double least, double width, const char *text)
{
  g_autofree char *fitted = NULL;

  script.caps = fmax (least, fmin (script.caps, script.caps * width / pen_width (pen, script.caps, text)));
  fitted = pen_fitted (pen, script.caps, width, text);
  pen_write (pen, script, fitted);
}

/* How many bytes of text, a whole number of characters and at least one, are `width` wide. */
static size_t
bytes_within (const SheetPen *pen, double caps, double width, const char *text)
{
  size_t bytes = 0;

  for (const char *next = g_utf8_next_char (text); ; next = g_utf8_next_char (next))
    {
      g_autofree char *head = g_strndup (text, next - text);

      if (bytes > 0 && pen_width (pen, caps, head) > width)
        return bytes;
      bytes = next - text;
      if (*next == '\0')
        return bytes;
    }
}

/* Puts the word behind the line if there is room, else ends the line and begins the next; a word too wide for any line is cut. */
static void
wrap_word (const SheetPen *pen, Script script, double width, GString *line, GPtrArray *lines, const char *word)
{
  g_autofree char *both = line->len > 0 ? g_strconcat (line->str, " ", word, NULL) : g_strdup (word);

  if (pen_width (pen, script.caps, both) <= width)
    {
      g_string_assign (line, both);
      return;
    }
  if (line->len > 0)
    g_ptr_array_add (lines, g_strdup (line->str));
  while (pen_width (pen, script.caps, word) > width)
    {
      const size_t bytes = bytes_within (pen, script.caps, width, word);

      if (word[bytes] == '\0')
        break;
      g_ptr_array_add (lines, g_strndup (word, bytes));
      word += bytes;
    }
  g_string_assign (line, word);
}

char **
pen_wrapped (const SheetPen *pen, double caps, double width, const char *text)
{
  g_auto (GStrv) words = g_strsplit (text, " ", -1);
  g_autoptr (GString) line = g_string_new (NULL);
  GPtrArray *lines = g_ptr_array_new ();

  for (size_t i = 0; words[i] != NULL; i++)
    if (words[i][0] != '\0')
      wrap_word (pen, (Script) { .caps = caps }, width, line, lines, words[i]);
  g_ptr_array_add (lines, g_strdup (line->str));
  g_ptr_array_add (lines, NULL);
  return (char **) g_ptr_array_free (lines, FALSE);
}

static char *
spaced_out (char *takes)
{
  g_autofree char *narrow = takes;

  return lettering_spaced (narrow);
}

char *
paper_length (Units units, double mm)
{
  return spaced_out (units_length (units, mm));
}

char *
paper_length_figure (Units units, double mm)
{
  return spaced_out (units_length_figure (units, mm));
}

void
pen_set_line (const SheetPen *pen, double width)
{
  cairo_set_line_width (pen->cr, width);
  cairo_set_dash (pen->cr, NULL, 0, 0);
  cairo_set_line_cap (pen->cr, CAIRO_LINE_CAP_BUTT);
  cairo_set_line_join (pen->cr, CAIRO_LINE_JOIN_MITER);
  look_set_source (pen->cr, pen->look->graphite);
}

void
pen_line (const SheetPen *pen, double width, Point from, Point to)
{
  pen_set_line (pen, width);
  line_stroke (pen->cr, from, to);
}

void
pen_box (const SheetPen *pen, double width, Box box)
{
  pen_set_line (pen, width);
  line_add_box (pen->cr, box);
  cairo_stroke (pen->cr);
}
