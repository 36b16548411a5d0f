#include "balance/arrange-space.h"

#include <math.h>

/* m and kg: far beyond any model, and all the linear program can take without losing the micrometre. */
static const double far = 1e3, heavy = 1e6;

static bool
place_is_finite (ArrangePlace place)
{
  return isfinite (place.x) && isfinite (place.y) && isfinite (place.z);
}

static bool
place_is_near (ArrangePlace place)
{
  return fabs (place.x) <= far && fabs (place.y) <= far && fabs (place.z) <= far;
}

static CoreStatus
check_place (ArrangePlace place)
{
  return !place_is_finite (place) ? CORE_NOT_FINITE : !place_is_near (place) ? CORE_OUT_OF_RANGE : CORE_OK;
}

static CoreStatus
check_part (const ArrangePart *part)
{
  CoreStatus status;

  if (part->range_count > RANGES_MOST)
    return CORE_TOO_MANY;
  if (!isfinite (part->mass))
    return CORE_NOT_FINITE;
  if ((status = check_place ((ArrangePlace) { part->length, part->width, part->height })) || (status = check_place (part->now)))
    return status;
  for (size_t i = 0; i < part->range_count; i++)
    {
      const ArrangeRange *range = &part->ranges[i];

      if ((status = check_place ((ArrangePlace) { range->x_from, range->y_from, range->z_from }))
          || (status = check_place ((ArrangePlace) { range->x_to, range->y_to, range->z_to })))
        return status;
    }
  return part->mass < 0 || part->length < 0 || part->width < 0 || part->height < 0 ? CORE_OUT_OF_RANGE : CORE_OK;
}

static CoreStatus
check_lead (const ArrangeCase *wanted, const ArrangeLead *lead)
{
  CoreStatus status;

  if (isinf (lead->length) || !isfinite (lead->slack))
    return CORE_NOT_FINITE;
  for (size_t i = 0; i < lead->via_count; i++)
    if ((status = check_place (lead->via[i])))
      return status;
  if (lead->length > far || lead->slack > far)
    return CORE_OUT_OF_RANGE;
  return lead->from >= wanted->part_count || lead->to >= wanted->part_count || lead->from == lead->to || lead->slack < 0 || lead->length < 0
       ? CORE_OUT_OF_RANGE : CORE_OK;
}

static CoreStatus
check_whole (const ArrangeCase *wanted, double mass)
{
  const double least_mass = 1e-9;
  CoreStatus status;

  if (!isfinite (wanted->other_mass))
    return CORE_NOT_FINITE;
  if ((status = check_place ((ArrangePlace) { wanted->forward_limit_x, wanted->aft_limit_x, wanted->aim_x }))
      || (status = check_place ((ArrangePlace) { wanted->nose_x, wanted->tail_x, wanted->other_x }))
      || (status = check_place ((ArrangePlace) { wanted->clearance, 0, 0 })))
    return status;
  return wanted->other_mass < 0 || !(mass > least_mass) || mass > heavy || wanted->forward_limit_x > wanted->aft_limit_x
      || wanted->clearance < 0 || !(wanted->seconds > 0) ? CORE_OUT_OF_RANGE : CORE_OK;
}

CoreStatus
arrange_check (const ArrangeCase *wanted)
{
  double mass = wanted->other_mass;
  CoreStatus status;

  if (wanted->part_count > PARTS_MOST || wanted->lead_count > LEADS_MOST)
    return CORE_TOO_MANY;
  for (size_t i = 0; i < wanted->part_count; i++)
    {
      if ((status = check_part (&wanted->parts[i])))
        return status;
      mass += wanted->parts[i].mass;
    }
  for (size_t i = 0; i < wanted->lead_count; i++)
    if ((status = check_lead (wanted, &wanted->leads[i])))
      return status;
  return check_whole (wanted, mass);
}
