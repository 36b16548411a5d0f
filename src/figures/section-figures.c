#include "figures/section-figures.h"

#include <math.h>
#include "aero/flight.h"
#include "aero/handbook.h"
#include "aero/section.h"

/* The middle of what small aeroplanes fly at, for one whose mass is not known yet. */
static const double usual_reynolds = 60e3;
/* Whoever types a slope has measured it or read it off a chart. Common practice, no source. */
static const double given_sigma = 0.03;
static const double pressure_sigma = 0.05, given_pressure_sigma = 0.03;

void
section_figures_fill (SurfaceFigures *figures, double stall_speed, double stall_sigma)
{
  const Air air = air_at (0);
  const Surface *surface = figures->surface;
  Spreading slope;

  figures->reynolds = flight_reynolds (&air, stall_speed, figures->planform.mac * 1e-3);
  figures->reynolds_sigma = figures->reynolds * stall_sigma / stall_speed;
  slope = section_slope_ratio (surface->section, isfinite (figures->reynolds) ? figures->reynolds : usual_reynolds);
  if (!isnan (surface->section_slope))
    slope = (Spreading) { surface->section_slope, given_sigma };
  figures->section_slope = slope.value;
  figures->section_slope_sigma = isnan (surface->section_slope_sigma) ? slope.sigma : surface->section_slope_sigma;
}

double
section_figures_pressure_sigma (const Surface *surface)
{
  if (!isnan (surface->pressure_ratio_sigma))
    return surface->pressure_ratio_sigma;
  if (surface->role != ROLE_TAILPLANE)
    return 0;
  return isnan (surface->pressure_ratio) ? pressure_sigma : given_pressure_sigma;
}

double
section_figures_factor (const SurfaceFigures *figures, double section_slope)
{
  const double aspect_ratio = figures->planform.aspect_ratio;

  return handbook_lift_slope (aspect_ratio, 0, section_slope) / handbook_lift_slope (aspect_ratio, 0, 1);
}
