#include "balance/arrange-order.h"

#include <math.h>

/* What is equal but for rounding, kg and m. */
static const double same_ballast = 1e-6, same_place = 1e-6;

static double
leads_and_moves (const ArrangeCase *wanted, const Arrangement *made)
{
  double sum = 0;

  for (size_t i = 0; i < wanted->lead_count; i++)
    sum += made->needed[i];
  for (size_t i = 0; i < wanted->part_count; i++)
    {
      const ArrangePlace at = made->places[i], now = wanted->parts[i].now;

      sum += fabs (at.y) / 100 + (fabs (at.x - now.x) + fabs (at.z - now.z)) / 1000;
    }
  return sum;
}

static bool
is_better (const ArrangeCase *wanted, const Arrangement *one, const Arrangement *other)
{
  const double off = fabs (one->x - wanted->aim_x), other_off = fabs (other->x - wanted->aim_x);

  if (fabs (one->ballast - other->ballast) > same_ballast)
    return one->ballast < other->ballast;
  if (fabs (off - other_off) > same_place)
    return off < other_off;
  return leads_and_moves (wanted, one) < leads_and_moves (wanted, other) - same_place;
}

void
arrangements_put_best_first (const ArrangeCase *wanted, Arrangements *made)
{
  for (size_t i = 1; i < made->count; i++)
    for (size_t k = i; k > 0 && is_better (wanted, &made->found[k], &made->found[k - 1]); k--)
      {
        const Arrangement later = made->found[k];

        made->found[k] = made->found[k - 1];
        made->found[k - 1] = later;
      }
  if (made->count)
    made->status = made->found[0].status;
}
