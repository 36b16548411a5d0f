#include "drawing/cutting-dxf.h"
#include <math.h>
#include <string.h>
#include "drawing/cutting-name.h"
#include "drawing/dxf-pen.h"
#include "drawing/flat-corners.h"
#include "geometry/stretch.h"

static const double within = 0.005;           /* mm */
static const double one_circle = 1e-6;        /* mm */

/* A piece of a circle, or all of it, from `begin` by `sweep` as they run on our sheet. */
typedef struct { Point centre; double radius, begin, sweep; } Round;

/* Whether the line is nothing but pieces of one circle, one behind the other. */
static bool
is_round (const FlatLine *line, Round *round)
{
  Point from = line->start;

  for (size_t i = 0; i < line->count; i++)
    {
      const Stretch stretch = stretch_make (from, &line->segments[i]);
      if (stretch.kind != SEGMENT_ARC || fabs (stretch.rx - stretch.ry) > one_circle)
        return false;
      if (i == 0)
        *round = (Round) { stretch.centre, stretch.rx, stretch.begin, 0 };
      if (point_distance (stretch.centre, round->centre) > one_circle || fabs (stretch.rx - round->radius) > one_circle
          || round->sweep * stretch.sweep < 0)
        return false;
      round->sweep += stretch.sweep;
      from = line->segments[i].to;
    }
  return true;
}

/* Their angles run the other way, since y does, and an arc always runs from its first to its second. */
static void
add_arc (DxfPen *pen, const Round *round)
{
  const double ends[] = { -round->begin, -(round->begin + round->sweep) };
  const bool rising = round->sweep < 0;

  dxf_pen_entity (pen, "ARC");
  dxf_pen_place (pen, 10, round->centre);
  dxf_pen_real (pen, 40, round->radius);
  dxf_pen_angle (pen, 50, ends[rising ? 0 : 1]);
  dxf_pen_angle (pen, 51, ends[rising ? 1 : 0]);
}

static void
add_circle (DxfPen *pen, const Round *round)
{
  dxf_pen_entity (pen, "CIRCLE");
  dxf_pen_place (pen, 10, round->centre);
  dxf_pen_real (pen, 40, round->radius);
}

static void
add_straight (DxfPen *pen, Point from, Point to)
{
  dxf_pen_entity (pen, "LINE");
  dxf_pen_place (pen, 10, from);
  dxf_pen_place (pen, 11, to);
}

static void
add_polyline (DxfPen *pen, const FlatLine *line)
{
  g_autoptr (GArray) corners = g_array_new (FALSE, FALSE, sizeof (Point));

  flat_line_corners (line, within, corners);
  dxf_pen_entity (pen, "POLYLINE");
  dxf_pen_whole (pen, 66, 1);                 /* vertices follow */
  dxf_pen_place (pen, 10, (Point) { 0, pen->height });
  dxf_pen_whole (pen, 70, flat_line_is_closed (line) ? 1 : 0);
  for (guint i = 0; i < corners->len; i++)
    {
      dxf_pen_entity (pen, "VERTEX");
      dxf_pen_place (pen, 10, g_array_index (corners, Point, i));
    }
  dxf_pen_entity (pen, "SEQEND");
}

static void
add_line (DxfPen *pen, const FlatLine *line)
{
  Round round = { 0 };

  if (line->count == 1 && line->segments[0].kind == SEGMENT_LINE)
    add_straight (pen, line->start, line->segments[0].to);
  else if (!is_round (line, &round))
    add_polyline (pen, line);
  else if (fabs (round.sweep) > 2 * M_PI - 1e-6)
    add_circle (pen, &round);
  else if (!flat_line_is_closed (line))
    add_arc (pen, &round);
  else
    add_polyline (pen, line);
}

/* 72 is 0 where the place is a word's beginning; a middle (1) or an end (2) is told as a second place. */
static void
add_word (DxfPen *pen, const FlatWord *word)
{
  const int side = word->across < 0.25 ? 0 : word->across > 0.75 ? 2 : 1;

  dxf_pen_entity (pen, "TEXT");
  dxf_pen_place (pen, 10, word->at);
  dxf_pen_real (pen, 40, cutting_word_caps (word));
  dxf_pen_text (pen, 1, word->text);
  dxf_pen_angle (pen, 50, -word->turn * M_PI / 180);
  dxf_pen_whole (pen, 72, side);
  if (side != 0)
    dxf_pen_place (pen, 11, word->at);
}

static void
add_layer (DxfPen *pen, const Cutting *cutting, int layer)
{
  g_autofree char *name = g_ascii_strup (cutting_layer (layer)->id, -1);

  pen->layer = name;
  for (guint i = 0; i < cutting->pieces->len; i++)
    {
      const FlatPiece *piece = cutting->pieces->pdata[i];
      for (guint k = 0; k < piece->lines->len; k++)
        if ((int) g_array_index (piece->lines, FlatLine, k).purpose == layer)
          add_line (pen, &g_array_index (piece->lines, FlatLine, k));
      for (guint k = 0; k < piece->words->len; k++)
        if (cutting_word_layer (&g_array_index (piece->words, FlatWord, k)) == layer)
          add_word (pen, &g_array_index (piece->words, FlatWord, k));
    }
  pen->layer = NULL;
}

/* 999 is a remark, a line each. */
static void
add_remarks (DxfPen *pen, const char *text)
{
  g_auto (GStrv) lines = g_strsplit (text, "\n", -1);

  for (char **line = lines; *line != NULL; line++)
    dxf_pen_text (pen, 999, *line);
}

static void
add_header (DxfPen *pen, const Cutting *cutting)
{
  dxf_pen_section (pen, "HEADER");
  dxf_pen_text (pen, 9, "$ACADVER");
  dxf_pen_text (pen, 1, "AC1009");
  dxf_pen_text (pen, 9, "$EXTMIN");
  dxf_pen_place (pen, 10, (Point) { 0, pen->height });
  dxf_pen_text (pen, 9, "$EXTMAX");
  dxf_pen_place (pen, 10, (Point) { cutting->width, 0 });
  dxf_pen_text (pen, 9, "$LUNITS");           /* 2: decimal */
  dxf_pen_whole (pen, 70, 2);
  dxf_pen_text (pen, 9, "$MEASUREMENT");      /* 1: metric; it and the next came with later releases, and earlier readers pass over them */
  dxf_pen_whole (pen, 70, 1);
  dxf_pen_text (pen, 9, "$INSUNITS");         /* 4: millimetres */
  dxf_pen_whole (pen, 70, 4);
  dxf_pen_text (pen, 0, "ENDSEC");
}

GBytes *
cutting_dxf (const Cutting *cutting)
{
  DxfPen pen = { .to = g_string_new (NULL), .height = cutting->height };

  add_remarks (&pen, cutting->title);
  add_remarks (&pen, cutting->description);
  add_header (&pen, cutting);
  dxf_pen_tables (&pen);
  dxf_pen_section (&pen, "ENTITIES");
  for (int i = 0; i < CUTTING_LAYER_COUNT; i++)
    add_layer (&pen, cutting, cutting_layer_order (i));
  dxf_pen_text (&pen, 0, "ENDSEC");
  dxf_pen_text (&pen, 0, "EOF");
  return g_string_free_to_bytes (pen.to);
}
