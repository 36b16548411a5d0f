#include "balance/arrange-space.h"

#include <math.h>

static bool
place_is_finite (ArrangePlace place)
{
  return isfinite (place.x) && isfinite (place.y) && isfinite (place.z);
}

static CoreStatus
check_part (const ArrangePart *part)
{
  if (part->range_count > RANGES_MOST)
    return CORE_TOO_MANY;
  if (!isfinite (part->mass) || !isfinite (part->length) || !isfinite (part->width) || !isfinite (part->height)
      || !place_is_finite (part->now))
    return CORE_NOT_FINITE;
  for (size_t i = 0; i < part->range_count; i++)
    {
      const ArrangeRange *range = &part->ranges[i];

      if (!place_is_finite ((ArrangePlace) { range->x_from, range->y_from, range->z_from })
          || !place_is_finite ((ArrangePlace) { range->x_to, range->y_to, range->z_to }))
        return CORE_NOT_FINITE;
    }
  return part->mass < 0 || part->length < 0 || part->width < 0 || part->height < 0 ? CORE_OUT_OF_RANGE : CORE_OK;
}

static CoreStatus
check_lead (const ArrangeCase *wanted, const ArrangeLead *lead)
{
  if (isinf (lead->length) || !isfinite (lead->slack))
    return CORE_NOT_FINITE;
  for (size_t i = 0; i < lead->via_count; i++)
    if (!place_is_finite (lead->via[i]))
      return CORE_NOT_FINITE;
  return lead->from >= wanted->part_count || lead->to >= wanted->part_count || lead->from == lead->to || lead->slack < 0 || lead->length < 0
       ? CORE_OUT_OF_RANGE : CORE_OK;
}

static CoreStatus
check_whole (const ArrangeCase *wanted, double mass)
{
  const double least_mass = 1e-9;

  if (!isfinite (wanted->other_mass) || !isfinite (wanted->other_x) || !isfinite (wanted->forward_limit_x)
      || !isfinite (wanted->aft_limit_x) || !isfinite (wanted->aim_x) || !isfinite (wanted->nose_x) || !isfinite (wanted->tail_x)
      || !isfinite (wanted->clearance))
    return CORE_NOT_FINITE;
  return wanted->other_mass < 0 || mass <= least_mass || wanted->forward_limit_x > wanted->aft_limit_x || wanted->clearance < 0
      || !(wanted->seconds > 0) ? CORE_OUT_OF_RANGE : CORE_OK;
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
