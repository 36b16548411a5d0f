#include "drawing/template-rows.h"
#include <math.h>
#include "drawing/template-keep.h"

/* By how many edges. */
static double
cuts (double from, double size, double step)
{
  return floor ((from + size) / step) - floor (from / step);
}

static bool
is_cut (double from, double size, double step)
{
  return cuts (from, size, step) > 0;
}

/* Behind the next edge, where fewer cut it from there on; in the middle of a tile what fills it. */
static double
off_edge_of (double place, double size, double step)
{
  const double clear = 1, beside = (step - size) / 2;      /* mm */

  if (beside >= clear && beside < TEMPLATE_CLEAR)
    return ceil ((place - TEMPLATE_CLEAR) / step) * step + beside;
  return cuts (place, size, step) > cuts (TEMPLATE_CLEAR, size, step) ? ceil (place / step) * step + TEMPLATE_CLEAR : place;
}

static bool
has_room (double width, double height, Point step)
{
  return width <= step.x - 2 * TEMPLATE_CLEAR && height <= step.y - 2 * TEMPLATE_CLEAR;
}

double
template_cuts (Box box, Point step)
{
  return cuts (box.min.x, box_width (box), step.x) + cuts (box.min.y, box_height (box), step.y);
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
  return off_edge_of (place, size, across ? rows->step->x : rows->step->y);
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

/* Just behind the edge that goes through what begins at the place. */
static double
behind_edge (double place, double step)
{
  return ceil ((place - 1) / step) * step + TEMPLATE_CLEAR;
}

/* Where the cell lies when it shall begin at x and y: there, or behind edges of tiles, for its own sake or its name's. */
static Point
place_from (const Laid *laid, const TemplateCell *cell, double x, double y)
{
  const Point *step = laid->rows->step;
  Point at = { off_edge (laid, x, box_width (cell->box), true), off_edge (laid, y, box_height (cell->box), false) };
  TemplateCell moved = *cell;

  template_cell_move (&moved, at);
  if (step != NULL && !template_keep_is_kept (&moved, false))
    at.y = behind_edge (at.y, step->y);
  if (step != NULL && !template_keep_is_kept (&moved, true))
    at.x = behind_edge (at.x, step->x);
  return at;
}

/* At the left of the first tile that lies clear below all. */
static Point
place_below (const Laid *laid, const TemplateCell *cell)
{
  double lowest = 0;

  for (guint i = 0; i < laid->down->len; i++)
    lowest = fmax (lowest, g_array_index (laid->down, double, i));
  if (laid->rows->step != NULL)
    lowest = ceil (lowest / laid->rows->step->y) * laid->rows->step->y + TEMPLATE_CLEAR;
  return place_from (laid, cell, g_array_index (laid->across, double, 0), lowest);
}

/* The place that ends highest, of those the one at the left. What fills a tile is drawn up a little to its middle, and may then find none. */
static Point
best_place (const Laid *laid, const TemplateCell *cell)
{
  const double width = box_width (cell->box), height = box_height (cell->box);
  Point best = { INFINITY, INFINITY };

  for (guint i = 0; i < laid->down->len; i++)
    for (guint k = 0; k < laid->across->len; k++)
      {
        const Point at = place_from (laid, cell, g_array_index (laid->across, double, k), g_array_index (laid->down, double, i));
        const bool has_room = k == 0 || at.x + width <= laid->rows->width;

        if (has_room && (at.y < best.y || (at.y == best.y && at.x < best.x)) && is_free (laid, (Box) { at, { at.x + width, at.y + height } }))
          best = at;
      }
  return isfinite (best.y) ? best : place_below (laid, cell);
}

static void
take (Laid *laid, Box box)
{
  const double across = box.max.x + laid->rows->apart, down = box.max.y + laid->rows->apart;

  g_array_append_val (laid->boxes, box);
  g_array_append_val (laid->across, across);
  g_array_append_val (laid->down, down);
}

static void
lay (Laid *laid, TemplateCell *cell)
{
  template_cell_move (cell, best_place (laid, cell));
  take (laid, cell->box);
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
  if (box_width (rows->taken) > 0)
    {
      take (&laid, rows->taken);
      size = rows->taken.max;
    }
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
