#include "figures/lead-need.h"

#include <math.h>

static const double SLACK_FACTOR = 1.12, LOOP = 10, WING_OFF = 40;
static const double EXTENSIONS[] = { 100, 150, 200, 300 };

static bool
is_in_surface (const Aeroplane *aeroplane, const Part *part)
{
  return part->of && aeroplane_surface_by_id (aeroplane, part->of);
}

/* What comes on top of the route, mm. */
static double
slack_of (const Aeroplane *aeroplane, const Lead *lead)
{
  const Part *from = aeroplane_part_by_id (aeroplane, lead->from), *to = aeroplane_part_by_id (aeroplane, lead->to);

  return from && to && is_in_surface (aeroplane, from) != is_in_surface (aeroplane, to) ? LOOP + WING_OFF : LOOP;
}

static double
route_of (const Part *from, const Part *to, const Lead *lead)
{
  Point last = { from->x, from->y };
  double length = 0;

  for (size_t i = 0; i < lead->via_count; i++)
    {
      length += point_distance (last, lead->via[i]);
      last = lead->via[i];
    }
  length += point_distance (last, (Point) { to->x, to->y });
  return hypot (length, to->z - from->z);
}

double
lead_needed_for (const Aeroplane *aeroplane, const Lead *lead, double route)
{
  return SLACK_FACTOR * route + slack_of (aeroplane, lead);
}

double
lead_longest_route (const Aeroplane *aeroplane, const Lead *lead, double length)
{
  return (length - slack_of (aeroplane, lead)) / SLACK_FACTOR;
}

static double
extension_for (double missing)
{
  if (!(missing > 0))
    return missing == 0 ? 0 : NAN;
  for (size_t i = 0; i < G_N_ELEMENTS (EXTENSIONS); i++)
    if (EXTENSIONS[i] >= missing)
      return EXTENSIONS[i];
  return NAN;
}

LeadNeed
lead_need_of (const Aeroplane *aeroplane, const Lead *lead)
{
  const Part *from = aeroplane_part_by_id (aeroplane, lead->from), *to = aeroplane_part_by_id (aeroplane, lead->to);
  LeadNeed made = { NAN, NAN, NAN, NAN };

  if (!from || !to)
    return made;
  made.route = route_of (from, to, lead);
  made.needed = lead_needed_for (aeroplane, lead, made.route);
  made.missing = isnan (lead->length) ? NAN : fmax (made.needed - lead->length, 0);
  made.extension = extension_for (made.missing);
  return made;
}
