#include "drawing/template-pack.h"
#include <math.h>
#include "drawing/template-keep.h"

static const double clear_end = 1;                  /* of a piece's end from the tile's edge, mm */
static const double sliver = 15;                    /* what is narrower on a tile is one, mm */
static const double cut_cost = 1, sliver_cost = 4, near_cost = 0.5;

/* How many edges of tiles go through it. */
static double
cuts (double from, double to, double step)
{
  return floor (to / step) - floor (from / step);
}

/* What the edges along one way cost: ends that reach over one by a few millimetres are easily lost, and torn. */
static double
edge_cost (double from, double to, double step)
{
  const double count = cuts (from, to, step);
  const int slivers = (ceil (from / step) * step - from < sliver) + (to - floor (to / step) * step < sliver);

  return count > 0 ? count * cut_cost + slivers * sliver_cost : 0;
}

static bool
has_room_on_one (Box box, Point step)
{
  const double width = box_width (box), height = box_height (box);
  const Point room = { step.x - 2 * TEMPLATE_CLEAR, step.y - 2 * TEMPLATE_CLEAR };

  return (width <= room.x && height <= room.y) || (height <= room.x && width <= room.y);
}

static double
box_cost (Box box, Point step)
{
  const double cost = edge_cost (box.min.x, box.max.x, step.x) + edge_cost (box.min.y, box.max.y, step.y);

  return cost + (cost > 0 && has_room_on_one (box, step) ? TEMPLATE_PAGE_COST : 0);
}

/* What ends just before an edge, or begins just behind it: its own edge is taken for the line to trim along. */
static double
near_edges (Box box, Point step)
{
  const double across = fmin (box.min.x - floor (box.min.x / step.x) * step.x, ceil (box.max.x / step.x) * step.x - box.max.x);
  const double down = fmin (box.min.y - floor (box.min.y / step.y) * step.y, ceil (box.max.y / step.y) * step.y - box.max.y);

  return (across < TEMPLATE_CLEAR / 2 ? near_cost : 0) + (down < TEMPLATE_CLEAR / 2 ? near_cost : 0);
}

/* How much of each tile is covered by boxes. */
typedef struct { Point step; size_t columns, rows; double *areas; } Cover;

static Cover
cover_new (const TemplatePack *pack)
{
  Cover self = { .step = pack->step, .columns = 3, .rows = 2 };

  for (guint i = 0; i < pack->upright->len; i++)
    {
      const Box upright = g_array_index (pack->upright, TemplateCell, i).box, turned = g_array_index (pack->turned, TemplateCell, i).box;
      const double least = fmin (box_width (upright), box_width (turned));

      self.columns = MAX (self.columns, (size_t) ceil ((least + 2 * TEMPLATE_CLEAR) / pack->step.x));
      self.rows += 2 + (size_t) (fmax (box_height (upright), box_height (turned)) / pack->step.y);
    }
  self.areas = g_new0 (double, self.columns * self.rows);
  return self;
}

/* Which tiles something reaches over, one way. */
typedef struct { size_t first, last; } Reach;

static Reach
reach_of (double from, double to, double step, size_t count)
{
  return (Reach) { MIN ((size_t) (from / step), count - 1), MIN ((size_t) (to / step), count - 1) };
}

static double
new_tiles (const Cover *cover, Reach across, Reach down)
{
  double count = 0;

  for (size_t row = down.first; row <= down.last; row++)
    for (size_t column = across.first; column <= across.last; column++)
      count += cover->areas[row * cover->columns + column] == 0;
  return count;
}

static void
cover_box (Cover *cover, Box box)
{
  const Reach across = reach_of (box.min.x, box.max.x, cover->step.x, cover->columns);
  const Reach down = reach_of (box.min.y, box.max.y, cover->step.y, cover->rows);

  for (size_t row = down.first; row <= down.last; row++)
    for (size_t column = across.first; column <= across.last; column++)
      {
        const double x = (double) column * cover->step.x, y = (double) row * cover->step.y;
        const double width = fmin (box.max.x, x + cover->step.x) - fmax (box.min.x, x);

        cover->areas[row * cover->columns + column] += fmax (width * (fmin (box.max.y, y + cover->step.y) - fmax (box.min.y, y)), 1e-3);
      }
}

/* What lies already, and where others may begin: behind each, and just behind tiles' edges; or end: just before those. */
typedef struct {
  const TemplatePack *pack;
  Cover cover;
  GArray *boxes;             /* of Box */
  size_t *work;
} Packing;

static bool
is_free (const Packing *self, Box box)
{
  const Box wide = box_grown (box, self->pack->apart - 1e-6);

  for (guint i = 0; i < self->boxes->len; i++)
    {
      *self->work += 1;
      if (boxes_meet (wide, g_array_index (self->boxes, Box, i)))
        return false;
    }
  return true;
}

/* Where a cell may begin, one way, and what that costs. */
typedef struct { double at, cost; Reach reach; } Start;

/* As it is, or behind the edge that would go through the cell's name; each once. */
static void
add_start (const Packing *self, const TemplateCell *cell, bool across, double at, GArray *starts)
{
  const double step = across ? cell->step.x : cell->step.y, size = across ? box_width (cell->box) : box_height (cell->box);
  const size_t count = across ? self->cover.columns : self->cover.rows;
  TemplateCell moved = *cell;

  template_cell_move (&moved, (Point) { at, at });
  if (!template_keep_is_kept (&moved, across))
    at = ceil ((at - clear_end) / step) * step + TEMPLATE_CLEAR;
  if (across && at + size > (double) count * step - clear_end)
    return;
  for (guint i = 0; i < starts->len; i++)
    if (fabs (g_array_index (starts, Start, i).at - at) < 1e-9)
      return;
  const Start start = { at, edge_cost (at, at + size, step), reach_of (at, at + size, step, count) };
  g_array_append_val (starts, start);
}

/* Behind what lies already, and on both sides off the edges of tiles; in the middle between two for what all but fills tiles. */
static GArray *
starts_of (const Packing *self, const TemplateCell *cell, bool across)
{
  const double step = across ? cell->step.x : cell->step.y, size = across ? box_width (cell->box) : box_height (cell->box);
  const double over = ceil ((size + 2 * clear_end) / step) * step - size, clear = fmin (TEMPLATE_CLEAR, over / 2);
  GArray *starts = g_array_new (FALSE, FALSE, sizeof (Start));
  double last = 0;

  for (guint i = 0; i < self->boxes->len; i++)
    {
      const Point end = g_array_index (self->boxes, Box, i).max;
      const double behind = (across ? end.x : end.y) + self->pack->apart;

      last = fmax (last, behind);
      add_start (self, cell, across, behind, starts);
    }
  for (double edge = 0; edge < (across ? (double) self->cover.columns * step : last + 2 * step); edge += step)
    {
      add_start (self, cell, across, edge + clear, starts);
      add_start (self, cell, across, edge + over - clear, starts);
    }
  return starts;
}

typedef struct { TemplateCell cell; double cost; } Best;

/* if_cut: what it costs more where any edge cuts it. */
static void
try_place (const Packing *self, const TemplateCell *cell, const Start *x, const Start *y, double if_cut, Best *best)
{
  const Cover *cover = &self->cover;
  const double far = 1e-3 * (y->at / cover->step.y + x->at / (cover->step.x * (double) cover->columns));
  const double cost = TEMPLATE_PAGE_COST * new_tiles (cover, x->reach, y->reach) + x->cost + y->cost + (x->cost + y->cost > 0 ? if_cut : 0) + far;
  TemplateCell moved = *cell;

  if (cost >= best->cost - 1e-9)
    return;
  template_cell_move (&moved, (Point) { x->at, y->at });
  if (is_free (self, moved.box))
    *best = (Best) { moved, cost };
}

static void
try_cell (const Packing *self, const TemplateCell *cell, Best *best)
{
  g_autoptr (GArray) across = starts_of (self, cell, true), down = starts_of (self, cell, false);
  const double if_cut = has_room_on_one (cell->box, self->cover.step) ? TEMPLATE_PAGE_COST : 0;

  for (guint i = 0; i < down->len; i++)
    for (guint k = 0; k < across->len; k++)
      try_place (self, cell, &g_array_index (across, Start, k), &g_array_index (down, Start, i), if_cut, best);
  *self->work += (size_t) down->len * across->len;
}

/* A cell that is as narrow as it can be finds room below all at the latest. */
static TemplateCell
placed (const Packing *self, TemplateTake take)
{
  const TemplateCell *upright = &g_array_index (self->pack->upright, TemplateCell, take.piece);
  const TemplateCell *turned = &g_array_index (self->pack->turned, TemplateCell, take.piece);
  Best best = { .cost = INFINITY };

  if (take.turn != TEMPLATE_TURNED)
    try_cell (self, upright, &best);
  if (take.turn != TEMPLATE_UPRIGHT)
    try_cell (self, turned, &best);
  if (!isfinite (best.cost))
    try_cell (self, box_width (upright->box) < box_width (turned->box) ? upright : turned, &best);
  return best.cell;
}

void
template_pack (const TemplatePack *self, Box taken, const TemplateTake takes[], TemplateCell places[], size_t *work)
{
  g_autoptr (GArray) boxes = g_array_new (FALSE, FALSE, sizeof (Box));
  Packing packing = { self, cover_new (self), boxes, work };

  g_array_append_val (boxes, taken);
  cover_box (&packing.cover, taken);
  for (guint i = 0; i < self->upright->len; i++)
    {
      const TemplateCell cell = placed (&packing, takes[i]);

      g_array_append_val (boxes, cell.box);
      cover_box (&packing.cover, cell.box);
      places[takes[i].piece] = cell;
    }
  g_free (packing.cover.areas);
}

double
template_pack_cost (const TemplatePack *self, Box taken, const TemplateCell places[])
{
  const double tile = self->step.x * self->step.y;
  Cover cover = cover_new (self);
  double cost = 0;

  cover_box (&cover, taken);
  for (guint i = 0; i < self->upright->len; i++)
    {
      cover_box (&cover, places[i].box);
      cost += box_cost (places[i].box, self->step) + near_edges (places[i].box, self->step);
    }
  for (size_t i = 0; i < cover.columns * cover.rows; i++)
    cost += cover.areas[i] > 0 ? TEMPLATE_PAGE_COST - pow (cover.areas[i] / tile, 2) : 0;
  g_free (cover.areas);
  return cost;
}
