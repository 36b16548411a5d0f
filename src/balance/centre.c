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
  *sum = made;
  return CORE_OK;
}
