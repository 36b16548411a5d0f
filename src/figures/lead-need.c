#include "figures/lead-need.h"

#include <math.h>

static const double SLACK_FACTOR = 1.12, LOOP = 10, WING_OFF = 40, TOLERANCE = 0.5;
static const double EXTENSIONS[] = { 100, 150, 200, 300, 450, 600 };

static bool
is_in_surface (const Aeroplane *aeroplane, const char *id)
{
  const Part *part = aeroplane_part_by_id (aeroplane, id);

  return part && part->of && aeroplane_surface_by_id (aeroplane, part->of);
}

double
lead_slack (const Lead *lead)
{
  return isnan (lead->slack) ? SLACK_FACTOR : lead->slack;
}

double
lead_allowance (const Lead *lead)
{
  return isnan (lead->allowance) ? WING_OFF : lead->allowance;
}

bool
lead_unplugs (const Aeroplane *aeroplane, const Lead *lead)
{
  if (lead->unplugs != UNPLUGS_AS_USUAL)
    return lead->unplugs == UNPLUGS_YES;
  return is_in_surface (aeroplane, lead->from) != is_in_surface (aeroplane, lead->to);
}

/* What comes on top of the way, mm. A two-into-one lead stays in the wing with its joint, and its last leg is what is unplugged. */
static double
slack_of (const Aeroplane *aeroplane, const Lead *lead, LeadLeg leg)
{
  if (lead_is_joined (lead) && leg != LEG_TO)
    return 0;
  return LOOP + (lead_unplugs (aeroplane, lead) ? lead_allowance (lead) : 0);
}

double
lead_needed_for (const Aeroplane *aeroplane, const Lead *lead, LeadLeg leg, double route)
{
  return lead_slack (lead) * route + slack_of (aeroplane, lead, leg);
}

double
lead_longest_route (const Aeroplane *aeroplane, const Lead *lead, LeadLeg leg, double length)
{
  return (length - slack_of (aeroplane, lead, leg)) / lead_slack (lead);
}

double
lead_extension_for (double missing)
{
  if (!(missing > 0))
    return missing == 0 ? 0 : NAN;
  for (size_t i = 0; i < G_N_ELEMENTS (EXTENSIONS); i++)
    if (EXTENSIONS[i] >= missing)
      return EXTENSIONS[i];
  return NAN;
}

double
lead_extension_longest (void)
{
  return EXTENSIONS[G_N_ELEMENTS (EXTENSIONS) - 1];
}

LeadNeed
lead_need_along (const Aeroplane *aeroplane, const Lead *lead, LeadLeg leg, double route)
{
  const double length = lead_leg_length (lead, leg);
  LeadNeed made = { .route = route, .needed = lead_needed_for (aeroplane, lead, leg, route), .left = NAN, .missing = NAN };

  if (isfinite (length) && isfinite (route))
    {
      made.left = fmax (length - made.needed, 0);
      made.missing = fmax (made.needed - length, 0);
    }
  made.extension = lead_extension_for (made.missing);
  return made;
}

LeadNeed
lead_need_of (const Aeroplane *aeroplane, const Lead *lead, LeadLeg leg)
{
  return lead_need_along (aeroplane, lead, leg, lead_way (aeroplane, lead, leg));
}

double
lead_share_served (const Aeroplane *aeroplane, const Lead *lead, LeadLeg leg, const LeadNeed *need)
{
  if (!(need->missing > TOLERANCE) || !(need->route > 0))
    return INFINITY;
  return fmax (lead_longest_route (aeroplane, lead, leg, lead_leg_length (lead, leg)), 0) / need->route;
}
