#include "drawing/ruled-table.h"
#include <math.h>

static const double firm = 0.35, thin = 0.13;
static const double air = 4;          /* between columns; half of it outside */
static const double apart = 6;        /* between tables side by side */

static void
row_free (gpointer data)
{
  char **cells = data;

  for (int i = 0; i < TABLE_COLUMNS; i++)
    g_free (cells[i]);
  g_free (cells);
}

RuledTable
ruled_table_new (const char *title, unsigned columns)
{
  return (RuledTable) {
    .title = title, .columns = columns, .rows = g_ptr_array_new_with_free_func (row_free), .caps = caps_text, .widest = 52 };
}

void
ruled_table_clear (RuledTable *self)
{
  g_clear_pointer (&self->rows, g_ptr_array_unref);
}

char **
ruled_table_add (RuledTable *self, char *const takes[])
{
  char **cells = g_new0 (char *, TABLE_COLUMNS);

  for (unsigned i = 0; i < self->columns; i++)
    cells[i] = takes[i] ? takes[i] : g_strdup ("");
  g_ptr_array_add (self->rows, cells);
  return cells;
}

static double
column_width (const SheetPen *pen, const RuledTable *self, unsigned column)
{
  double width = self->heads[0] ? pen_width (pen, self->caps, self->heads[column]) : 0;

  for (guint i = 0; i < self->rows->len; i++)
    {
      char *const *cells = g_ptr_array_index (self->rows, i);

      width = fmax (width, fmin (self->widest, pen_width (pen, self->caps, cells[column])));
    }
  return width;
}

/* One table under way: where its columns stand and how far down it is. */
typedef struct {
  const RuledTable *table;
  double left, right, y, pitch;
  double edges[TABLE_COLUMNS];      /* where a column's words begin, or end when they stand at the right */
} TableDraft;

static void
draft_columns (const SheetPen *pen, TableDraft *draft)
{
  double x = draft->left + air / 4;

  for (unsigned i = 0; i < draft->table->columns; i++)
    {
      const double width = column_width (pen, draft->table, i);

      draft->edges[i] = draft->table->to_right[i] ? x + width : x;
      x += width + air;
    }
  draft->right = x - air + air / 4;
}

static void
draw_row (const SheetPen *pen, TableDraft *draft, const char *const cells[])
{
  const double foot = draft->y + draft->pitch / 2 + draft->table->caps / 2;

  for (unsigned i = 0; i < draft->table->columns; i++)
    {
      g_autofree char *cell = pen_fitted (pen, draft->table->caps, draft->table->widest, cells[i]);

      pen_write (pen, (Script) { { draft->edges[i], foot }, draft->table->caps, draft->table->to_right[i] }, cell);
    }
  draft->y += draft->pitch;
}

static void
draw_rule (const SheetPen *pen, const TableDraft *draft, double width)
{
  pen_line (pen, width, (Point) { draft->left, draft->y }, (Point) { draft->right, draft->y });
}

static void
draw_one (const SheetPen *pen, TableDraft *draft, guint from, guint to)
{
  draft_columns (pen, draft);
  draw_rule (pen, draft, firm);
  if (draft->table->heads[0])
    {
      draw_row (pen, draft, draft->table->heads);
      draw_rule (pen, draft, firm);
    }
  for (guint i = from; i < to; i++)
    {
      draw_row (pen, draft, g_ptr_array_index (draft->table->rows, i));
      draw_rule (pen, draft, i + 1 == to ? firm : thin);
    }
}

void
ruled_table_draw (const SheetPen *pen, const RuledTable *self, Point at, unsigned parts)
{
  const guint count = self->rows->len, each = (count + parts - 1) / parts;
  double left = at.x;

  pen_write (pen, (Script) { { at.x, at.y + caps_figure }, caps_figure, 0 }, self->title);
  for (guint from = 0; from < count; from += each)
    {
      TableDraft draft = { .table = self, .left = left, .y = at.y + caps_figure + 2, .pitch = 2 * self->caps };

      draw_one (pen, &draft, from, MIN (count, from + each));
      left = draft.right + apart;
    }
}
