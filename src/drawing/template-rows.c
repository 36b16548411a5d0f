#include "drawing/template-rows.h"
#include <math.h>

typedef struct { double y, height, end; } Row;

static bool
is_cut (double from, double size, double step)
{
  return size <= step - 2 * TEMPLATE_CLEAR && floor (from / step) != floor ((from + size) / step);
}

double
template_off_edge (double place, double size, double step)
{
  return is_cut (place, size, step) ? ceil (place / step) * step + TEMPLATE_CLEAR : place;
}

bool
template_is_cut (Box box, Point step)
{
  const bool fits = box_width (box) <= step.x - 2 * TEMPLATE_CLEAR && box_height (box) <= step.y - 2 * TEMPLATE_CLEAR;

  return fits && (is_cut (box.min.x, box_width (box), step.x) || is_cut (box.min.y, box_height (box), step.y));
}

static int
higher_first (gconstpointer a, gconstpointer b, gpointer cells)
{
  const guint i = *(const guint *) a, k = *(const guint *) b;
  const double first = box_height (g_array_index ((GArray *) cells, TemplateCell, i).box);
  const double second = box_height (g_array_index ((GArray *) cells, TemplateCell, k).box);

  if (first != second)
    return first > second ? -1 : 1;
  return i < k ? -1 : i > k;
}

static double
place_in_row (const TemplateRows *rows, double from, double width)
{
  return rows->whole && rows->step != NULL ? template_off_edge (from, width, rows->step->x) : from;
}

/* The row that has room for it, a new one where none has. */
static Row *
row_for (GArray *made, const TemplateRows *rows, Box box, double *x)
{
  const double margin = rows->step != NULL ? TEMPLATE_CLEAR : 0;
  Row next = { .y = margin, .height = box_height (box), .end = margin };

  for (guint i = 0; i < made->len; i++)
    {
      Row *row = &g_array_index (made, Row, i);

      *x = place_in_row (rows, row->end, box_width (box));
      if (box_height (box) <= row->height && *x + box_width (box) <= rows->width)
        return row;
      next.y = row->y + row->height + rows->apart;
    }
  if (rows->whole && rows->step != NULL)
    next.y = template_off_edge (next.y, next.height, rows->step->y);
  *x = place_in_row (rows, next.end, box_width (box));
  g_array_append_val (made, next);
  return &g_array_index (made, Row, made->len - 1);
}

Point
template_rows (GArray *cells, const TemplateRows *rows)
{
  g_autoptr (GArray) made = g_array_new (FALSE, FALSE, sizeof (Row));
  g_autofree guint *order = g_new (guint, cells->len + 1);
  Point size = { 0, 0 };

  for (guint i = 0; i < cells->len; i++)
    order[i] = i;
  g_qsort_with_data (order, cells->len, sizeof *order, higher_first, cells);
  for (guint i = 0; i < cells->len; i++)
    {
      TemplateCell *cell = &g_array_index (cells, TemplateCell, order[i]);
      double x;
      Row *row = row_for (made, rows, cell->box, &x);

      template_cell_move (cell, (Point) { x, row->y });
      row->end = x + box_width (cell->box) + rows->apart;
      size = (Point) { fmax (size.x, cell->box.max.x), fmax (size.y, cell->box.max.y) };
    }
  return size;
}
