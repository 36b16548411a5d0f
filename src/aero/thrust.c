#include "aero/thrust.h"

#include <math.h>

Spreading
thrust_coefficient (void)
{
  return (Spreading) { 0.11, 0.012 };
}

Spreading
power_coefficient (double ratio)
{
  static const double LEAST = 0.04, MOST = 0.07, USUAL = 0.05, USUAL_RATIO = 0.62, SLOPE = 0.055556;

  if (!(ratio > 0))
    return (Spreading) { USUAL, 0.009 };
  return (Spreading) { fmin (MOST, fmax (LEAST, USUAL + SLOPE * (ratio - USUAL_RATIO))), 0.007 };
}

double
thrust_of (double coefficient, double density, double rev_s, double diameter)
{
  return coefficient * density * pow (rev_s, 2) * pow (diameter, 4);
}

double
shaft_power_of (double coefficient, double density, double rev_s, double diameter)
{
  return coefficient * density * pow (rev_s, 3) * pow (diameter, 5);
}

double
thrust_speed_of (double coefficient, double density, double power, double diameter)
{
  return cbrt (power / (coefficient * density * pow (diameter, 5)));
}
