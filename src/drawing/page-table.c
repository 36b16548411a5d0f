#include "drawing/page-table.h"
#include <math.h>

static const double firm = 0.35, thin = 0.13;
static const double air = 3;          /* between columns; half of it outside */
static const double above = 0.9;      /* of a row's first line and below its last, by the height of capitals */
static const double lines = 1.65;     /* from one line to the next, likewise */
static const double between = 9;      /* two tables side by side */
static const double box = 3.2;        /* to tick */
static const double head = 24;        /* a head's words go on below rather than take more */
static const double longest = 45;     /* a word of which more than that stands in one line only where there is room */

static const char *const *
cells_of (const PageTable *self, int row)
{
  return row < 0 ? self->table->heads : g_ptr_array_index (self->table->rows, (guint) row);
}

static bool
is_tick (const PageTable *self, unsigned column)
{
  return self->ticks && column == 0;
}

/* The widest of the words that a blank parts. */
static double
word_width (const SheetPen *pen, double caps, const char *text)
{
  g_auto (GStrv) words = g_strsplit (text, " ", -1);
  double width = 0;

  for (size_t i = 0; words[i] != NULL; i++)
    width = fmax (width, pen_width (pen, caps, words[i]));
  return fmin (width, longest);
}

/* What a column would like, and the least it can do with. Heads go on below; `roomy`, they may be as wide as some words first. */
static void
measure (const SheetPen *pen, const PageTable *self, unsigned column, bool roomy, double *wish, double *least)
{
  const double caps = self->table->caps;

  *wish = *least = is_tick (self, column) ? box : 0;
  for (int row = self->table->heads[0] ? -1 : 0; row < (int) self->table->rows->len && !is_tick (self, column); row++)
    {
      const char *text = cells_of (self, row)[column];
      const double word = word_width (pen, caps, text);

      const double all = pen_width (pen, caps, text);

      *wish = fmax (*wish, row < 0 ? fmax (word, roomy ? fmin (all, head) : 0) : all);
      *least = fmax (*least, word);
    }
}

/* As wide as they wish up to a common height of the brim, none below its least. */
static double
fill_to (PageTable *self, double brim, const double wish[], const double least[])
{
  double sum = 0;

  for (unsigned i = 0; i < self->table->columns; i++)
    sum += self->columns[i] = fmax (least[i], fmin (wish[i], brim));
  return sum;
}

static void
narrow (PageTable *self, double room, const double wish[], const double least[])
{
  double low = 0, high = room;

  for (int i = 0; i < 40; i++)
    {
      const double middle = (low + high) / 2;

      if (fill_to (self, middle, wish, least) <= room)
        low = middle;
      else
        high = middle;
    }
  const double sum = fill_to (self, low, wish, least);
  for (unsigned i = 0; sum > room && i < self->table->columns; i++)      /* even the longest words have no room: they are broken */
    self->columns[i] *= room / sum;
}

PageTable
page_table_new (const SheetPen *pen, const RuledTable *table, double width, PageTableStyle style)
{
  PageTable self = { .table = table, .width = width, .ticks = style.ticks, .parted = style.parted, .ditto = style.ditto };
  const double room = width - table->columns * air - (style.parted > 0 ? between : 0);
  double wish[TABLE_COLUMNS], least[TABLE_COLUMNS], sum = INFINITY;

  for (int roomy = 1; roomy >= 0 && sum > room; roomy--)
    {
      sum = 0;
      for (unsigned i = 0; i < table->columns; i++)
        {
          measure (pen, &self, i, roomy, &wish[i], &least[i]);
          sum += wish[i];
        }
    }
  narrow (&self, room, wish, least);
  for (unsigned i = 0; i < table->columns && sum < room; i++)
    self.columns[i] += style.stretches >= table->columns ? (room - sum) / table->columns : i == style.stretches ? room - sum : 0;
  return self;
}

/* Shaping rounds in its own way: what has just the width it was measured by stays in one line. */
static char **
cell_lines (const SheetPen *pen, const PageTable *self, int row, unsigned column)
{
  return pen_wrapped (pen, self->table->caps, self->columns[column] + 0.01, is_tick (self, column) ? "" : cells_of (self, row)[column]);
}

double
page_table_high (const SheetPen *pen, const PageTable *self, int row)
{
  const double caps = self->table->caps;
  guint most = 1;

  if (row < 0 && !self->table->heads[0])
    return 0;
  for (unsigned i = 0; i < self->table->columns; i++)
    {
      g_auto (GStrv) words = cell_lines (pen, self, row, i);

      most = MAX (most, g_strv_length (words));
    }
  return (self->ticks && row >= 0 ? fmax (caps, box) : caps) + (most - 1) * lines * caps + above * caps;
}

/* Whether the cell, and all before it, say what the row above says. */
static bool
is_ditto (const PageTable *self, int row, unsigned column)
{
  for (unsigned i = 0; i <= column && row > 0; i++)
    if (i >= self->ditto || g_strcmp0 (cells_of (self, row)[i], cells_of (self, row - 1)[i]) != 0)
      return false;
  return row > 0;
}

bool
page_table_goes_on (const PageTable *self, guint row)
{
  return self->ditto > 0 && is_ditto (self, (int) row, self->ditto - 1);
}

/* Where a column begins, from the table's left. */
static double
column_x (const PageTable *self, unsigned column)
{
  double x = column >= self->parted && self->parted > 0 ? between : 0;

  for (unsigned i = 0; i < column; i++)
    x += self->columns[i] + air;
  return x;
}

static void
draw_tick (const SheetPen *pen, double caps, Point at)
{
  const double top = at.y + above * caps / 2;

  pen_box (pen, 0.25, (Box) { { at.x, top }, { at.x + box, top + box } });
}

static void
draw_row (const SheetPen *pen, const PageTable *self, Point at, int row, bool first_of_page)
{
  const double caps = self->table->caps, high = page_table_high (pen, self, row);

  for (unsigned i = 0; i < self->table->columns; i++)
    {
      g_auto (GStrv) words = cell_lines (pen, self, row, i);
      const double x = at.x + column_x (self, i) + air / 2;
      const double all = caps + (g_strv_length (words) - 1) * lines * caps, beside = self->ticks ? fmax (caps, box) - caps : 0;
      const double first = row < 0 ? high - above * caps / 2 - all : (above * caps + beside) / 2;      /* heads stand on their rule */
      const bool right = self->table->to_right[i];

      if (is_tick (self, i) && row >= 0)
        draw_tick (pen, caps, (Point) { x, at.y });
      for (size_t k = 0; words[k] != NULL && (first_of_page || !is_ditto (self, row, i)); k++)
        pen_write (pen, (Script) { { right ? x + self->columns[i] : x, at.y + first + caps + k * lines * caps }, caps, right }, words[k]);
    }
}

/* The last row of the first or of the second of two tables side by side; of one table the last of all. */
static int
last_row (const PageTable *self, bool second)
{
  int row = (int) self->table->rows->len - 1;

  while (self->parted > 0 && row > 0 && *cells_of (self, row)[second ? self->parted : 0] == '\0')
    row--;
  return row;
}

/* Over all of the table, or over both that stand side by side. */
static void
draw_heads_rule (const SheetPen *pen, const PageTable *self, Point at)
{
  const double first = self->parted > 0 ? column_x (self, self->parted) - between : 0;

  if (first > 0)
    pen_line (pen, firm, at, (Point) { at.x + first, at.y });
  pen_line (pen, firm, (Point) { at.x + (first > 0 ? first + between : 0), at.y }, (Point) { at.x + self->width, at.y });
}

/* Below a row: firm below the last, and none below what the next row has in common with it. */
static void
draw_row_rule (const SheetPen *pen, const PageTable *self, Point at, int row, bool last_of_page)
{
  unsigned common = 0;

  while (!last_of_page && common < self->ditto && is_ditto (self, row + 1, common))
    common++;
  for (int second = 0; second <= (self->parted > 0); second++)
    {
      const int last = last_row (self, second);
      const double from = column_x (self, second ? self->parted : common);
      const double to = self->parted > 0 && !second ? column_x (self, self->parted) - between : self->width;

      if (row <= last)
        pen_line (pen, last_of_page || row == last ? firm : thin, (Point) { at.x + from, at.y }, (Point) { at.x + to, at.y });
    }
}

void
page_table_draw (const SheetPen *pen, const PageTable *self, Point at, guint from, guint to)
{
  draw_heads_rule (pen, self, at);
  if (self->table->heads[0])
    {
      draw_row (pen, self, at, -1, true);
      at.y += page_table_high (pen, self, -1);
      draw_heads_rule (pen, self, at);
    }
  for (guint row = from; row < to; row++)
    {
      draw_row (pen, self, at, (int) row, row == from);
      at.y += page_table_high (pen, self, (int) row);
      draw_row_rule (pen, self, at, (int) row, row + 1 == to);
    }
}
