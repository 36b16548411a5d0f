#include "trammel-config.h"
#include "drawing/cutting-svg.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include <stdarg.h>
#include <string.h>
#include "drawing/cutting-name.h"
#include "drawing/flat-corners.h"
#include "geometry/stretch.h"

/* Of a letter's size, a capital's height; common practice, no source. */
static const double caps_of_size = 0.7;

/* A millionth of a mm is the last figure, point as decimal sign, no zeros behind. */
static void
append_number (GString *to, double value)
{
  char text[G_ASCII_DTOSTR_BUF_SIZE];

  g_ascii_formatd (text, sizeof text, "%.6f", value);
  size_t length = strlen (text);
  while (text[length - 1] == '0')
    length--;
  if (text[length - 1] == '.')
    length--;
  text[length] = '\0';
  g_string_append (to, strcmp (text, "-0") == 0 ? "0" : text);
}

static void
append_numbers (GString *to, size_t count, ...)
{
  va_list values;

  va_start (values, count);
  for (size_t i = 0; i < count; i++)
    {
      if (i > 0)
        g_string_append_c (to, ' ');
      append_number (to, va_arg (values, double));
    }
  va_end (values);
}

static void
append_escaped (GString *to, const char *text)
{
  g_autofree char *escaped = g_markup_escape_text (text, -1);

  g_string_append (to, escaped);
}

/* In pieces of at most a quarter: near half a turn, the last figure of an end would move the middle a long way. */
static void
append_arc (GString *to, const Stretch *stretch)
{
  const double pieces = ceil (fabs (stretch->sweep) / (M_PI / 2) - 1e-9);

  for (double i = 1; i <= pieces; i++)
    {
      const Point end = stretch_at (stretch, i / pieces);
      g_string_append_c (to, 'A');
      append_numbers (to, 7, stretch->rx, stretch->ry, 0.0, 0.0, stretch->sweep > 0 ? 1.0 : 0.0, end.x, end.y);
    }
}

static void
append_segment (GString *to, Point from, const Segment *segment)
{
  const Stretch stretch = stretch_make (from, segment);

  if (stretch.kind == SEGMENT_ARC)
    append_arc (to, &stretch);
  else if (stretch.kind == SEGMENT_CURVE)
    {
      g_string_append_c (to, 'C');
      append_numbers (to, 6, segment->control1.x, segment->control1.y, segment->control2.x, segment->control2.y, segment->to.x, segment->to.y);
    }
  else
    {
      g_string_append_c (to, 'L');
      append_numbers (to, 2, segment->to.x, segment->to.y);
    }
}

static void
append_line (GString *to, const FlatLine *line, const char *name)
{
  Point from = line->start;

  g_string_append (to, "<path d=\"M");
  append_numbers (to, 2, from.x, from.y);
  for (size_t i = 0; i < line->count; i++)
    {
      append_segment (to, from, &line->segments[i]);
      from = line->segments[i].to;
    }
  g_string_append (to, flat_line_is_closed (line) ? "Z\"><title>" : "\"><title>");
  append_escaped (to, name);
  g_string_append (to, "</title></path>\n");
}

static void
append_word (GString *to, const FlatWord *word)
{
  const char *anchor = word->across < 0.25 ? "start" : word->across > 0.75 ? "end" : "middle";

  g_string_append (to, "<text x=\"");
  append_number (to, word->at.x);
  g_string_append (to, "\" y=\"");
  append_number (to, word->at.y);
  g_string_append (to, "\" font-size=\"");
  append_number (to, cutting_word_caps (word) / caps_of_size);
  g_string_append_printf (to, "\" text-anchor=\"%s", anchor);
  if (word->turn != 0)
    {
      g_string_append (to, "\" transform=\"rotate(");
      append_numbers (to, 3, word->turn, word->at.x, word->at.y);
      g_string_append_c (to, ')');
    }
  g_string_append (to, "\">");
  append_escaped (to, word->text);
  g_string_append (to, "</text>\n");
}

/* All that is on a layer. */
static GString *
layer_content (const Cutting *cutting, int layer)
{
  GString *content = g_string_new (NULL);

  for (guint i = 0; i < cutting->pieces->len; i++)
    {
      const FlatPiece *piece = cutting->pieces->pdata[i];
      for (guint k = 0; k < piece->lines->len; k++)
        if ((int) g_array_index (piece->lines, FlatLine, k).purpose == layer)
          append_line (content, &g_array_index (piece->lines, FlatLine, k), piece->name);
      for (guint k = 0; k < piece->words->len; k++)
        if (cutting_word_layer (&g_array_index (piece->words, FlatWord, k)) == layer)
          append_word (content, &g_array_index (piece->words, FlatWord, k));
    }
  return content;
}

static void
append_layer (GString *to, const Cutting *cutting, int number)
{
  const CuttingLayer *layer = cutting_layer (number);
  GString *content = layer_content (cutting, number);

  if (content->len > 0)
    {
      if (number == CUTTING_WORDS || number == FLAT_NAME)
        g_string_append_printf (to, "<g id=\"%s\" fill=\"%s\" stroke=\"none\" font-family=\"sans-serif\">\n<title>", layer->id, layer->rgb);
      else
        g_string_append_printf (to, "<g id=\"%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"0.01\">\n<title>", layer->id, layer->rgb);
      append_escaped (to, _(layer->title));
      g_string_append_printf (to, "</title>\n%s</g>\n", content->str);
    }
  g_string_free (content, TRUE);
}

GBytes *
cutting_svg (const Cutting *cutting)
{
  GString *made = g_string_new ("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                                "<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" role=\"img\" width=\"");

  append_number (made, cutting->width);
  g_string_append (made, "mm\" height=\"");
  append_number (made, cutting->height);
  g_string_append (made, "mm\" viewBox=\"");
  append_numbers (made, 4, 0.0, 0.0, cutting->width, cutting->height);
  g_string_append (made, "\">\n<title>");
  append_escaped (made, cutting->title);
  g_string_append (made, "</title>\n<desc>");
  append_escaped (made, cutting->description);
  g_string_append (made, "</desc>\n");
  for (int i = 0; i < CUTTING_LAYER_COUNT; i++)
    append_layer (made, cutting, cutting_layer_order (i));
  g_string_append (made, "</svg>\n");
  return g_string_free_to_bytes (made);
}
