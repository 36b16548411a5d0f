#include "drawing/template-map.h"
#include <math.h>

void
template_map_draw (const SheetPen *pen, const TemplateTiles *tiles, size_t index, Box box)
{
  const double line = 0.18, largest = 6, gap = 0.15;
  const double shape = tiles->step.x / tiles->step.y;
  const double high = fmin (largest, fmin (box_height (box) / (double) tiles->rows, box_width (box) / shape / (double) tiles->columns));
  const double wide = high * shape, left = box.max.x - wide * (double) tiles->columns;

  for (size_t i = 0; i < tiles->columns * tiles->rows; i++)
    {
      const double x = left + (double) (i % tiles->columns) * wide, y = box.min.y + (double) (i / tiles->columns) * high;
      const Box cell = { { x, y }, { x + wide, y + high } };

      if (!tiles->drawn[i])
        continue;
      pen_box (pen, line, cell);
      if (i != index)
        continue;
      cairo_rectangle (pen->cr, cell.min.x + gap, cell.min.y + gap, wide - 2 * gap, high - 2 * gap);
      cairo_fill (pen->cr);
    }
}
