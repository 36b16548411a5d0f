#include "balance/arrange-alike.h"

#include <math.h>

static bool
ranges_are_alike (const ArrangePart *a, const ArrangePart *b)
{
  if (a->range_count != b->range_count)
    return false;
  for (size_t k = 0; k < a->range_count; k++)
    {
      const ArrangeRange *in_a = &a->ranges[k], *in_b = &b->ranges[k];

      if (in_a->x_from != in_b->x_from || in_a->x_to != in_b->x_to || in_a->y_from != in_b->y_from || in_a->y_to != in_b->y_to
          || in_a->z_from != in_b->z_from || in_a->z_to != in_b->z_to || in_a->room != in_b->room)
        return false;
    }
  return true;
}

static bool
ways_are_alike (const ArrangeLead *a, const ArrangeLead *b, bool turned)
{
  if (a->via_count != b->via_count || a->slack != b->slack || (a->length != b->length && !(isnan (a->length) && isnan (b->length))))
    return false;
  for (size_t i = 0; i < a->via_count; i++)
    {
      const ArrangePlace *at_a = &a->via[i], *at_b = &b->via[turned ? b->via_count - 1 - i : i];

      if (at_a->x != at_b->x || at_a->y != at_b->y || at_a->z != at_b->z)
        return false;
    }
  return true;
}

/* How many leads of part b are like this one of part a, to the same other end. */
static size_t
count_like (const ArrangeCase *wanted, const ArrangeLead *lead, size_t a, size_t b)
{
  const size_t other = lead->from == a ? lead->to : lead->from;
  size_t count = 0;

  for (size_t i = 0; i < wanted->lead_count; i++)
    {
      const ArrangeLead *that = &wanted->leads[i];

      if ((that->from == b && that->to == other) || (that->to == b && that->from == other))
        count += ways_are_alike (lead, that, (lead->from == a) != (that->from == b));
    }
  return count;
}

static bool
leads_are_alike (const ArrangeCase *wanted, size_t a, size_t b)
{
  size_t leads_of_a = 0, leads_of_b = 0;

  for (size_t i = 0; i < wanted->lead_count; i++)
    {
      const ArrangeLead *lead = &wanted->leads[i];
      const bool of_a = lead->from == a || lead->to == a, of_b = lead->from == b || lead->to == b;

      leads_of_a += of_a;
      leads_of_b += of_b;
      if (of_a && (of_b || count_like (wanted, lead, a, b) != count_like (wanted, lead, a, a)))
        return false;
    }
  return leads_of_a == leads_of_b;
}

bool
parts_are_alike (const ArrangeCase *wanted, size_t a, size_t b)
{
  const ArrangePart *one = &wanted->parts[a], *two = &wanted->parts[b];

  return !one->tie && !two->tie && one->mass == two->mass && one->length == two->length && one->width == two->width && one->height == two->height
      && ranges_are_alike (one, two) && leads_are_alike (wanted, a, b);
}

static double
way_between (ArrangePlace a, ArrangePlace b)
{
  return fabs (a.x - b.x) + fabs (a.y - b.y) + fabs (a.z - b.z);
}

/* Whether both are moved less when they change places; then they do. */
static bool
exchange (const ArrangeCase *wanted, Arrangement *made, size_t a, size_t b)
{
  const ArrangePlace at_a = made->places[a], at_b = made->places[b], was_a = wanted->parts[a].now, was_b = wanted->parts[b].now;
  const size_t range = made->ranges[a];
  const double least = 1e-9;

  if (way_between (at_a, was_b) + way_between (at_b, was_a) > way_between (at_a, was_a) + way_between (at_b, was_b) - least)
    return false;
  made->places[a] = at_b;
  made->places[b] = at_a;
  made->ranges[a] = made->ranges[b];
  made->ranges[b] = range;
  return true;
}

void
exchange_parts_alike (const ArrangeCase *wanted, Arrangement *made)
{
  bool changed = true;

  while (changed)
    {
      changed = false;
      for (size_t a = 0; a < wanted->part_count; a++)
        for (size_t b = a + 1; b < wanted->part_count; b++)
          changed = (parts_are_alike (wanted, a, b) && exchange (wanted, made, a, b)) || changed;
    }
}
