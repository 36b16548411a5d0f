#include "trammel-config.h"
#include "drawing/template-notes.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "drawing/template-line.h"
#include "figures/cautions.h"

static const double title_caps = 5, leading = 1.7, apart = 1;      /* leading in capitals; apart between sentences, mm */
static const double legend_width = 76, two_columns = 150;          /* from which width on the legend stands beside the sentences */
static const double map_height = 24, row = 4, sample = 19;         /* of the legend: from line to line, and how long a line is shown */

TemplateNotes
template_notes_of (const TemplateSheet *sheet)
{
  TemplateNotes notes = { .title = sheet->title, .date = sheet->date, .tiled = !sheet->one_page };

  for (guint i = 0; i < sheet->pieces->len; i++)
    {
      const FlatPiece *piece = sheet->pieces->pdata[i];

      for (guint k = 0; k < piece->lines->len; k++)
        notes.purposes |= 1u << g_array_index (piece->lines, FlatLine, k).purpose;
    }
  return notes;
}

/* One sentence from y on down; gives where the next begins. */
static double
sentence (const SheetPen *pen, const char *text, double caps, Box box, double y, bool draw)
{
  g_auto (GStrv) lines = pen_wrapped (pen, caps, box_width (box), text);

  for (size_t i = 0; lines[i] != NULL; i++)
    {
      y += leading * caps;
      if (draw)
        pen_write (pen, (Script) { { box.min.x, y }, caps, 0 }, lines[i]);
    }
  return y + apart;
}

static double
subtitle (const SheetPen *pen, const TemplateNotes *notes, Box box, double y, bool draw)
{
  /* Translators: at the head of a template, in front of the date of the document's last change */
  g_autofree char *dated = notes->date[0] != '\0' ? g_strdup_printf (_("Template, full size. State of %s."), notes->date) : NULL;

  return sentence (pen, dated != NULL ? dated : _("Template, full size."), caps_text, box, y, draw);
}

/* How to put it together, and the cautions, one below the other; gives where they end. */
static double
sentences (const SheetPen *pen, const TemplateNotes *notes, Box box, bool draw)
{
  const char *const how[] = {
    notes->tiled ? _("1. Print all pages at 100 %, no fitting. Lay a steel rule along the lines of 100 mm, both ways, before you cut. Where they measure "
                     "otherwise, type what you read when you export or print, and print again.")
                 : _("1. Lay a steel rule along the lines of 100 mm, both ways, before you cut."),
    notes->tiled ? _("2. Trim a page along the broken line at its left or upper edge, lay it on its neighbour's hatched edge, cross on cross, and "
                     "glue it there.") : NULL,
    notes->tiled ? _("3. Cut out along the thick lines.") : _("2. Cut out along the thick lines."),
    notes->purposes & 1u << FLAT_STATION ? _("Ribs and formers themselves are not drawn: lines show where they stand.") : NULL };
  g_autofree char *capitals = g_utf8_strup (notes->title, -1);
  double y = box.min.y + title_caps;

  if (draw)
    pen_write_within (pen, (Script) { { box.min.x, y }, title_caps, 0 }, caps_text, box_width (box), capitals);
  y = subtitle (pen, notes, box, y + 1, draw);
  for (size_t i = 0; i < G_N_ELEMENTS (how); i++)
    if (how[i] != NULL)
      y = sentence (pen, how[i], caps_text, box, y, draw);
  for (size_t i = 0; cautions_sentence (i) != NULL; i++)
    y = sentence (pen, cautions_sentence (i), caps_small, box, y, draw);
  return y;
}

/* A line and what it says, from y on down; gives where the next begins. */
static double
legend_row (const SheetPen *pen, FlatPurpose purpose, Box box, double y, bool draw)
{
  const double gap = 3;
  const Box words = { { box.min.x + sample + gap, y + row - leading * caps_small }, box.max };

  if (draw)
    {
      template_line_set (pen, purpose);
      line_stroke (pen->cr, (Point) { box.min.x, y + row - caps_small / 2 }, (Point) { box.min.x + sample, y + row - caps_small / 2 });
    }
  return sentence (pen, template_line_words (purpose), caps_small, words, words.min.y, draw) - apart;
}

/* Where pages go, and what lines say, those that there are; gives where that ends. */
static double
legend (const SheetPen *pen, const TemplateNotes *notes, Box box, const TemplateTiles *tiles, bool draw)
{
  double y = box.min.y;

  if (notes->tiled)
    {
      if (draw)
        template_map_draw_named (pen, tiles, (Box) { { box.min.x, y }, { box.max.x, y + map_height } });
      y += map_height + apart;
    }
  for (int purpose = 0; purpose < FLAT_PURPOSE_COUNT; purpose++)
    if (notes->purposes & 1u << purpose)
      y = legend_row (pen, (FlatPurpose) purpose, box, y, draw);
  return y + apart;
}

/* Side by side, or one below the other. */
static double
all (const SheetPen *pen, const TemplateNotes *notes, Box box, const TemplateTiles *tiles, bool draw)
{
  const double gap = 8, width = box_width (box);
  const bool beside = width >= two_columns;
  const Box left = { box.min, { beside ? box.max.x - legend_width - gap : box.max.x, box.max.y } };
  const double end = sentences (pen, notes, left, draw);
  const Point corner = beside ? (Point) { box.max.x - legend_width, box.min.y } : (Point) { box.min.x, end + apart };

  return fmax (end, legend (pen, notes, (Box) { corner, { fmin (corner.x + legend_width, box.max.x), box.max.y } }, tiles, draw));
}

double
template_notes_height (const SheetPen *pen, const TemplateNotes *notes, double width)
{
  return all (pen, notes, (Box) { { 0, 0 }, { width, 0 } }, NULL, false);
}

void
template_notes_draw (const SheetPen *pen, const TemplateNotes *notes, Box box, const TemplateTiles *tiles)
{
  all (pen, notes, box, tiles, true);
}
