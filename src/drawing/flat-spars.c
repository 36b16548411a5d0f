#include "drawing/flat-half.h"
#include <math.h>
#include "document/hinge.h"
#include "drawing/wall-sheet-pen.h"
#include "figures/names.h"

/* Stations at which it is looked whether a spar is still within the surface, and halvings of the step in which it leaves: to a
 * thousandth of a millimetre on any wing. */
enum { STEPS = 64, HALVINGS = 20 };

static bool
is_within (const Surface *surface, double x, double station)
{
  double leading, trailing;

  return hinge_edges (surface, station, &leading, &trailing) && x >= leading && x <= trailing;
}

/* Between a station within and one without, where it crosses the edge. */
static double
crossing (const Surface *surface, double x, double within, double without)
{
  for (int i = 0; i < HALVINGS; i++)
    {
      const double middle = (within + without) / 2;

      *(is_within (surface, x, middle) ? &within : &without) = middle;
    }
  return within;
}

/* From where it first stands within the surface to where it first leaves it. */
static bool
find_run (const Surface *surface, double x, double *from, double *to)
{
  const Box box = outline_bounds (surface->outline);
  const double root = surface_is_horizontal (surface) && !surface->root_open ? 0 : box.min.y, step = (box.max.y - root) / STEPS;
  int first = 0, behind;

  while (first <= STEPS && !is_within (surface, x, root + first * step))
    first++;
  if (first > STEPS)
    return false;
  for (behind = first + 1; behind <= STEPS && is_within (surface, x, root + behind * step); behind++)
    ;
  *from = first == 0 ? root : crossing (surface, x, root + first * step, root + (first - 1) * step);
  *to = behind > STEPS ? box.max.y : crossing (surface, x, root + (behind - 1) * step, root + behind * step);
  return true;
}

static void
add_line_along (const FlatHalf *half, double x)
{
  double from, to;

  if (find_run (half->surface, x, &from, &to))
    flat_add_way (half->piece, half->surface, FLAT_ROOM, (Point) { x, from }, (Point) { x, to });
}

/* Both of its edges; one line where its width is not told. */
static void
add_spar (const FlatHalf *half, const StructureItem *item)
{
  const double beside = item->width > 0 ? item->width / 2 : 0;
  double from, to;

  if (!find_run (half->surface, item->x, &from, &to))
    return;
  add_line_along (half, item->x - beside);
  if (beside > 0)
    add_line_along (half, item->x + beside);
  flat_half_add_words (half, FLAT_ROOM, caps_small, (Point) { item->x + beside, from + (to - from) / 3 }, (Point) { 1, caps_small + 1 },
                       structure_item_name (item));
}

void
flat_half_add_spars (const FlatHalf *half)
{
  const Aeroplane *aeroplane = half->figures->aeroplane;

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_STRUCTURE); i++)
    {
      const Structure *structure = aeroplane_structure (aeroplane, i);

      if (!structure->of || aeroplane_surface_by_id (aeroplane, structure->of) != half->surface)
        continue;
      for (size_t j = 0; j < structure->item_count; j++)
        if (structure->items[j].of == TRACED_SPAN && isfinite (structure->items[j].x))
          add_spar (half, &structure->items[j]);
    }
}
