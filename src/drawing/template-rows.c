#include "drawing/template-rows.h"
#include <math.h>

static bool
is_cut (double from, double size, double step)
{
  return floor (from / step) != floor ((from + size) / step);
}

double
template_off_edge (double place, double size, double step)
{
  const bool has_room = size <= step - 2 * TEMPLATE_CLEAR;

  return has_room && is_cut (place, size, step) ? ceil (place / step) * step + TEMPLATE_CLEAR : place;
}

static bool
has_room (double width, double height, Point step)
{
  return width <= step.x - 2 * TEMPLATE_CLEAR && height <= step.y - 2 * TEMPLATE_CLEAR;
}

bool
template_is_cut (Box box, Point step)
{
  const double width = box_width (box), height = box_height (box);

  return (has_room (width, height, step) || has_room (height, width, step))
         && (is_cut (box.min.x, width, step.x) || is_cut (box.min.y, height, step.y));
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

/* What lies already, and where the next may begin: behind each, and at the area's edge. */
typedef struct {
  const TemplateRows *rows;
  GArray *boxes;             /* of Box */
  GArray *across, *down;     /* double */
} Laid;

static double
off_edge (const Laid *laid, double place, double size, bool across)
{
  const TemplateRows *rows = laid->rows;

  if (!rows->whole || rows->step == NULL)
    return place;
  return template_off_edge (place, size, across ? rows->step->x : rows->step->y);
}

static bool
is_free (const Laid *laid, Box box)
{
  const Box wide = box_grown (box, laid->rows->apart - 1e-6);

  for (guint i = 0; i < laid->boxes->len; i++)
    if (boxes_meet (wide, g_array_index (laid->boxes, Box, i)))
      return false;
  return true;
}

/* The place that ends highest, of those the one at the left. */
static Point
best_place (const Laid *laid, double width, double height)
{
  Point best = { INFINITY, INFINITY };

  for (guint i = 0; i < laid->down->len; i++)
    for (guint k = 0; k < laid->across->len; k++)
      {
        const double x = off_edge (laid, g_array_index (laid->across, double, k), width, true);
        const double y = off_edge (laid, g_array_index (laid->down, double, i), height, false);
        const bool has_room = k == 0 || x + width <= laid->rows->width;

        if (has_room && (y < best.y || (y == best.y && x < best.x)) && is_free (laid, (Box) { { x, y }, { x + width, y + height } }))
          best = (Point) { x, y };
      }
  return best;
}

static void
lay (Laid *laid, TemplateCell *cell)
{
  const Point at = best_place (laid, box_width (cell->box), box_height (cell->box));

  template_cell_move (cell, at);
  const double across = cell->box.max.x + laid->rows->apart, down = cell->box.max.y + laid->rows->apart;
  g_array_append_val (laid->boxes, cell->box);
  g_array_append_val (laid->across, across);
  g_array_append_val (laid->down, down);
}

Point
template_rows (GArray *cells, const TemplateRows *rows)
{
  g_autoptr (GArray) boxes = g_array_new (FALSE, FALSE, sizeof (Box)), across = g_array_new (FALSE, FALSE, sizeof (double));
  g_autoptr (GArray) down = g_array_new (FALSE, FALSE, sizeof (double));
  g_autofree guint *order = g_new (guint, cells->len + 1);
  Laid laid = { rows, boxes, across, down };
  const double margin = rows->step != NULL ? TEMPLATE_CLEAR : 0;
  Point size = { 0, 0 };

  g_array_append_val (across, margin);
  g_array_append_val (down, margin);
  for (guint i = 0; i < cells->len; i++)
    order[i] = i;
  g_qsort_with_data (order, (int) cells->len, sizeof *order, higher_first, cells);
  for (guint i = 0; i < cells->len; i++)
    {
      TemplateCell *cell = &g_array_index (cells, TemplateCell, order[i]);

      lay (&laid, cell);
      size = (Point) { fmax (size.x, cell->box.max.x), fmax (size.y, cell->box.max.y) };
    }
  return size;
}
