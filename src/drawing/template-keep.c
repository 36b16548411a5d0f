#include "drawing/template-keep.h"
#include <math.h>
#include "drawing/template-line.h"
#include "drawing/template-word.h"

static const double clear = 1;              /* of words from a tile's edge, mm */
static const double outside = 300;          /* what leaving the cell costs, in mm of way */
static const double upon_line = 20;         /* what each place of a firm line beneath words costs, likewise */
static const double next_line = 10;         /* words in a column are no further apart, mm */

static Box
moved (Box box, Point by)
{
  return (Box) { point_add (box.min, by), point_add (box.max, by) };
}

/* The ways off an edge that goes through it, before the edge and behind it; one of 0 where there is none, or it has no room between two. */
typedef struct { double by[2]; int count; } Ways;

static Ways
ways_off (double from, double to, double step)
{
  const double edge = ceil ((from - clear) / step) * step;

  if (!(step > 0) || edge > to + clear || to - from > step - 2 * clear)
    return (Ways) { { 0, 0 }, 1 };
  return (Ways) { { edge - clear - to, edge + clear - from }, 2 };
}

typedef struct { Box box; double places; } Beneath;

static void
count_beneath (Point place, void *data)
{
  Beneath *beneath = data;

  beneath->places += place.x > beneath->box.min.x && place.x < beneath->box.max.x && place.y > beneath->box.min.y && place.y < beneath->box.max.y;
}

static double
cost_of (const TemplateCell *cell, Box box, Point by)
{
  Beneath beneath = { moved (box, by), 0 };
  const bool leaves = beneath.box.min.x < cell->box.min.x || beneath.box.min.y < cell->box.min.y || beneath.box.max.x > cell->box.max.x
                      || beneath.box.max.y > cell->box.max.y;
  unsigned firm = 0;

  for (int purpose = 0; purpose < FLAT_PURPOSE_COUNT; purpose++)
    firm |= template_line_is_firm ((FlatPurpose) purpose) ? 1u << purpose : 0;
  template_cell_visit_lines (cell, firm, count_beneath, &beneath);
  return fabs (by.x) + fabs (by.y) + (leaves ? outside : 0) + upon_line * beneath.places;
}

static Point
shift_of (const TemplateCell *cell, Box box)
{
  const Ways across = ways_off (box.min.x, box.max.x, cell->step.x), down = ways_off (box.min.y, box.max.y, cell->step.y);
  Point best = { 0, 0 };
  double least = INFINITY;

  if (across.count == 1 && down.count == 1)
    return best;
  for (int i = 0; i < across.count; i++)
    for (int k = 0; k < down.count; k++)
      {
        const Point by = { across.by[i], down.by[k] };
        const double cost = cost_of (cell, box, by);

        if (cost < least)
          {
            least = cost;
            best = by;
          }
      }
  return best;
}

static Box
word_box (const SheetPen *pen, const TemplateCell *cell, guint i)
{
  const Box own = template_word_box (pen, &g_array_index (cell->piece->words, FlatWord, i));
  const Point a = template_cell_place (cell, own.min), b = template_cell_place (cell, own.max);

  return (Box) { { fmin (a.x, b.x), fmin (a.y, b.y) }, { fmax (a.x, b.x), fmax (a.y, b.y) } };
}

/* Whether word i stands right below the one before it. */
static bool
is_next_line (const FlatPiece *piece, guint i)
{
  const FlatWord *word = &g_array_index (piece->words, FlatWord, i), *before = word - 1;

  return word->turn == before->turn && word->across == before->across && fabs (word->at.x - before->at.x) < 0.01
         && fabs (word->at.y - before->at.y) < next_line;
}

Point
template_keep_shift (const SheetPen *pen, const TemplateCell *cell, guint i)
{
  guint first = i, last = i;
  Box box;

  if (!(cell->step.x > 0 && cell->step.y > 0))
    return (Point) { 0, 0 };
  while (first > 0 && is_next_line (cell->piece, first))
    first--;
  while (last + 1 < cell->piece->words->len && is_next_line (cell->piece, last + 1))
    last++;
  box = word_box (pen, cell, first);
  for (guint k = first + 1; k <= last; k++)
    {
      const Box next = word_box (pen, cell, k);
      box = box_with (box_with (box, next.min), next.max);
    }
  return shift_of (cell, box);
}

Box
template_keep_word (const SheetPen *pen, const TemplateCell *cell, guint i)
{
  return moved (word_box (pen, cell, i), template_keep_shift (pen, cell, i));
}

/* As far to the right as it takes; as it is where the cell is too narrow. */
static bool
caption_x (const TemplateCell *cell, double *x)
{
  const Ways ways = ways_off (cell->box.min.x, cell->box.min.x + cell->caption.x, cell->step.x);
  const double behind = ways.count == 2 ? cell->box.min.x + ways.by[1] : cell->box.min.x;

  *x = behind + cell->caption.x <= cell->box.max.x ? behind : cell->box.min.x;
  return *x == behind;
}

Point
template_keep_caption (const TemplateCell *cell)
{
  double x;

  caption_x (cell, &x);
  return (Point) { x, cell->box.min.y };
}

bool
template_keep_is_kept (const TemplateCell *cell, bool across)
{
  double x;

  return across ? caption_x (cell, &x) : ways_off (cell->box.min.y, cell->box.min.y + cell->caption.y, cell->step.y).count == 1;
}
