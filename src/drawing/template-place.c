#include "drawing/template-place.h"
#include <math.h>
#include "drawing/template-rows.h"
#include "drawing/template-search.h"
#include "drawing/template-tiles.h"

static const double apart = 6;                      /* of pieces, mm */

enum { NOTES_WIDTHS = 4 };

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

/* The first page tells how the others are put together: notes lie before all else, as wide as a tile or less. Gives how many shapes they may
 * have; what is higher than a tile is left out. */
static guint
shape_notes (const SheetPen *pen, const TemplateNotes *notes, const Point *step, Box shapes[NOTES_WIDTHS])
{
  static const double widths[NOTES_WIDTHS] = { 400, 174, 130, 92 };
  const double margin = step != NULL ? TEMPLATE_CLEAR : 0, widest = step != NULL ? step->x - 2 * margin : 250;
  guint count = 0;

  for (int i = 0; i < NOTES_WIDTHS; i++)
    {
      const double width = fmin (widths[i], widest), end = margin + template_notes_height (pen, notes, width);

      if (count == 0 || step == NULL || end <= step->y)
        shapes[count++] = (Box) { { margin, margin }, { margin + width, end } };
    }
  return count;
}

static TemplatePlaces
place_on_tiles (const SheetPen *pen, const GPtrArray *pieces, const Box shapes[], guint shape_count, Point step)
{
  g_autoptr (GArray) upright = cells_of (pen, pieces, false, &step), turned = cells_of (pen, pieces, true, &step);
  TemplateSearch search = { 0 };
  TemplatePlaces self = { .cells = g_array_new (FALSE, FALSE, sizeof (TemplateCell)) };

  template_search (&search, &(TemplatePack) { upright, turned, step, apart, shapes, shape_count });
  TemplateFound found = template_search_end (&search, pen, pieces->len);
  g_array_append_vals (self.cells, found.places, pieces->len);
  g_free (found.places);
  self.notes = found.taken;
  self.size = found.taken.max;
  for (guint i = 0; i < self.cells->len; i++)
    {
      const Point end = g_array_index (self.cells, TemplateCell, i).box.max;
      self.size = (Point) { fmax (self.size.x, end.x), fmax (self.size.y, end.y) };
    }
  self.tiles = template_tiles (pen, &self, step);
  return self;
}

/* So that its area is small. */
static TemplatePlaces
place_on_one_page (const SheetPen *pen, const GPtrArray *pieces, const Box shapes[], guint shape_count)
{
  const double narrowest = 200, widest = 1400, by = 100;      /* mm */
  g_autoptr (GArray) cells = cells_of (pen, pieces, false, NULL);
  TemplatePlaces best = { .size = { INFINITY, INFINITY } };

  for (double width = narrowest; width < widest; width += by)
    for (guint i = 0; i < shape_count; i++)
      {
        TemplatePlaces places = { .cells = g_array_copy (cells), .notes = shapes[i] };

        places.size = template_rows (places.cells, width, apart, places.notes);
        if (places.size.x * places.size.y < best.size.x * best.size.y - 1e-9)
          {
            template_places_clear (&best);
            best = places;
          }
        else
          template_places_clear (&places);
      }
  return best;
}

TemplatePlaces
template_place (const SheetPen *pen, const GPtrArray *pieces, const TemplateNotes *notes, const Point *step)
{
  Box shapes[NOTES_WIDTHS];
  const guint count = shape_notes (pen, notes, step, shapes);

  return step != NULL ? place_on_tiles (pen, pieces, shapes, count, *step) : place_on_one_page (pen, pieces, shapes, count);
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
