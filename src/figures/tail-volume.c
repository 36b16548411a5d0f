#include "figures/tail-volume.h"

#include <math.h>
#include "figures/outline-tolerance.h"
#include "figures/surface-figures.h"

double
tail_volume_of (const SurfaceFigures surfaces[], size_t count, const SurfaceFigures *reference, double wing_area)
{
  double moments = 0;
  bool tailed = false;

  if (!reference)
    return NAN;
  for (size_t i = 0; i < count; i++)
    {
      if (surfaces[i].surface->role == ROLE_FOREPLANE)
        return NAN;
      if (surfaces[i].surface->role != ROLE_TAILPLANE || !isfinite (surfaces[i].area_mm2))
        continue;
      moments += surfaces[i].area_mm2 * surfaces[i].tail_arm_mm;
      tailed = true;
    }
  return tailed ? moments / (wing_area * reference->planform.mac) : NAN;
}

double
tail_volume_sigma_of (const SurfaceFigures surfaces[], size_t count, const SurfaceFigures *reference, double wing_area)
{
  const double all = tail_volume_of (surfaces, count, reference, wing_area);
  double variance = pow (surface_volume_by_the_wing * all, 2);

  if (isnan (all))
    return NAN;
  for (size_t i = 0; i < count; i++)
    if (surfaces[i].surface->role == ROLE_TAILPLANE && isfinite (surfaces[i].area_mm2))
      variance += pow (surface_volume_by_its_own * surfaces[i].area_mm2 * surfaces[i].tail_arm_mm / (wing_area * reference->planform.mac), 2);
  return outline_tolerance * sqrt (variance);
}
