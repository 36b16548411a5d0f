#include "figures/nose-figures.h"

#include <math.h>
#include <string.h>
#include "document/part-box.h"
#include "document/part-class.h"

/* mm; common practice, no source. */
static const double HUB = 9, MOUNT = 3, GAP_LEAST = 1.5;
static const double GAP_MOST_SPINNER = 3, GAP_AIM_SPINNER = 2, GAP_MOST_HUB = 8, GAP_AIM_HUB = 3;
/* mm: an outline that is as wide as the hub so near to its end is blunt. */
static const double BLUNT = 1;
/* mm: parts nearer to the shaft's line than that sit on it; those further along than that belong to something else, though a slim nose may
 * have a long shaft. */
static const double ON_SHAFT = 3, NEAR = 60, SHAFT_REACH = 120;

static bool
is_of_class (const Part *part, const char *class_name)
{
  return part->aboard && part_is_a (part, class_name);
}

static double fore (const Part *part) { return part->x - part_extent (part).x / 2; }
static double aft  (const Part *part) { return part->x + part_extent (part).x / 2; }

/* Of each class the one about the motor's shaft nearest to its front. */
typedef struct { const Part *propeller, *spinner, *cowl; } OnShaft;

static void
take_nearer (const Part **best, const Part *part, double front)
{
  if (!*best || fabs (part->x - front) < fabs ((*best)->x - front))
    *best = part;
}

static OnShaft
find_on_shaft (const Aeroplane *aeroplane, const Part *motor)
{
  const size_t count = aeroplane_count (aeroplane, PIECE_PART);
  const double front = fore (motor);
  OnShaft found = { NULL };

  for (size_t i = 0; i < count; i++)
    {
      const Part *part = aeroplane_part (aeroplane, i);

      if (fabs (part->y - motor->y) > ON_SHAFT || fabs (part->x - front) > SHAFT_REACH || !part->aboard)
        continue;
      if (part_is_a (part, "propeller"))
        take_nearer (&found.propeller, part, front);
      else if (part_is_a (part, "spinner"))
        take_nearer (&found.spinner, part, front);
      else if (part_is_a (part, "cowl"))
        take_nearer (&found.cowl, part, front);
    }
  return found;
}

/* NULL unless there is just one. */
static const Part *
only_one (const Aeroplane *aeroplane, const char *class_name)
{
  const Part *found = NULL;

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_PART); i++)
    if (is_of_class (aeroplane_part (aeroplane, i), class_name))
      {
        if (found)
          return NULL;
        found = aeroplane_part (aeroplane, i);
      }
  return found;
}

const Part *
nose_propeller_of (const Aeroplane *aeroplane, const Part *motor)
{
  const Part *propeller = find_on_shaft (aeroplane, motor).propeller;

  return propeller ? propeller : only_one (aeroplane, "motor") == motor ? only_one (aeroplane, "propeller") : NULL;
}

static bool
is_kind (const Part *part, const char *stem)
{
  return part->kind && g_str_has_prefix (part->kind, stem);
}

/* What holds the motor off the firewall: the mount among the parts that has a length, else the usual one. */
static double
mount_length (const Aeroplane *aeroplane, const Part *motor)
{
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_PART); i++)
    {
      const Part *part = aeroplane_part (aeroplane, i);

      if (part->aboard && is_kind (part, "mount-") && part->length > 0 && fabs (part->x - aft (motor)) <= NEAR
          && fabs (part->y - motor->y) <= ON_SHAFT)
        return part_extent (part).x;
    }
  return MOUNT;
}

static double
hub_radius (const NoseFigures *nose)
{
  return nose->spinner ? nose->spinner->width / 2 : nose->propeller->height / 2;
}

static bool
is_in_nose (const Part *motor, double front, double tail)
{
  return fabs (motor->y) <= ON_SHAFT && motor->x <= (front + tail) / 2;
}

/* A nose that ends narrower than what turns before it is drawn with that. */
static bool
is_pointed (const BodyProfile *profile, const NoseFigures *nose, double front)
{
  double half_width = NAN, bottom = NAN, top = NAN;

  body_profile_at (profile, front + BLUNT, &half_width, &bottom, &top);
  const double radius = isnan (half_width) ? (top - bottom) / 2 : half_width;
  return !(radius >= hub_radius (nose));
}

static NoseLack
find_front (const BodyProfile *profile, NoseFigures *nose, const Part *cowl, double rear_face)
{
  double front = NAN, tail = NAN;

  nose->cowl = cowl;
  if (nose->cowl && !(nose->cowl->length > 0))
    return NOSE_COWL_SIZE;
  if (nose->cowl)
    nose->front_x_mm = fore (nose->cowl);
  else if (!profile || !body_profile_ends (profile, &front, &tail) || !is_in_nose (nose->motor, front, tail))
    return NOSE_NO_FRONT;
  else if (rear_face > front && is_pointed (profile, nose, front))
    return NOSE_POINTED;
  else
    nose->front_x_mm = front;
  return isfinite (nose->front_x_mm) ? NOSE_KNOWN : NOSE_NO_FRONT;
}

static void
find_former (const Aeroplane *aeroplane, NoseFigures *nose)
{
  const double x = nose->front_x_mm + nose->firewall_then_mm;

  for (size_t b = 0; b < aeroplane_count (aeroplane, PIECE_BODY); b++)
    for (size_t i = 0; i < aeroplane_body (aeroplane, b)->former_count; i++)
      {
        const NamedPlace *former = &aeroplane_body (aeroplane, b)->formers[i];
        if (former->name && *former->name && (!nose->former || fabs (former->place - x) < fabs (nose->former->place - x)))
          nose->former = former;
      }
  nose->behind_former_mm = nose->former ? x - nose->former->place : NAN;
}

/* Down-thrust and right thrust take the shaft's front end down and to starboard of its foot. */
static void
find_offsets (const Aeroplane *aeroplane, NoseFigures *nose)
{
  const Thrust *thrust = aeroplane_count (aeroplane, PIECE_THRUST) > 0 ? (const Thrust *) aeroplane_nth (aeroplane, PIECE_THRUST, 0) : NULL;

  if (!thrust)
    return;
  nose->to_port_mm = nose->firewall_then_mm * tan (thrust->right * G_PI / 180);
  nose->up_mm = nose->firewall_then_mm * tan (thrust->down * G_PI / 180);
}

static double
out_of_band (double gap, bool spinner)
{
  const double most = spinner ? GAP_MOST_SPINNER : GAP_MOST_HUB, aim = spinner ? GAP_AIM_SPINNER : GAP_AIM_HUB;
  const double rounding = 1e-6;

  return gap >= GAP_LEAST - rounding && gap <= most + rounding ? 0 : gap - aim;
}

static NoseLack
look_at_nose (const Aeroplane *aeroplane, const BodyProfile *profile, const Part *motor, NoseFigures *nose)
{
  NoseFigures made = { .motor = motor };
  NoseLack lack;

  if (!motor || !is_of_class (motor, "motor"))
    return NOSE_NO_MOTOR;
  const OnShaft found = find_on_shaft (aeroplane, motor);
  made.propeller = found.propeller;
  made.spinner = found.spinner;
  if (!(motor->length > 0) || !made.propeller)
    return made.propeller ? NOSE_NO_SIZE : NOSE_NO_PROPELLER;
  const double plane = made.propeller->x, hub = made.propeller->length > 0 ? part_extent (made.propeller).x : HUB;
  const double rear_face = made.spinner ? aft (made.spinner) : plane + hub / 2;
  lack = plane > motor->x ? NOSE_PUSHER : find_front (profile, &made, found.cowl, rear_face);
  if (lack != NOSE_KNOWN)
    return lack;
  made.plane_ahead_mm = made.front_x_mm - plane;
  made.shaft_mm = fore (motor) - plane;
  made.gap_mm = made.front_x_mm - rear_face;
  made.out_mm = out_of_band (made.gap_mm, made.spinner);
  made.firewall_mm = aft (motor) + mount_length (aeroplane, motor) - made.front_x_mm;
  made.firewall_then_mm = made.firewall_mm + made.out_mm;
  find_former (aeroplane, &made);
  find_offsets (aeroplane, &made);
  *nose = made;
  return NOSE_KNOWN;
}

bool
nose_figures_within (const Aeroplane *aeroplane, const BodyProfile *profile, const Part *motor, NoseFigures *nose)
{
  return look_at_nose (aeroplane, profile, motor, nose) == NOSE_KNOWN;
}

double
nose_firewall_face (const Aeroplane *aeroplane, const BodyProfile *profile, const Part *motor)
{
  NoseFigures nose;

  return nose_figures_within (aeroplane, profile, motor, &nose) ? nose.front_x_mm + nose.firewall_mm : aft (motor);
}

NoseLack
nose_look (const Aeroplane *aeroplane, const Part *motor, NoseFigures *nose)
{
  const bool has_body = motor && is_of_class (motor, "motor") && aeroplane_count (aeroplane, PIECE_BODY) > 0;
  BodyProfile *profile = has_body ? body_profile_new (aeroplane_body (aeroplane, 0)) : NULL;
  const NoseLack lack = look_at_nose (aeroplane, profile, motor, nose);

  body_profile_free (profile);
  return lack;
}

bool
nose_figures_of (const Aeroplane *aeroplane, const Part *motor, NoseFigures *nose)
{
  return nose_look (aeroplane, motor, nose) == NOSE_KNOWN;
}

size_t
nose_figures_all (const Aeroplane *aeroplane, NoseFigures noses[NOSE_MOST])
{
  size_t motors = 0, count = 0;

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_PART) && motors < NOSE_MOST; i++)
    if (is_of_class (aeroplane_part (aeroplane, i), "motor"))
      {
        motors++;
        count += nose_figures_of (aeroplane, aeroplane_part (aeroplane, i), &noses[count]);
      }
  return count;
}

/* What is bolted to the motor, or holds it. */
static bool
goes_along (const Part *part, const NoseFigures *nose)
{
  if (part == nose->motor || part == nose->propeller || part == nose->spinner)
    return true;
  return (is_kind (part, "mount-") || is_kind (part, "adapter-") || is_kind (part, "firewall"))
         && fabs (part->y - nose->motor->y) <= ON_SHAFT && fabs (part->x - nose->motor->x) <= NEAR;
}

static Aeroplane *
with_moved (Aeroplane *takes, const Part *part, double dx)
{
  Part *next = (Part *) piece_dup (&part->piece);
  Aeroplane *made;

  next->x += dx;
  next->rail_from += dx;
  next->rail_to += dx;
  made = aeroplane_with_replaced (takes, &part->piece, &next->piece);
  aeroplane_unref (takes);
  return made;
}

static Aeroplane *
with_thrust_moved (Aeroplane *takes, double dx)
{
  if (aeroplane_count (takes, PIECE_THRUST) == 0)
    return takes;
  const Piece *old = aeroplane_nth (takes, PIECE_THRUST, 0);
  Thrust *next = (Thrust *) piece_dup (old);
  next->x += dx;
  Aeroplane *made = aeroplane_with_replaced (takes, old, &next->piece);
  aeroplane_unref (takes);
  return made;
}

Aeroplane *
nose_settled (const Aeroplane *aeroplane, const Part *motor)
{
  Aeroplane *made;
  NoseFigures nose;

  if (!nose_figures_of (aeroplane, motor, &nose))
    return NULL;
  made = aeroplane_ref (aeroplane);
  if (nose.out_mm == 0)
    return made;
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_PART); i++)
    if (goes_along (aeroplane_part (aeroplane, i), &nose))
      made = with_moved (made, aeroplane_part (made, i), nose.out_mm);
  return with_thrust_moved (made, nose.out_mm);
}
