#include "figures/balance-marks.h"
#include <math.h>
#include "figures/surface-figures.h"

const MarkFigures *
balance_mark_on_wing (const Figures *figures)
{
  const BalanceFigures *balance = &figures->balance;

  for (size_t i = 0; i < balance->mark_count; i++)
    if (balance->marks[i].target_mm > 0 && balance->marks[i].target_mm < balance->marks[i].chord_mm)
      return &balance->marks[i];
  return NULL;
}

bool
balance_is_inverted (const Figures *figures, const MarkFigures *mark)
{
  const Surface *wing = figures->reference->surface;

  return isfinite (figures->mass.z_mm) && figures->mass.z_mm > wing->z + surface_lift (wing, mark->station_mm);
}
