#include "figures/hatch-ends.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "document/part-box.h"
#include "document/part-class.h"
#include "figures/nose-figures.h"

/* Less than that is no number that anybody reads, mm. */
static const double SAME = 0.5;

/* mm: no mount is longer. */
static const double FARTHEST = 60;

/* In the body's middle, where it is in the hatch's way, and so far ahead of the edge at most that its firewall may reach it. */
static bool
motor_is_before (const Part *motor, const HatchFigures *hatch)
{
  if (!part_is_a (motor, "motor") || !motor->aboard)
    return false;
  const Point extent = part_extent (motor);
  const double rear = motor->x + extent.x / 2;
  return fabs (motor->y) < extent.y / 2 && rear < hatch->floor_from_mm && rear > hatch->from_mm - FARTHEST;
}

void
hatch_end_behind_firewalls (HatchFigures *hatch, const Aeroplane *aeroplane, const RoomProfiles *bodies)
{
  const BodyProfile *profile = bodies->count > 0 ? bodies->profiles[0] : NULL;
  const double wanted = hatch->from_mm;

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_PART); i++)
    if (motor_is_before (aeroplane_part (aeroplane, i), hatch))
      hatch->firewall_x_mm = fmax (hatch->firewall_x_mm, nose_firewall_face (aeroplane, profile, aeroplane_part (aeroplane, i)) + NOSE_FIREWALL_MM);
  hatch->from_mm = fmin (fmax (wanted, ceil (hatch->firewall_x_mm)), fmax (wanted, hatch->floor_from_mm));
  hatch->firewall_mm = hatch->from_mm - wanted;
}

/* From the edge to the nearest former of all bodies, where that is near and the floor is left whole; else NAN. Outward: −1 for the forward edge, 1
 * for the after one. */
static double
way_to_former (const Aeroplane *aeroplane, double edge, double floor, int outward)
{
  const NamedPlace *former;
  double behind;

  if (!hatch_nearest_former (aeroplane, edge, &former, &behind) || fabs (behind) > HATCH_NEAR_FORMER_MM || outward * (former->place - floor) < 0)
    return NAN;
  return -behind;
}

void
hatch_end_at_formers (HatchFigures *hatch, const Aeroplane *aeroplane)
{
  const double from = hatch->firewall_mm > 0 ? NAN : way_to_former (aeroplane, hatch->from_mm, hatch->floor_from_mm, -1);
  const double to = way_to_former (aeroplane, hatch->to_mm, hatch->floor_to_mm, 1);

  hatch->moved_from_mm = isnan (from) ? 0 : from;
  hatch->moved_to_mm = isnan (to) ? 0 : to;
  hatch->from_mm = isnan (from) ? round (hatch->from_mm) : hatch->from_mm + from;
  hatch->to_mm = isnan (to) ? round (hatch->to_mm) : hatch->to_mm + to;
}

static char *
to_formers_text (const HatchFigures *hatch, Units units)
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

char *
hatch_moved_text (const HatchFigures *hatch, Units units)
{
  g_autofree char *formers = to_formers_text (hatch, units), *taken = units_length (units, hatch->firewall_mm), *firewall = NULL;

  if (hatch->firewall_mm > SAME)
    firewall = g_strdup_printf (_("It begins behind the firewall, which takes %s of that room."), taken);
  return formers && firewall ? g_strjoin (" ", firewall, formers, NULL) : firewall ? g_steal_pointer (&firewall) : g_steal_pointer (&formers);
}
