#include "drawing/template-place.h"
#include <math.h>
#include "drawing/template-rows.h"
#include "drawing/template-tiles.h"

static const double apart = 8;                      /* of pieces, mm */
static const double look_step = 4;                  /* of the search for a place for the notes, mm */

/* One way to lay it out: pieces turned or not, the area so wide, small pieces kept off the edges of tiles or not. */
typedef struct { bool turn, whole; double width; } Way;

static GArray *
cells_of (const SheetPen *pen, const GPtrArray *pieces, bool turn)
{
  GArray *cells = g_array_new (FALSE, FALSE, sizeof (TemplateCell));

  for (guint i = 0; i < pieces->len; i++)
    {
      const TemplateCell cell = template_cell (pen, pieces->pdata[i], turn);

      g_array_append_val (cells, cell);
    }
  return cells;
}

static bool
is_free (const TemplatePlaces *self, Box box)
{
  const Box wide = box_grown (box, apart);

  for (guint i = 0; i < self->cells->len; i++)
    if (boxes_meet (wide, g_array_index (self->cells, TemplateCell, i).box))
      return false;
  return true;
}

/* The first free place in a region, row by row. */
static bool
notes_fit (TemplatePlaces *self, Box region, Point size)
{
  for (double y = region.min.y; y + size.y <= region.max.y; y += look_step)
    for (double x = region.min.x; x + size.x <= region.max.x; x += look_step)
      {
        const Box box = { { x, y }, { x + size.x, y + size.y } };

        if (is_free (self, box))
          {
            self->notes = box;
            return true;
          }
      }
  return false;
}

/* On a tile that is needed anyway, or anywhere on the one page. */
static bool
notes_fit_somewhere (TemplatePlaces *self, Point size, bool tiled)
{
  const TemplateTiles *tiles = &self->tiles;

  if (!tiled)
    return notes_fit (self, (Box) { { 0, 0 }, self->size }, size);
  for (size_t i = 0; i < tiles->columns * tiles->rows; i++)
    if (tiles->drawn[i] && notes_fit (self, box_grown (template_tile_box (tiles, i), -TEMPLATE_CLEAR), size))
      return true;
  return false;
}

static void
add_notes (const SheetPen *pen, TemplatePlaces *self, const TemplateNotes *notes, const Point *step)
{
  static const double widths[] = { 120, 90, 70 };
  Box box;

  for (size_t i = 0; i < G_N_ELEMENTS (widths); i++)
    if (notes_fit_somewhere (self, (Point) { widths[i], template_notes_height (pen, notes, widths[i]) }, step != NULL))
      return;
  box.min = (Point) { step != NULL ? TEMPLATE_CLEAR : 0, self->size.y + apart };
  box.max = (Point) { box.min.x + widths[0], box.min.y + template_notes_height (pen, notes, widths[0]) };
  if (step != NULL)
    {
      const double down = template_off_edge (box.min.y, box_height (box), step->y) - box.min.y;
      box = (Box) { { box.min.x, box.min.y + down }, { box.max.x, box.max.y + down } };
    }
  self->notes = box;
  self->size = (Point) { fmax (self->size.x, box.max.x), box.max.y };
}

/* What is laid out, measured once: upright and turned. */
typedef struct {
  const SheetPen *pen;
  const TemplateNotes *notes;
  const Point *step;         /* NULL: on one page */
  GArray *upright, *turned;  /* of TemplateCell */
} Things;

static TemplatePlaces
laid_out (const Things *things, Way way)
{
  const SheetPen *pen = things->pen;
  const Point *step = things->step;
  TemplatePlaces self = { .cells = g_array_copy (way.turn ? things->turned : things->upright) };

  self.size = template_rows (self.cells, &(TemplateRows) { way.width, apart, step, way.whole });
  if (step != NULL)
    self.tiles = template_tiles (pen, &self, *step);
  add_notes (pen, &self, things->notes, step);
  if (step != NULL)
    {
      g_free (self.tiles.drawn);
      self.tiles = template_tiles (pen, &self, *step);
    }
  return self;
}

/* What a way costs: its pages, and a little more for each piece that is cut though it had room on one; of one page its area. */
static double
cost_of (const TemplatePlaces *self, const Point *step)
{
  double cost = 0;

  if (step == NULL)
    return self->size.x * self->size.y;
  for (size_t i = 0; i < self->tiles.columns * self->tiles.rows; i++)
    cost += self->tiles.drawn[i] ? 10 : 0;
  for (guint i = 0; i < self->cells->len; i++)
    cost += template_is_cut (g_array_index (self->cells, TemplateCell, i).box, *step) ? 11 : 0;
  return cost + 1e-6 * self->size.x * self->size.y / (step->x * step->y);
}

typedef struct { TemplatePlaces places; double cost; } Best;

static void
try_way (const Things *things, Way way, Best *best)
{
  TemplatePlaces places = laid_out (things, way);
  const double cost = cost_of (&places, things->step);

  if (best->places.cells == NULL || cost < best->cost - 1e-9)
    {
      template_places_clear (&best->places);
      *best = (Best) { places, cost };
    }
  else
    template_places_clear (&places);
}

static void
try_tiles (const Things *things, Best *best)
{
  enum { MOST_COLUMNS = 8 };

  for (int columns = 1; columns <= MOST_COLUMNS; columns++)
    for (int turn = 0; turn < 2; turn++)
      for (int whole = 0; whole < 2; whole++)
        try_way (things, (Way) { turn, whole, columns * things->step->x - TEMPLATE_CLEAR }, best);
}

static void
try_one_page (const Things *things, Best *best)
{
  const double narrowest = 200, widest = 1400, by = 100;      /* mm */

  for (double width = narrowest; width < widest; width += by)
    try_way (things, (Way) { .width = width }, best);
}

TemplatePlaces
template_place (const SheetPen *pen, const GPtrArray *pieces, const TemplateNotes *notes, const Point *step)
{
  g_autoptr (GArray) upright = cells_of (pen, pieces, false), turned = cells_of (pen, pieces, true);
  const Things things = { pen, notes, step, upright, turned };
  Best best = { 0 };

  if (step != NULL)
    try_tiles (&things, &best);
  else
    try_one_page (&things, &best);
  return best.places;
}

void
template_places_clear (TemplatePlaces *self)
{
  if (self->cells != NULL)
    g_array_unref (self->cells);
  g_free (self->tiles.drawn);
  *self = (TemplatePlaces) { 0 };
}

void
template_places_draw (const SheetPen *pen, const TemplatePlaces *self, const TemplateNotes *notes)
{
  for (guint i = 0; i < self->cells->len; i++)
    template_cell_draw (pen, &g_array_index (self->cells, TemplateCell, i));
  template_notes_draw (pen, notes, self->notes);
}
