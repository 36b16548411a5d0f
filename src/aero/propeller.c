#include "aero/propeller.h"

#include <math.h>

/* The blades' projected side area over the square of the diameter; the pitch angle is that at three quarters of the radius. */
static double
side_area (double pitch_over_diameter)
{
  const double blades = 2, width = 0.1, length = 0.4;

  return blades * width * length * sin (atan (pitch_over_diameter / (0.75 * M_PI)));
}

PropellerBound
propeller_cross_force (double diameter)
{
  const double aspect_ratio = 8, slope = 2 * M_PI * aspect_ratio / (aspect_ratio + 2), square = diameter * diameter;
  const double power_off = 1, full_power = 2;

  return (PropellerBound) { .least = slope * power_off * side_area (0.5) * square,
                            .greatest = slope * full_power * side_area (0.8) * square };
}
