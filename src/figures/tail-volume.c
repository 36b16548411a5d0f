#include "figures/tail-volume.h"

#include <math.h>

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
