#pragma once
#include <math.h>
#include "balance/arrange.h"

/** Cases for the tests of the arrangement: a bay that a part's box must lie in, and what follows for its centre. m. */

typedef struct { double x_from, x_to, half_width, bottom, top; size_t room; } Bay;

/** Where the centre of a part of that size may stand in a bay. */
static inline ArrangeRange
range_in_bay (const Bay *bay, double length, double width, double height)
{
  return (ArrangeRange) { bay->x_from + length / 2, bay->x_to - length / 2, width / 2 - bay->half_width, bay->half_width - width / 2,
                          bay->bottom + height / 2, bay->top - height / 2, bay->room };
}

/** A range without extent, for a part that is fixed. */
static inline ArrangeRange
range_at (double x, double y, double z)
{
  return (ArrangeRange) { x, x, y, y, z, z, 99 };
}

/** Whether two boxes are apart by the clearance along some axis, to a thousandth of a millimetre. */
static inline bool
boxes_are_apart (const ArrangePart *a, ArrangePlace at_a, const ArrangePart *b, ArrangePlace at_b, double clearance)
{
  const double rounding = 1e-6;

  return fabs (at_a.x - at_b.x) >= (a->length + b->length) / 2 + clearance - rounding
      || fabs (at_a.y - at_b.y) >= (a->width + b->width) / 2 + clearance - rounding
      || fabs (at_a.z - at_b.z) >= (a->height + b->height) / 2 + clearance - rounding;
}

/** Whether an arrangement does all that a case asks for: ranges, boxes, leads, balance; to a thousandth of a millimetre. */
static inline bool
arrangement_holds (const ArrangeCase *wanted, const Arrangement *made)
{
  const double rounding = 1e-6;
  double mass = wanted->other_mass, moment = wanted->other_mass * wanted->other_x, x;

  for (size_t i = 0; i < wanted->part_count; i++)
    {
      const ArrangeRange *range = &wanted->parts[i].ranges[made->ranges[i]];
      const ArrangePlace at = made->places[i];

      if (at.x < range->x_from - rounding || at.x > range->x_to + rounding || at.y < range->y_from - rounding
          || at.y > range->y_to + rounding || at.z < range->z_from - rounding || at.z > range->z_to + rounding)
        return false;
      for (size_t k = 0; k < i; k++)
        if (wanted->parts[i].tie && wanted->parts[i].tie == wanted->parts[k].tie)
          {
            const ArrangePlace now = wanted->parts[i].now, then = wanted->parts[k].now, beside = made->places[k];

            if (fabs (at.x - beside.x - now.x + then.x) > rounding || fabs (at.y - beside.y - now.y + then.y) > rounding
                || fabs (at.z - beside.z - now.z + then.z) > rounding)
              return false;
          }
        else if (!boxes_are_apart (&wanted->parts[i], at, &wanted->parts[k], made->places[k], wanted->clearance))
          return false;
      mass += wanted->parts[i].mass;
      moment += wanted->parts[i].mass * at.x;
    }
  for (size_t i = 0; i < wanted->lead_count; i++)
    if (made->needed[i] > wanted->leads[i].length + rounding)
      return false;
  x = made->ballast > 0 ? (moment + made->ballast * made->ballast_x) / (mass + made->ballast) : moment / mass;
  return fabs (x - made->x) < rounding && x >= wanted->forward_limit_x - rounding && x <= wanted->aft_limit_x + rounding;
}
