#include "figures/wing-depth.h"

#include <math.h>
#include "figures/surface-figures.h"
#include "geometry/section-shape.h"

enum { PLACES = 5 };

double
wing_depth (const Surface *surface, double station, double x)
{
  StationCut cut;

  if (isnan (surface->thickness) || planform_cut (surface->outline, surface_sides (surface), fabs (station), &cut) != CORE_OK)
    return NAN;
  const double share = (x - cut.leading_x) / (cut.trailing_x - cut.leading_x);
  if (!(share >= 0 && share <= 1))
    return 0;
  return 2 * section_half_thickness (surface->thickness / 100, share) * (cut.trailing_x - cut.leading_x);
}

double
wing_depth_over (const Surface *surface, Point middle, double length, double width)
{
  double least = INFINITY;

  for (int i = 0; i < PLACES; i++)
    for (int side = -1; side <= 1; side++)
      {
        const double x = middle.x + length * ((double) i / (PLACES - 1) - 0.5), depth = wing_depth (surface, middle.y + side * width / 2, x);
        if (isnan (depth))
          return NAN;
        least = fmin (least, depth);
      }
  return least;
}
