#include "drawing/flat-half.h"
#include "drawing/spar-runs.h"
#include "drawing/wall-sheet-pen.h"
#include "figures/names.h"

static const double name_at = 0.55;      /* of its run */
static const double above = 1.2;         /* of its name over the line, mm */

static void
add_line_along (const FlatHalf *half, double x)
{
  double from, to;

  if (spar_run (half->surface, x, &from, &to))
    flat_add_way (half->piece, half->surface, FLAT_ROOM, (Point) { x, from }, (Point) { x, to });
}

/* Both of its edges, one line where its width is not told, and its name ahead of them: outboard of the mark's words, which stand nearer to
 * the root. */
static void
add_spar (const StructureItem *item, void *data)
{
  const FlatHalf *half = data;
  const double beside = item->width > 0 ? item->width / 2 : 0;
  double from, to;

  if (!spar_run (half->surface, item->x, &from, &to))
    return;
  add_line_along (half, item->x - beside);
  if (beside > 0)
    add_line_along (half, item->x + beside);
  flat_half_add_words (half, FLAT_ROOM, caps_text, (Point) { item->x - beside, from + name_at * (to - from) }, (Point) { 0, -above },
                       structure_item_name (item));
}

void
flat_half_add_spars (const FlatHalf *half)
{
  spars_visit (half->figures->aeroplane, half->surface, add_spar, (void *) half);
}
