#include "balance/hatch.h"

#include <math.h>

static bool
pack_is_sound (const HatchPack *pack)
{
  return isfinite (pack->band_from) && isfinite (pack->band_to) && isfinite (pack->length) && isfinite (pack->width)
         && isfinite (pack->spread_from) && isfinite (pack->spread_to) && pack->band_from <= pack->band_to && pack->length >= 0
         && pack->width >= 0 && pack->spread_from >= 0 && pack->spread_to >= 0;
}

CoreStatus
hatch_opening (const HatchPack packs[], size_t count, Hatch *hatch)
{
  Hatch made = { INFINITY, -INFINITY, 0, INFINITY, -INFINITY };

  if (count == 0)
    return CORE_OUT_OF_RANGE;
  for (size_t i = 0; i < count; i++)
    {
      const HatchPack *pack = &packs[i];
      const double fore = pack->band_from - pack->length / 2 - pack->spread_from, aft = pack->band_to + pack->length / 2 + pack->spread_to;

      if (!pack_is_sound (pack))
        return CORE_OUT_OF_RANGE;
      made.floor_from = fmin (made.floor_from, fore);
      made.floor_to = fmax (made.floor_to, aft);
      made.from = fmin (made.from, fore - (pack->leads_aft ? HATCH_HAND : HATCH_BEND));
      made.to = fmax (made.to, aft + (pack->leads_aft ? HATCH_BEND : HATCH_HAND));
      made.width = fmax (made.width, pack->width + HATCH_ACROSS);
    }
  *hatch = made;
  return CORE_OK;
}

size_t
hatch_line_outward (const double places[], size_t count, double x, bool aft)
{
  size_t best = count;

  for (size_t i = 0; i < count; i++)
    if ((aft ? places[i] >= x : places[i] <= x) && (best == count || fabs (places[i] - x) < fabs (places[best] - x)))
      best = i;
  return best;
}
