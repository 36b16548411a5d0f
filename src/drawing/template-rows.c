#include "drawing/template-rows.h"
#include <math.h>

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
  double width, apart;
  GArray *boxes;             /* of Box */
  GArray *across, *down;     /* double */
} Laid;

static bool
is_free (const Laid *laid, Box box)
{
  const Box wide = box_grown (box, laid->apart - 1e-6);

  for (guint i = 0; i < laid->boxes->len; i++)
    if (boxes_meet (wide, g_array_index (laid->boxes, Box, i)))
      return false;
  return true;
}

/* The place that ends highest, of those the one at the left: below all at the latest. */
static Point
best_place (const Laid *laid, const TemplateCell *cell)
{
  const double width = box_width (cell->box), height = box_height (cell->box);
  Point best = { INFINITY, INFINITY };

  for (guint i = 0; i < laid->down->len; i++)
    for (guint k = 0; k < laid->across->len; k++)
      {
        const Point at = { g_array_index (laid->across, double, k), g_array_index (laid->down, double, i) };
        const bool has_room = k == 0 || at.x + width <= laid->width;

        if (has_room && (at.y < best.y || (at.y == best.y && at.x < best.x)) && is_free (laid, (Box) { at, { at.x + width, at.y + height } }))
          best = at;
      }
  return best;
}

static void
take (Laid *laid, Box box)
{
  const double across = box.max.x + laid->apart, down = box.max.y + laid->apart;

  g_array_append_val (laid->boxes, box);
  g_array_append_val (laid->across, across);
  g_array_append_val (laid->down, down);
}

Point
template_rows (GArray *cells, double width, double apart, Box taken)
{
  g_autoptr (GArray) boxes = g_array_new (FALSE, FALSE, sizeof (Box)), across = g_array_new (FALSE, TRUE, sizeof (double));
  g_autoptr (GArray) down = g_array_new (FALSE, TRUE, sizeof (double));
  g_autofree guint *order = g_new (guint, cells->len + 1);
  Laid laid = { width, apart, boxes, across, down };
  Point size = taken.max;

  g_array_set_size (across, 1);
  g_array_set_size (down, 1);
  take (&laid, taken);
  for (guint i = 0; i < cells->len; i++)
    order[i] = i;
  g_qsort_with_data (order, (int) cells->len, sizeof *order, higher_first, cells);
  for (guint i = 0; i < cells->len; i++)
    {
      TemplateCell *cell = &g_array_index (cells, TemplateCell, order[i]);

      template_cell_move (cell, best_place (&laid, cell));
      take (&laid, cell->box);
      size = (Point) { fmax (size.x, cell->box.max.x), fmax (size.y, cell->box.max.y) };
    }
  return size;
}
