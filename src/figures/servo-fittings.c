#include "figures/servo-fittings.h"

#include <math.h>
#include "document/part-class.h"
#include "figures/lead-route.h"

static const double ROD_NEAR = 40, HORN_NEAR = 15, EXTENSION_NEAR = 20, CLEARLY = 1;      /* mm */

static Point
place_of (const Part *part)
{
  return (Point) { part->x, part->y };
}

static bool
is_servo (const Part *part)
{
  return part_is_a (part, "servo");
}

static bool
is_rod (const Part *part)
{
  return part_is_a (part, "pushrod");
}

static bool
is_kind (const Part *part, const char *stem)
{
  return part->kind && g_str_has_prefix (part->kind, stem);
}

/* Torque rods lie across. */
static bool
is_pushrod (const Part *part)
{
  return is_rod (part) && part->length >= part->width;
}

/* From the nearer end of a rod; of torque rods the middle is driven. */
static double
away_from_rod (const Part *rod, Point place)
{
  const double half = is_pushrod (rod) ? rod->length / 2 : 0;

  return fmin (point_distance (place, (Point) { rod->x - half, rod->y }), point_distance (place, (Point) { rod->x + half, rod->y }));
}

/* The rod at one of whose ends it is; NULL: none. */
static const Part *
rod_at (const Aeroplane *aeroplane, const Part *horn)
{
  const Part *best = NULL;

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_PART); i++)
    {
      const Part *rod = aeroplane_part (aeroplane, i);
      const double away = is_rod (rod) ? away_from_rod (rod, place_of (horn)) : INFINITY;

      if (away <= HORN_NEAR && (!best || away < away_from_rod (best, place_of (horn))))
        best = rod;
    }
  return best;
}

/* How far a rod, or a horn without one, is from a servo; INFINITY where they do not go together. */
static double
away_from_servo (const Part *fitting, const Part *servo)
{
  if (is_rod (fitting))
    return away_from_rod (fitting, place_of (servo));
  return g_strcmp0 (fitting->of, servo->of) == 0 ? point_distance (place_of (fitting), place_of (servo)) : INFINITY;
}

/* Whether among those that may drive it that servo is clearly the nearest. */
static bool
is_nearest (const Aeroplane *aeroplane, const Part *fitting, const Part *servo, bool (*may) (const Aeroplane *, const Part *))
{
  const double away = away_from_servo (fitting, servo);

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_PART); i++)
    {
      const Part *other = aeroplane_part (aeroplane, i);

      if (other != servo && is_servo (other) && away_from_servo (fitting, other) <= away + CLEARLY && may (aeroplane, other))
        return false;
    }
  return away <= ROD_NEAR && may (aeroplane, servo);
}

static bool
any (const Aeroplane *aeroplane, const Part *servo)
{
  return true;
}

/* One that pushes a rod turns none: elevator and aileron servo often stand side by side. */
static bool
pushes_nothing (const Aeroplane *aeroplane, const Part *servo)
{
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_PART); i++)
    if (is_pushrod (aeroplane_part (aeroplane, i)) && is_nearest (aeroplane, aeroplane_part (aeroplane, i), servo, any))
      return false;
  return true;
}

/* From the middle of the lead's leg that begins at that servo; INFINITY without one. */
static double
away_from_lead (const Aeroplane *aeroplane, const Lead *lead, LeadLeg leg, const Part *extension)
{
  g_autoptr (GArray) route = lead_route (aeroplane, lead, leg);

  if (!route || route->len < 2)
    return INFINITY;
  const Point one = g_array_index (route, Point, 0), other = g_array_index (route, Point, route->len - 1);
  return point_distance (place_of (extension), (Point) { (one.x + other.x) / 2, (one.y + other.y) / 2 });
}

/* Whether the lead on which an extension lies is that servo's. */
static bool
extends (const Aeroplane *aeroplane, const Part *extension, const Part *servo)
{
  double nearest = EXTENSION_NEAR;
  bool found = false;

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_LEAD); i++)
    {
      const Lead *lead = aeroplane_lead (aeroplane, i);
      const bool plain = !lead_is_joined (lead);

      for (int leg = 0; leg < lead_leg_count (lead); leg++)
        {
          const double away = away_from_lead (aeroplane, lead, leg, extension);

          if (away > nearest)
            continue;
          nearest = away;
          found = g_strcmp0 (lead_leg_part (lead, leg), servo->piece.id) == 0 || (plain && g_strcmp0 (lead->to, servo->piece.id) == 0);
        }
    }
  return found;
}

static bool
serves (const Aeroplane *aeroplane, const Part *part, const Part *servo)
{
  if (is_rod (part))
    return is_nearest (aeroplane, part, servo, is_pushrod (part) ? any : pushes_nothing);
  if (is_kind (part, "extension"))
    return extends (aeroplane, part, servo);
  if (!is_kind (part, "horn") && !is_kind (part, "clevis"))
    return false;
  const Part *rod = rod_at (aeroplane, part);
  return rod ? serves (aeroplane, rod, servo) : is_nearest (aeroplane, part, servo, any);
}

GPtrArray *
servo_fittings (const Aeroplane *aeroplane, const Part *servo)
{
  GPtrArray *made = g_ptr_array_new ();

  for (size_t i = 0; is_servo (servo) && i < aeroplane_count (aeroplane, PIECE_PART); i++)
    if (serves (aeroplane, aeroplane_part (aeroplane, i), servo))
      g_ptr_array_add (made, (Part *) aeroplane_part (aeroplane, i));
  return made;
}
