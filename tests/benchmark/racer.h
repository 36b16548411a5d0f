#pragma once
#include <math.h>
#include "aero/lattice.h"
#include "geometry/shapes.h"

/** The small racer that timings are taken of: an elliptical wing of 640 mm and its tailplane. Millimetres. */
static const double racer_area = M_PI * 320 * 130 / 2, racer_span = 640;

static inline void
racer_outlines (Outline *outlines[2])
{
  if (shape_ellipse (112, 320, 45, 85, &outlines[0]) || shape_ellipse (388, 118, 26, 40, &outlines[1]))
    abort ();
}

static inline void
racer_surfaces (Outline *const outlines[2], LatticeSurface surfaces[2])
{
  surfaces[0] = (LatticeSurface) { .outline = outlines[0], .z = -12, .dihedral = 4 * M_PI / 180, .pressure_ratio = 1 };
  /* so many wished for give 12 strips to the tail, 8 to the wing outside it */
  surfaces[1] = (LatticeSurface) { .outline = outlines[1], .z = 10, .pressure_ratio = 0.9, .spanwise = 16 };
}
