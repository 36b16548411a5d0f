#include "geometry/section-shape.h"

#include <math.h>

double
section_half_thickness (double thickness, double x)
{
  return 5 * thickness * (0.2969 * sqrt (x) + x * (-0.1260 + x * (-0.3516 + x * (0.2843 - 0.1036 * x))));
}
