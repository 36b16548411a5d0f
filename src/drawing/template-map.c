#include "drawing/template-map.h"
#include <math.h>
#include "drawing/template-tiles.h"

static const double line = 0.18;             /* mm */

/* How wide and high a tile is shown. */
static Point
shown_size (const TemplateTiles *tiles, Box box, double largest)
{
  const double shape = tiles->step.x / tiles->step.y;
  const double high = fmin (largest, fmin (box_height (box) / (double) tiles->rows, box_width (box) / shape / (double) tiles->columns));

  return (Point) { high * shape, high };
}

static Box
cell_of (const TemplateTiles *tiles, size_t i, Point corner, Point size)
{
  const Point at = { corner.x + (double) (i % tiles->columns) * size.x, corner.y + (double) (i / tiles->columns) * size.y };

  return (Box) { at, point_add (at, size) };
}

void
template_map_draw (const SheetPen *pen, const TemplateTiles *tiles, size_t index, Box box)
{
  const double largest = 6, gap = 0.15;
  const Point size = shown_size (tiles, box, largest), corner = { box.max.x - size.x * (double) tiles->columns, box.min.y };

  for (size_t i = 0; i < tiles->columns * tiles->rows; i++)
    {
      const Box cell = cell_of (tiles, i, corner, size);

      if (!tiles->drawn[i])
        continue;
      pen_box (pen, line, cell);
      if (i != index)
        continue;
      cairo_rectangle (pen->cr, cell.min.x + gap, cell.min.y + gap, size.x - 2 * gap, size.y - 2 * gap);
      cairo_fill (pen->cr);
    }
}

void
template_map_draw_named (const SheetPen *pen, const TemplateTiles *tiles, Box box)
{
  const double largest = 12, least = 7, clear = 1;
  const Point true_shape = shown_size (tiles, box, largest);
  const Point size = { fmin (fmax (true_shape.x, least), box_width (box) / (double) tiles->columns), true_shape.y };      /* a name has room */
  const double caps = fmin (caps_text, size.y - clear);

  for (size_t i = 0; i < tiles->columns * tiles->rows; i++)
    {
      const Box cell = cell_of (tiles, i, box.min, size);
      const Point middle = point_mix (cell.min, cell.max, 0.5);
      char name[8];

      if (!tiles->drawn[i])
        continue;
      pen_box (pen, line, cell);
      template_tile_name (i % tiles->columns, i / tiles->columns, name);
      if (caps >= caps_field && pen_width (pen, caps, name) + clear <= size.x)
        pen_write (pen, (Script) { { middle.x, middle.y + caps / 2 }, caps, 0.5 }, name);
    }
}
