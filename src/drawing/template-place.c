#include "drawing/template-place.h"
#include <math.h>
#include "drawing/template-keep.h"
#include "drawing/template-rows.h"
#include "drawing/template-tiles.h"

static const double apart = 8;                      /* of pieces, mm */

enum { NOTES_WIDTHS = 4 };

/* One way to lay it out: pieces turned or not, the area so wide, small pieces kept off the edges of tiles or not, which shape of notes. */
typedef struct { bool turn, whole; double width; int notes; } Way;

static GArray *
cells_of (const SheetPen *pen, const GPtrArray *pieces, bool turn, const Point *step)
{
  GArray *cells = g_array_new (FALSE, FALSE, sizeof (TemplateCell));

  for (guint i = 0; i < pieces->len; i++)
    {
      const TemplateCell cell = template_cell (pen, pieces->pdata[i], turn, step);

      g_array_append_val (cells, cell);
    }
  return cells;
}

/* What is laid out, measured once: upright and turned. */
typedef struct {
  const SheetPen *pen;
  Box notes[NOTES_WIDTHS];   /* shapes that they may have, in the upper left corner */
  const Point *step;         /* NULL: on one page */
  GArray *upright, *turned;  /* of TemplateCell */
} Things;

/* The first page tells how the others are put together: notes lie before all else, as wide as a tile or less. */
static void
shape_notes (Things *things, const TemplateNotes *notes)
{
  static const double widths[NOTES_WIDTHS] = { 400, 174, 130, 92 };
  const double margin = things->step != NULL ? TEMPLATE_CLEAR : 0, widest = things->step != NULL ? things->step->x - 2 * margin : 250;

  for (int i = 0; i < NOTES_WIDTHS; i++)
    {
      const double width = fmin (widths[i], widest);
      things->notes[i] = (Box) { { margin, margin }, { margin + width, margin + template_notes_height (things->pen, notes, width) } };
    }
}

static bool
has_room (const Things *things, Box notes)
{
  return things->step == NULL || notes.max.y <= things->step->y;
}

static TemplatePlaces
laid_out (const Things *things, Way way)
{
  const Point *step = things->step;
  TemplatePlaces self = { .cells = g_array_copy (way.turn ? things->turned : things->upright), .notes = things->notes[way.notes] };

  self.size = template_rows (self.cells, &(TemplateRows) { way.width, apart, step, way.whole, self.notes });
  if (step != NULL)
    self.tiles = template_tiles (things->pen, &self, *step);
  return self;
}

/* How far words are carried off edges: further from what they tell of. */
static double
words_carried (const SheetPen *pen, const TemplateCell *cell)
{
  double sum = 0;

  for (guint i = 0; i < cell->piece->words->len; i++)
    {
      const Point by = template_keep_shift (pen, cell, i);
      sum += fabs (by.x) + fabs (by.y);
    }
  return sum;
}

/* What a way costs: its pages, a little for each joint and for words, much for each piece that is cut though it had room on one; of one page its
 * area. */
static double
cost_of (const SheetPen *pen, const TemplatePlaces *self, const Point *step)
{
  const double carried = 0.04;      /* of a mm */
  double cost = 0;

  if (step == NULL)
    return self->size.x * self->size.y;
  for (size_t i = 0; i < self->tiles.columns * self->tiles.rows; i++)
    cost += self->tiles.drawn[i] ? 10 : 0;
  for (guint i = 0; i < self->cells->len; i++)
    {
      const TemplateCell *cell = &g_array_index (self->cells, TemplateCell, i);
      cost += template_cuts (cell->box, *step) + (template_is_cut (cell->box, *step) ? 10 : 0) + carried * words_carried (pen, cell);
    }
  return cost + 1e-6 * self->size.x * self->size.y / (step->x * step->y);
}

typedef struct { TemplatePlaces places; double cost; } Best;

static void
try_way (const Things *things, Way way, Best *best)
{
  TemplatePlaces places = laid_out (things, way);
  const double cost = cost_of (things->pen, &places, things->step);

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
        for (int notes = 0; notes < NOTES_WIDTHS; notes++)
          if (has_room (things, things->notes[notes]) || notes == 0)
            try_way (things, (Way) { turn, whole, columns * things->step->x - TEMPLATE_CLEAR, notes }, best);
}

static void
try_one_page (const Things *things, Best *best)
{
  const double narrowest = 200, widest = 1400, by = 100;      /* mm */

  for (double width = narrowest; width < widest; width += by)
    for (int notes = 0; notes < NOTES_WIDTHS; notes++)
      try_way (things, (Way) { .width = width, .notes = notes }, best);
}

TemplatePlaces
template_place (const SheetPen *pen, const GPtrArray *pieces, const TemplateNotes *notes, const Point *step)
{
  g_autoptr (GArray) upright = cells_of (pen, pieces, false, step), turned = cells_of (pen, pieces, true, step);
  Things things = { .pen = pen, .step = step, .upright = upright, .turned = turned };
  Best best = { 0 };

  shape_notes (&things, notes);
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
template_places_draw (const SheetPen *pen, const TemplatePlaces *self, const TemplateNotes *notes, Box seen, TemplateInk ink)
{
  for (guint i = 0; i < self->cells->len; i++)
    if (boxes_meet (g_array_index (self->cells, TemplateCell, i).box, seen))
      template_cell_draw (pen, &g_array_index (self->cells, TemplateCell, i), ink);
  if (ink == TEMPLATE_WORDS && boxes_meet (self->notes, seen))
    template_notes_draw (pen, notes, self->notes, &self->tiles);
}
