#include "figures/wing-depth.h"

#include <math.h>
#include "figures/surface-figures.h"
#include "geometry/section-shape.h"

enum { PLACES = 5 };

static bool
section_cut (const Surface *surface, double station, StationCut *cut)
{
  return !isnan (surface->thickness) && planform_cut (surface->outline, surface_sides (surface), fabs (station), cut) == CORE_OK;
}

static double
depth_at (const Surface *surface, const StationCut *cut, double x)
{
  const double chord = cut->trailing_x - cut->leading_x, share = (x - cut->leading_x) / chord;

  return share >= 0 && share <= 1 ? 2 * section_half_thickness (surface->thickness / 100, share) * chord : 0;
}

double
wing_depth (const Surface *surface, double station, double x)
{
  StationCut cut;

  return section_cut (surface, station, &cut) ? depth_at (surface, &cut, x) : NAN;
}

double
wing_depth_over (const Surface *surface, Point middle, double length, double width)
{
  double least = INFINITY;

  for (int side = -1; side <= 1; side++)
    {
      StationCut cut;
      if (!section_cut (surface, middle.y + side * width / 2, &cut))
        return NAN;
      for (int i = 0; i < PLACES; i++)
        least = fmin (least, depth_at (surface, &cut, middle.x + length * ((double) i / (PLACES - 1) - 0.5)));
    }
  return least;
}
