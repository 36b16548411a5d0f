#include "geometry/section-shape.h"

#include <math.h>
#include "geometry/quadrature.h"

double
section_half_thickness (double thickness, double x)
{
  return 5 * thickness * (0.2969 * sqrt (x) + x * (-0.1260 + x * (-0.3516 + x * (0.2843 - 0.1036 * x))));
}

/* The face's run by u = √x: 2 u along the chord, and the half thickness's slope by u. */
static void
face_run (double u, const void *data, double values[])
{
  const double thickness = *(const double *) data, x = u * u;
  const double rise = 5 * thickness * (0.2969 + u * (2 * -0.1260 + x * (4 * -0.3516 + x * (6 * 0.2843 - 8 * 0.1036 * x))));

  values[0] = hypot (2 * u, rise);
}

double
section_face_length (double thickness, double x)
{
  const Quadrature face = { .values = face_run, .data = &thickness, .count = 1, .accuracy = { 1e-10 } };
  double length = 0;

  quadrature_add (&face, 0, sqrt (x), &length);
  return length;
}
