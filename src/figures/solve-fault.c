#include "figures/solve-fault.h"

/* Pairs of more surfaces than these are not tried. */
enum { MOST_PAIRED = 12 };

static bool
none_lifts (const LatticeSurface surfaces[], size_t count)
{
  for (size_t i = 0; i < count; i++)
    if (surfaces[i].pressure_ratio > 0)
      return false;
  return true;
}

/* Whether these alone fail so, however fast the air is at each. */
static bool
fails (Lattice *lattice, const LatticeSurface *one, const LatticeSurface *other, CoreStatus status)
{
  LatticeSurface surfaces[2] = { *one, other ? *other : *one };
  LatticeShare shares[2];
  LatticeResult result;

  surfaces[0].pressure_ratio = surfaces[1].pressure_ratio = 1;
  return lattice_solve (lattice, surfaces, other ? 2 : 1, lattice_default_options (), LATTICE_NEUTRAL_POINT, 1, 1, shares, &result)
         == status;
}

static double
breadth (const LatticeSurface *surface)
{
  const Box box = outline_bounds (surface->outline);

  return box.max.y - box.min.y;
}

SolveFault
solve_fault_find (Lattice *lattice, const LatticeSurface surfaces[], size_t count, CoreStatus status)
{
  if (status == CORE_NO_MEMORY)
    return (SolveFault) { -1, -1 };
  if (none_lifts (surfaces, count))
    return (SolveFault) { 0, -1 };
  for (size_t i = 0; i < count; i++)
    if (fails (lattice, &surfaces[i], NULL, status))
      return (SolveFault) { (ptrdiff_t) i, -1 };
  for (size_t i = 0; i < count && count <= MOST_PAIRED; i++)
    for (size_t j = i + 1; j < count; j++)
      if (fails (lattice, &surfaces[i], &surfaces[j], status))
        return breadth (&surfaces[j]) < breadth (&surfaces[i]) ? (SolveFault) { (ptrdiff_t) j, (ptrdiff_t) i }
                                                               : (SolveFault) { (ptrdiff_t) i, (ptrdiff_t) j };
  return (SolveFault) { -1, -1 };
}
