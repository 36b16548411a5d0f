#include "balance/centre.h"

#include <math.h>
#include <stdbool.h>

/* Below this there is nothing to balance: a microgram, far under any scale of the trade. */
static const double least_mass = 1e-9;

void
mass_item_as_box (MassItem *item, double length, double width, double height)
{
  const double twelfth = item->mass / 12;

  item->own_roll = twelfth * (width * width + height * height);
  item->own_pitch = twelfth * (length * length + height * height);
  item->own_yaw = twelfth * (length * length + width * width);
}

static bool
item_is_finite (const MassItem *item)
{
  return isfinite (item->mass) && isfinite (item->mass_sigma) && isfinite (item->x) && isfinite (item->y)
      && isfinite (item->z) && isfinite (item->x_sigma) && isfinite (item->own_roll) && isfinite (item->own_pitch)
      && isfinite (item->own_yaw);
}

/* Mass and centre; the rest needs them first. */
static MassSum
sum_of_first_moments (const MassItem items[], size_t count)
{
  MassSum sum = { 0 };

  for (size_t i = 0; i < count; i++)
    {
      sum.mass += items[i].mass;
      sum.x += items[i].mass * items[i].x;
      sum.y += items[i].mass * items[i].y;
      sum.z += items[i].mass * items[i].z;
    }
  sum.x /= sum.mass;
  sum.y /= sum.mass;
  sum.z /= sum.mass;
  return sum;
}

/* Steiner's share of one item about the centre of all, and its share of the variance of x (times M²). */
static void
add_second_moments (MassSum *sum, const MassItem *item)
{
  const double x = item->x - sum->x, y = item->y - sum->y, z = item->z - sum->z;

  sum->roll += item->own_roll + item->mass * (y * y + z * z);
  sum->pitch += item->own_pitch + item->mass * (x * x + z * z);
  sum->yaw += item->own_yaw + item->mass * (x * x + y * y);
  sum->x_sigma += mass_item_x_variance (item, sum->x);
}

/* `part` is one over the mass of all. */
static MassShares
shares_of_place (const MassItem *item, double part, double arm)
{
  const double by_mass = arm * item->mass_sigma * part, by_place = item->mass * item->x_sigma * part;

  return (MassShares) { by_mass * by_mass, by_place * by_place, 0 };
}

static double
relative_deviation (const MassItem *item)
{
  return item->mass > 0 ? item->mass_sigma / item->mass : 0;
}

/* a and b are its distances from the axis. The centre moves too, but the sum about it is least there: to the first order it adds nothing. */
static MassShares
shares_of_inertia (const MassItem *item, double relative, double own, double a, double b)
{
  const double own_known = 0.1, square = a * a + b * b, place = item->x_sigma * item->x_sigma;
  const double by_mass = own * relative + square * item->mass_sigma;

  return (MassShares) { by_mass * by_mass, 4 * item->mass * item->mass * place * (square + place), own_known * own * own_known * own };
}

MassShares
mass_item_shares (const MassItem *item, const MassSum *centre, MassQuantity quantity)
{
  const double x = item->x - centre->x, y = item->y - centre->y, z = item->z - centre->z, relative = relative_deviation (item);

  switch (quantity)
    {
    case MASS_X:
      return shares_of_place (item, 1 / centre->mass, x);
    case MASS_Y:
      return shares_of_place (item, 1 / centre->mass, y);
    case MASS_Z:
      return shares_of_place (item, 1 / centre->mass, z);
    case MASS_ROLL:
      return shares_of_inertia (item, relative, item->own_roll, y, z);
    case MASS_PITCH:
      return shares_of_inertia (item, relative, item->own_pitch, x, z);
    default:
      return shares_of_inertia (item, relative, item->own_yaw, x, y);
    }
}

static double
variance_of (MassShares shares)
{
  return shares.by_mass + shares.by_place + shares.by_shape;
}

/* As mass_item_shares, but what all share is reckoned once: this follows every moved part. */
static void
find_deviations (const MassItem items[], size_t count, MassSum *sum)
{
  const double part = 1 / sum->mass;
  double across = 0, height = 0, roll = 0, pitch = 0, yaw = 0;

  for (size_t i = 0; i < count; i++)
    {
      const MassItem *item = &items[i];
      const double x = item->x - sum->x, y = item->y - sum->y, z = item->z - sum->z, relative = relative_deviation (item);

      across += variance_of (shares_of_place (item, part, y));
      height += variance_of (shares_of_place (item, part, z));
      roll += variance_of (shares_of_inertia (item, relative, item->own_roll, y, z));
      pitch += variance_of (shares_of_inertia (item, relative, item->own_pitch, x, z));
      yaw += variance_of (shares_of_inertia (item, relative, item->own_yaw, x, y));
    }
  sum->y_sigma = sqrt (across);
  sum->z_sigma = sqrt (height);
  sum->roll_sigma = sqrt (roll);
  sum->pitch_sigma = sqrt (pitch);
  sum->yaw_sigma = sqrt (yaw);
}

double
mass_item_x_variance (const MassItem *item, double centre_x)
{
  const double by_mass = (item->x - centre_x) * item->mass_sigma;
  const double by_place = item->mass * item->x_sigma;

  return by_mass * by_mass + by_place * by_place;
}

CoreStatus
mass_sum (const MassItem items[], size_t count, MassSum *sum)
{
  double mass = 0;
  MassSum made;

  for (size_t i = 0; i < count; i++)
    {
      if (!item_is_finite (&items[i]))
        return CORE_NOT_FINITE;
      mass += items[i].mass;
    }
  if (mass <= least_mass)
    return CORE_OUT_OF_RANGE;

  made = sum_of_first_moments (items, count);
  for (size_t i = 0; i < count; i++)
    add_second_moments (&made, &items[i]);
  made.x_sigma = sqrt (made.x_sigma) / made.mass;
  find_deviations (items, count, &made);
  *sum = made;
  return CORE_OK;
}
