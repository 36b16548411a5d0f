#include "drawing/template-tiles.h"
#include <math.h>

static void
mark_drawn (Point place, void *data)
{
  TemplateTiles *self = data;
  const double column = fmax (0, fmin (floor (place.x / self->step.x), self->columns - 1));
  const double row = fmax (0, fmin (floor (place.y / self->step.y), self->rows - 1));

  self->drawn[(size_t) row * self->columns + (size_t) column] = true;
}

TemplateTiles
template_tiles (const SheetPen *pen, const TemplatePlaces *places, Point step)
{
  TemplateTiles self = { .step = step, .columns = (size_t) fmax (1, ceil (places->size.x / step.x)),
                         .rows = (size_t) fmax (1, ceil (places->size.y / step.y)) };

  self.drawn = g_new0 (bool, self.columns * self.rows);
  for (guint i = 0; i < places->cells->len; i++)
    template_cell_visit (pen, &g_array_index (places->cells, TemplateCell, i), mark_drawn, &self);
  if (box_width (places->notes) > 0)
    template_box_visit (places->notes, mark_drawn, &self);
  return self;
}

Box
template_tile_box (const TemplateTiles *self, size_t index)
{
  const double x = (double) (index % self->columns) * self->step.x, y = (double) (index / self->columns) * self->step.y;

  return (Box) { { x, y }, { x + self->step.x, y + self->step.y } };
}

/* Across the edge between the two, not past its ends; lines are broad. */
static bool
reaches_over (Box bounds, Box tile, int right, int down)
{
  const Box box = box_grown (bounds, 0.5);
  const Box other = { { tile.min.x + right * box_width (tile), tile.min.y + down * box_height (tile) },
                      { tile.max.x + right * box_width (tile), tile.max.y + down * box_height (tile) } };

  return boxes_meet (box, tile) && boxes_meet (box, other);
}

bool
template_tiles_join (const TemplatePlaces *places, size_t index, int right, int down)
{
  const TemplateTiles *tiles = &places->tiles;
  const long column = (long) (index % tiles->columns) + right, row = (long) (index / tiles->columns) + down;
  const Box tile = template_tile_box (tiles, index);

  if (column < 0 || row < 0 || column >= (long) tiles->columns || row >= (long) tiles->rows || !tiles->drawn[row * (long) tiles->columns + column])
    return false;
  for (guint i = 0; i < places->cells->len; i++)
    if (reaches_over (g_array_index (places->cells, TemplateCell, i).box, tile, right, down))
      return true;
  return reaches_over (places->notes, tile, right, down);
}

void
template_tile_name (size_t column, size_t row, char name[8])
{
  enum { LETTERS = 26 };

  if (row < LETTERS)
    g_snprintf (name, 8, "%c%u", (char) ('A' + row), (unsigned) MIN (column + 1, 9999));
  else
    g_snprintf (name, 8, "%c%c%u", (char) ('A' + (row / LETTERS - 1) % LETTERS), (char) ('A' + row % LETTERS), (unsigned) MIN (column + 1, 9999));
}
