#include "trammel-config.h"
#include "drawing/parts-sheet.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "drawing/lettering-font.h"
#include "drawing/page-table.h"
#include "drawing/parts-sheet-rows.h"
#include "drawing/wall-sheet-frame.h"
#include "drawing/wall-sheet-title.h"

static const double strip_high = 11, above_strip = 5;       /* the title strip at the foot of each page */
static const double gutter = 10, narrowest = 172;           /* between columns on large paper; of one */
static const double heading_high = 6, apart = 7;            /* a heading with the air below it; between sections */
static const double line_pitch = 1.75;                      /* of paragraphs, by the height of capitals */

typedef enum { PIECE_HEADING, PIECE_CONTINUED, PIECE_ROWS, PIECE_LINE } PlacedKind;
/** Something that stands on a page: a heading, rows from..to of a section's table, a line of words. */
typedef struct {
  PlacedKind kind;
  size_t page;
  Point at;
  size_t section;
  guint from, to;
  char *line;
} Placed;

struct PartsSheetLayout {
  WallSheet sheet;               /* figures held, date a copy */
  Look look;
  PartsSection sections[PARTS_SECTIONS];
  PageTable tables[PARTS_SECTIONS];
  char **subject;                /* lines beneath the title */
  GArray *placed;
  size_t pages;
};

/* Where the next thing goes. */
typedef struct {
  PartsSheetLayout *self;
  SheetPen pen;
  Box room;
  double width;                  /* of a column */
  unsigned columns, column;
  size_t page;
  double y;
} Flow;

const char *
parts_sheet_subject (void)
{
  return _("Parts sheet: what goes in before the body is closed, parts and their places, leads, and what to cut");
}

static void
placed_clear (gpointer data)
{
  g_free (((Placed *) data)->line);
}

static double
first_y (const Flow *flow)
{
  const double title = caps_title + 3 + caps_text + (g_strv_length (flow->self->subject) - 1) * line_pitch * caps_text + apart;

  return flow->page == 0 ? flow->room.min.y + title : flow->room.min.y;
}

static Flow
flow_begin (PartsSheetLayout *self)
{
  Flow flow = { .self = self, .pen = pen_begin (NULL, &self->sheet, &self->look), .room = wall_frame_box (&self->sheet) };

  flow.room.max.y -= strip_high + above_strip;
  flow.columns = (unsigned) fmax (1, floor ((box_width (flow.room) + gutter) / (narrowest + gutter)));
  /* A painter may set letters a hair wider than they were measured here. */
  self->subject = pen_wrapped (&flow.pen, caps_text, 0.98 * box_width (flow.room), parts_sheet_subject ());
  flow.width = (box_width (flow.room) - (flow.columns - 1) * gutter) / flow.columns;
  flow.y = first_y (&flow);
  return flow;
}

static void
flow_on (Flow *flow)
{
  if (++flow->column == flow->columns)
    {
      flow->column = 0;
      flow->page++;
    }
  flow->y = first_y (flow);
}

static double
room_left (const Flow *flow)
{
  return flow->room.max.y - flow->y;
}

static void
place (Flow *flow, Placed placed, double high)
{
  placed.page = flow->page;
  placed.at = (Point) { flow->room.min.x + flow->column * (flow->width + gutter), flow->y };
  g_array_append_val (flow->self->placed, placed);
  flow->y += high;
}

/* Where the rows that have room on a page had better end: before a group that would be parted, where it begins a few rows above; and never so that
 * one row goes on alone, which is soon overlooked. */
static guint
page_end (const PageTable *table, guint from, guint to, guint count)
{
  const guint few = 6;

  for (guint at = to; to < count && at > from + 1 && to - at <= few; at--)
    if (!page_table_goes_on (table, at))
      return at;
  return to + 1 == count && to > from + 2 ? to - 1 : to;
}

static void
place_rows (Flow *flow, size_t section)
{
  const PageTable *table = &flow->self->tables[section];
  const guint count = table->table->rows->len;
  const double head = page_table_high (&flow->pen, table, -1);

  for (guint from = 0, to; from < count; from = to)
    {
      double high = head;

      if (from > 0)
        {
          flow_on (flow);
          place (flow, (Placed) { .kind = PIECE_CONTINUED, .section = section }, heading_high);
        }
      for (to = from; to < count; to++)
        {
          const double row = page_table_high (&flow->pen, table, (int) to);

          if (to > from && high + row > room_left (flow))
            break;
          high += row;
        }
      for (const guint end = page_end (table, from, to, count); to > end; )
        high -= page_table_high (&flow->pen, table, (int) --to);
      place (flow, (Placed) { .kind = PIECE_ROWS, .section = section, .from = from, .to = to }, high);
    }
}

static double
paragraph_high (const Flow *flow, size_t section, const char *paragraph)
{
  const double caps = flow->self->sections[section].small ? caps_small : caps_text;
  g_auto (GStrv) lines = pen_wrapped (&flow->pen, caps, fmin (flow->width, narrowest), paragraph);

  return g_strv_length (lines) * line_pitch * caps + caps * 0.6;
}

static void
place_paragraph (Flow *flow, size_t section, const char *paragraph)
{
  const double caps = flow->self->sections[section].small ? caps_small : caps_text;
  g_auto (GStrv) lines = pen_wrapped (&flow->pen, caps, fmin (flow->width, narrowest), paragraph);
  const double high = g_strv_length (lines) * line_pitch * caps;

  if (high > room_left (flow) && flow->y > first_y (flow))
    flow_on (flow);
  for (size_t i = 0; lines[i] != NULL; i++)
    place (flow, (Placed) { .kind = PIECE_LINE, .section = section, .line = g_strdup (lines[i]) }, line_pitch * caps);
  flow->y += caps * 0.6;
}

/* A heading stands with what it heads: with the first rows of a table, or all of a short one. */
static double
least_high (const Flow *flow, size_t section)
{
  const guint together = 6, first = 2;
  const PartsSection *of = &flow->self->sections[section];
  const PageTable *table = &flow->self->tables[section];
  const guint rows = of->table.rows->len <= together ? of->table.rows->len : first;
  double high = heading_high + page_table_high (&flow->pen, table, -1);

  for (guint i = 0; i < rows; i++)
    high += page_table_high (&flow->pen, table, (int) i);
  if (rows > 0)
    return high;
  if (of->small)
    for (size_t i = 0; of->words[i] != NULL; i++)
      high += paragraph_high (flow, section, of->words[i]);
  return of->small ? high : heading_high + 2 * line_pitch * caps_text;
}

/* Small print that would begin a page of its own, and has room here where one sentence follows the other. */
static bool
has_room_running (const Flow *flow, size_t section)
{
  g_autofree char *all = g_strjoinv (" ", flow->self->sections[section].words);
  const double room = room_left (flow) - apart;

  return least_high (flow, section) > room && heading_high + paragraph_high (flow, section, all) <= room;
}

static void
place_section (Flow *flow, size_t section)
{
  const PartsSection *of = &flow->self->sections[section];
  const bool running = of->small && has_room_running (flow, section);

  if (of->table.rows->len == 0 && of->words == NULL)
    return;
  if (flow->y > first_y (flow))
    flow->y += apart;
  if (!running && least_high (flow, section) > room_left (flow))
    flow_on (flow);
  place (flow, (Placed) { .kind = PIECE_HEADING, .section = section }, heading_high);
  if (of->table.rows->len > 0)
    {
      place_rows (flow, section);
      flow->y += 3;
    }
  if (running)
    {
      g_autofree char *all = g_strjoinv (" ", of->words);

      place_paragraph (flow, section, all);
    }
  for (size_t i = 0; !running && of->words != NULL && of->words[i] != NULL; i++)
    place_paragraph (flow, section, of->words[i]);
}

PartsSheetLayout *
parts_sheet_layout_new (const WallSheet *sheet)
{
  PartsSheetLayout *self = g_new0 (PartsSheetLayout, 1);
  Flow flow;

  lettering_font_add ();
  self->sheet = *sheet;
  self->sheet.portrait = true;
  self->sheet.figures = figures_ref (sheet->figures);
  self->sheet.date = g_strdup (sheet->date);
  self->look = look_for_paper ();
  self->placed = g_array_new (FALSE, FALSE, sizeof (Placed));
  g_array_set_clear_func (self->placed, placed_clear);
  parts_sections_of (&self->sheet, self->sections);
  flow = flow_begin (self);
  for (size_t i = 0; i < PARTS_SECTIONS; i++)
    {
      const PartsSection *of = &self->sections[i];
      const PageTableStyle style = { .stretches = of->stretches, .parted = of->parted, .ditto = of->ditto, .ticks = of->ticks };

      self->tables[i] = page_table_new (&flow.pen, &of->table, flow.width, style);
      place_section (&flow, i);
    }
  self->pages = flow.page + 1;
  return self;
}

void
parts_sheet_layout_free (PartsSheetLayout *self)
{
  if (self == NULL)
    return;
  g_strfreev (self->subject);
  g_array_unref (self->placed);
  parts_sections_clear (self->sections);
  figures_unref ((Figures *) self->sheet.figures);
  g_free ((char *) self->sheet.date);
  g_free (self);
}

size_t
parts_sheet_layout_count (const PartsSheetLayout *self)
{
  return self->pages;
}

void
parts_sheet_layout_size (const PartsSheetLayout *self, double *width, double *height)
{
  wall_sheet_size (&self->sheet, width, height);
}

static void
draw_placed (const SheetPen *pen, const PartsSheetLayout *self, const Placed *placed)
{
  const PartsSection *section = &self->sections[placed->section];
  const double caps = section->small ? caps_small : caps_text;
  g_autofree char *continued = NULL;

  switch (placed->kind)
    {
    case PIECE_HEADING:
      pen_write (pen, (Script) { { placed->at.x, placed->at.y + caps_figure }, caps_figure, 0 }, section->heading);
      break;
    case PIECE_CONTINUED:
      /* Translators: the heading of a list that goes on from the page before: "Parts, continued" */
      continued = g_strdup_printf (_("%s, continued"), section->heading);
      pen_write (pen, (Script) { { placed->at.x, placed->at.y + caps_figure }, caps_figure, 0 }, continued);
      break;
    case PIECE_ROWS:
      page_table_draw (pen, &self->tables[placed->section], placed->at, placed->from, placed->to);
      break;
    case PIECE_LINE:
      pen_write (pen, (Script) { { placed->at.x, placed->at.y + caps }, caps, 0 }, placed->line);
      break;
    }
}

/* At the foot of every page: whose it is, of when, which of how many. */
static void
draw_strip (const SheetPen *pen, const PartsSheetLayout *self, size_t page)
{
  const Box frame = wall_frame_box (&self->sheet), strip = { { frame.min.x, frame.max.y - strip_high }, frame.max };
  const double date = 30, units = 22, number = 22, sheet = 36;
  const double edges[] = { strip.max.x - date - units - number - sheet, strip.max.x - date - units - number, strip.max.x - units - number,
                           strip.max.x - number };
  g_autofree char *unit_words = g_strdup_printf ("%s, %s", units_length_name (self->sheet.units), units_mass_name (self->sheet.units));
  g_autofree char *number_words = g_strdup_printf ("%zu\u200A/\u200A%zu", page + 1, self->pages);

  wall_title_cell (pen, (Box) { strip.min, { edges[0], strip.max.y } }, _("title"), wall_sheet_title (&self->sheet));
  wall_title_cell (pen, (Box) { { edges[0], strip.min.y }, { edges[1], strip.max.y } }, _("sheet"), _("Parts sheet"));
  wall_title_date (pen, (Box) { { edges[1], strip.min.y }, { edges[2], strip.max.y } });
  wall_title_cell (pen, (Box) { { edges[2], strip.min.y }, { edges[3], strip.max.y } }, _("units"), unit_words);
  wall_title_cell (pen, (Box) { { edges[3], strip.min.y }, strip.max }, _("page"), number_words);
  pen_box (pen, 0.7, strip);
}

static void
draw_title (const SheetPen *pen, const PartsSheetLayout *self)
{
  const Box frame = wall_frame_box (&self->sheet);
  g_autofree char *capitals = g_utf8_strup (wall_sheet_title (&self->sheet), -1);

  pen_write_within (pen, (Script) { { frame.min.x, frame.min.y + caps_title }, caps_title, 0 }, caps_figure, box_width (frame), capitals);
  for (int i = 0; self->subject[i] != NULL; i++)
    pen_write (pen, (Script) { { frame.min.x, frame.min.y + caps_title + 3 + caps_text + i * line_pitch * caps_text }, caps_text, 0 }, self->subject[i]);
}

void
parts_sheet_draw (const PartsSheetLayout *self, size_t page, cairo_t *cr)
{
  SheetPen pen;

  cairo_save (cr);
  cairo_new_path (cr);
  pen = pen_begin (cr, &self->sheet, &self->look);
  if (page == 0)
    draw_title (&pen, self);
  for (guint i = 0; i < self->placed->len; i++)
    {
      const Placed *placed = &g_array_index (self->placed, Placed, i);

      if (placed->page == page)
        draw_placed (&pen, self, placed);
    }
  draw_strip (&pen, self, page);
  cairo_restore (cr);
}
