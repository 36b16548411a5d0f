#include "document/lead-joining.h"
#include "document/part-class.h"

#include <math.h>

const char LEAD_TWO_INTO_ONE[] = "lead-two-into-one";

static const double OUT_IN_WING = 30, PAIR = 5;       /* mm */

static bool
are_three_parts (const Aeroplane *self, const char *one, const char *other, const char *to)
{
  return aeroplane_part_by_id (self, one) && aeroplane_part_by_id (self, other) && aeroplane_part_by_id (self, to)
         && g_strcmp0 (one, other) != 0 && g_strcmp0 (one, to) != 0 && g_strcmp0 (other, to) != 0;
}

static const Lead *
plain_lead (const Aeroplane *self, const char *from, const char *to)
{
  for (size_t i = 0; i < aeroplane_count (self, PIECE_LEAD); i++)
    {
      const Lead *lead = aeroplane_lead (self, i);

      if (!lead_is_joined (lead) && g_strcmp0 (lead->from, from) == 0 && g_strcmp0 (lead->to, to) == 0)
        return lead;
    }
  return NULL;
}

/* As it is laid, else as its class comes with. */
static double
own_length (const Aeroplane *self, const Catalogue *catalogue, const char *part, const Lead *plain)
{
  const char *kind = aeroplane_part_by_id (self, part)->kind;
  const CatalogueEntry *entry = kind ? catalogue_find (catalogue, kind) : NULL;

  return plain ? plain->length : entry && entry->lead > 0 ? entry->lead : NAN;
}

/* Each part keeps its own lead, longer by a leg of the catalogue's. */
static void
become_joined (Lead *lead, const Catalogue *catalogue, double length, double also_length)
{
  const CatalogueEntry *entry = catalogue_find (catalogue, LEAD_TWO_INTO_ONE);

  lead->length = length;
  lead->also_length = also_length;
  if (entry)
    {
      lead->length += entry->lead;
      lead->also_length += entry->lead;
      lead->to_length = entry->lead;
      lead->mass = entry->mass;
      lead->mass_sigma = entry->mass_sigma;
      g_free (lead->kind);
      lead->kind = g_strdup (LEAD_TWO_INTO_ONE);
    }
  for (size_t i = 0; i < lead->via_count; i++)
    lead->via[i].leg = LEG_FROM;
}

static Aeroplane *
without_lead (const Aeroplane *self, const Lead *lead)
{
  return lead ? aeroplane_without (self, &lead->piece) : aeroplane_ref ((Aeroplane *) self);
}

Aeroplane *
leads_joined (const Aeroplane *self, const Catalogue *catalogue, const char *one, const char *other, const char *to, char **id)
{
  const Lead *first, *second;
  Lead *lead;

  if (!are_three_parts (self, one, other, to))
    return NULL;
  first = plain_lead (self, one, to);
  second = plain_lead (self, other, to);
  lead = first ? (Lead *) piece_dup (&first->piece) : lead_new (one, to);
  lead->also = g_strdup (other);
  become_joined (lead, catalogue, own_length (self, catalogue, one, first), own_length (self, catalogue, other, second));
  g_autoptr (Aeroplane) rest = without_lead (self, second);
  if (!lead->piece.id)
    lead->piece.id = aeroplane_free_id (rest, "lead");
  *id = g_strdup (lead->piece.id);
  return first ? aeroplane_with_replaced (rest, &first->piece, &lead->piece) : aeroplane_with_added (rest, &lead->piece);
}

static bool
shares_a_joint (const Aeroplane *self, const Part *servo)
{
  for (size_t i = 0; i < aeroplane_count (self, PIECE_LEAD); i++)
    {
      const Lead *lead = aeroplane_lead (self, i);

      if (lead_is_joined (lead) && (g_strcmp0 (lead->from, servo->piece.id) == 0 || g_strcmp0 (lead->also, servo->piece.id) == 0))
        return true;
    }
  return false;
}

/* Which of them are asked for. */
typedef struct { const Aeroplane *aeroplane; const char *class_name; double least_out; const Part *not; } Wanted;

static bool
is_wanted (const Wanted *wanted, const Part *part)
{
  return part != wanted->not && part->piece.id && g_strcmp0 (part->class_name, wanted->class_name) == 0
         && fabs (part->y) >= wanted->least_out && !shares_a_joint (wanted->aeroplane, part);
}

static const Part *
nearest (const Wanted *wanted, Point place)
{
  const Part *best = NULL;
  double least = INFINITY;

  for (size_t i = 0; i < aeroplane_count (wanted->aeroplane, PIECE_PART); i++)
    {
      const Part *part = aeroplane_part (wanted->aeroplane, i);
      const double away = point_distance ((Point) { part->x, part->y }, place);

      if (!is_wanted (wanted, part) || away >= least)
        continue;
      best = part;
      least = away;
    }
  return best;
}

static Point
furthest_out (const Aeroplane *self)
{
  Point place = { 0, 0 };

  for (size_t i = 0; i < aeroplane_count (self, PIECE_PART); i++)
    {
      const Part *part = aeroplane_part (self, i);

      if (part_is_a (part, "servo") && !shares_a_joint (self, part) && fabs (part->y) >= fabs (place.y))
        place = (Point) { part->x, part->y };
    }
  return place;
}

static size_t
count_wanted (const Wanted *wanted)
{
  size_t count = 0;

  for (size_t i = 0; i < aeroplane_count (wanted->aeroplane, PIECE_PART); i++)
    count += is_wanted (wanted, aeroplane_part (wanted->aeroplane, i));
  return count;
}

bool
lead_joining_ends (const Aeroplane *self, const Point *place, const Part *ends[LEG_COUNT])
{
  const Wanted receivers = { self, "receiver", 0, NULL };
  const Point at = place ? *place : furthest_out (self);
  Wanted servos = { self, "servo", OUT_IN_WING, NULL };
  const Part *one, *other, *to = nearest (&receivers, at);

  if (count_wanted (&servos) < 2)
    servos.least_out = 0;
  if (count_wanted (&servos) < 2 || !to)
    return false;
  one = servos.not = nearest (&servos, at);
  const Point pair = { one->x, -one->y };
  other = nearest (&servos, pair);
  if (point_distance ((Point) { other->x, other->y }, pair) > PAIR)
    other = nearest (&servos, at);
  ends[LEG_FROM] = one, ends[LEG_ALSO] = other, ends[LEG_TO] = to;
  return true;
}
