#include "drawing/spar-runs.h"
#include <math.h>
#include "document/hinge.h"

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

bool
spar_run (const Surface *surface, double x, double *from, double *to)
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

void
spars_visit (const Aeroplane *aeroplane, const Surface *surface, SparVisit visit, void *data)
{
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_STRUCTURE); i++)
    {
      const Structure *structure = aeroplane_structure (aeroplane, i);

      if (!structure->of || aeroplane_surface_by_id (aeroplane, structure->of) != surface)
        continue;
      for (size_t j = 0; j < structure->item_count; j++)
        if (structure->items[j].of == TRACED_SPAN && isfinite (structure->items[j].x))
          visit (&structure->items[j], data);
    }
}
