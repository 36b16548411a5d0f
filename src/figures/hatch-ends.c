#include "figures/hatch-ends.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>

/* Less than that is no number that anybody reads, mm. */
static const double SAME = 0.5;

/* From the edge to the nearest former of all bodies, where that is near and the floor is left whole; else 0. Outward: −1 for the forward edge, 1
 * for the after one. */
static double
way_to_former (const Aeroplane *aeroplane, double edge, double floor, int outward)
{
  const NamedPlace *former;
  double behind;

  if (!hatch_nearest_former (aeroplane, edge, &former, &behind) || fabs (behind) > HATCH_NEAR_FORMER_MM || outward * (former->place - floor) < 0)
    return 0;
  return -behind;
}

void
hatch_end_at_formers (HatchFigures *hatch, const Aeroplane *aeroplane)
{
  hatch->moved_from_mm = way_to_former (aeroplane, hatch->from_mm, hatch->floor_from_mm, -1);
  hatch->moved_to_mm = way_to_former (aeroplane, hatch->to_mm, hatch->floor_to_mm, 1);
  hatch->from_mm = hatch->moved_from_mm != 0 ? hatch->from_mm + hatch->moved_from_mm : round (hatch->from_mm);
  hatch->to_mm = hatch->moved_to_mm != 0 ? hatch->to_mm + hatch->moved_to_mm : round (hatch->to_mm);
}

char *
hatch_moved_text (const HatchFigures *hatch, Units units)
{
  const bool ahead = fabs (hatch->moved_from_mm) > SAME, behind = fabs (hatch->moved_to_mm) > SAME;
  g_autofree char *from = units_length (units, fabs (hatch->moved_from_mm)), *to = units_length (units, fabs (hatch->moved_to_mm));

  if (ahead && behind)
    return g_strdup_printf (_("To end at formers, its forward edge is moved by %s and its after edge by %s."), from, to);
  if (ahead)
    return g_strdup_printf (_("To end at a former, its forward edge is moved by %s."), from);
  if (behind)
    return g_strdup_printf (_("To end at a former, its after edge is moved by %s."), to);
  return NULL;
}
