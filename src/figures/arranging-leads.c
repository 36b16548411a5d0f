#include "figures/arranging-private.h"

#include <math.h>
#include "document/part-box.h"
#include "figures/lead-need.h"
#include "figures/part-places.h"

static const double metre = ARRANGING_METRE;

/* The part at an end of a lead, asked as it stands where it was not yet; its number. */
static size_t
end_of_lead (Arranging *self, const Part *part)
{
  guint at;

  if (g_ptr_array_find (self->parts, part, &at))
    return at;
  arranging_ask_fixed (self, part);
  return self->parts->len - 1;
}

static const Part *
part_at (const Arranging *self, const Lead *lead, LeadLeg leg)
{
  const Part *part = aeroplane_part_by_id (self->aeroplane, lead_leg_part (lead, leg));

  return part && part->aboard ? part : NULL;
}

static void
add_stretch (GArray *via, const GArray *route, guint from, guint to, double z)
{
  for (guint i = from; i < to; i++)
    {
      const Point at = g_array_index (route, Point, i);
      const ArrangePlace place = { at.x * metre, at.y * metre, z * metre };

      g_array_append_val (via, place);
    }
}

static void
ask (Arranging *self, AskedLeg leg, const Part *from, const Part *to, GArray *takes_via)
{
  const double length = lead_leg_length (leg.lead, leg.leg);
  /* What the leg is, its ends and its slack never changes with where things are: only its way does. */
  const double longest = fmax (lead_longest_route (self->aeroplane, leg.lead, leg.leg, length), 0) + leg.beyond_mm;
  ArrangeLead asked = { .from = end_of_lead (self, from), .to = end_of_lead (self, to), .via_count = takes_via->len,
                        .length = isnan (length) ? NAN : longest * metre };

  asked.via = (ArrangePlace *) (void *) g_array_free (takes_via, FALSE);
  g_ptr_array_add (self->vias, (ArrangePlace *) asked.via);
  g_array_append_val (self->asked_leads, asked);
  g_array_append_val (self->legs, leg);
}

/* Where its way is taken from. */
static double
height_of (const Arranging *self, const Part *part)
{
  return aeroplane_part_by_id (self->routed, part->piece.id)->z;
}

static void
ask_plain (Arranging *self, const Lead *lead)
{
  const Part *from = part_at (self, lead, LEG_FROM), *to = part_at (self, lead, LEG_TO);
  g_autoptr (GArray) route = NULL;
  GArray *via;

  if (!from || !to || from == to || !(arranging_may_move (self, from) || arranging_may_move (self, to)))
    return;
  route = lead_route (self->routed, lead, LEG_FROM);
  via = g_array_new (FALSE, FALSE, sizeof (ArrangePlace));
  add_stretch (via, route, 1, route->len - 1, (height_of (self, from) + height_of (self, to)) / 2);
  ask (self, (AskedLeg) { lead, LEG_FROM, 0 }, from, to, via);
}

/* Any part that stays where it is, one of the lead's own before others: the joint is reached from it over a stretch that never changes. */
static const Part *
anchor_for (const Arranging *self, const Lead *lead, const Part *end)
{
  for (int leg = 0; leg < LEG_COUNT; leg++)
    {
      const Part *part = part_at (self, lead, leg);

      if (part && part != end && !arranging_may_move (self, part))
        return part;
    }
  for (size_t i = 0; i < aeroplane_count (self->aeroplane, PIECE_PART); i++)
    {
      const Part *part = aeroplane_part (self->aeroplane, i);

      if (part->aboard && part != end && part_stands_clear (part) && !arranging_may_move (self, part))
        return part;
    }
  return NULL;
}

/* From the joint to a part that may move. The question knows leads between two parts only: this one runs on from the joint to one that
 * stays. */
static void
ask_leg (Arranging *self, const Lead *lead, LeadLeg leg)
{
  const Part *end = part_at (self, lead, leg), *anchor = end ? anchor_for (self, lead, end) : NULL;
  const Point joint = lead_joint (self->routed, lead);
  g_autoptr (GArray) route = end ? lead_route (self->routed, lead, leg) : NULL;
  ArrangePlace at_joint;
  GArray *via;
  double z;

  if (!route || !anchor || !arranging_may_move (self, end))
    return;
  z = height_of (self, end) + (leg == LEG_TO ? -1 : 1) * lead_rise (self->routed, lead, leg);
  via = g_array_new (FALSE, FALSE, sizeof (ArrangePlace));
  if (leg == LEG_TO)
    for (guint i = route->len - 1; i-- > 1;)
      add_stretch (via, route, i, i + 1, z);
  else
    add_stretch (via, route, 1, route->len - 1, z);
  at_joint = (ArrangePlace) { joint.x * metre, joint.y * metre, z * metre };
  g_array_append_val (via, at_joint);
  ask (self, (AskedLeg) { lead, leg, hypot (point_distance (joint, (Point) { anchor->x, anchor->y }), anchor->z - z) }, end, anchor, via);
}

void
arranging_ask_leads (Arranging *self)
{
  for (size_t i = 0; i < aeroplane_count (self->aeroplane, PIECE_LEAD); i++)
    {
      const Lead *lead = aeroplane_lead (self->aeroplane, i);

      if (!lead_is_joined (lead))
        ask_plain (self, lead);
      for (int leg = 0; lead_is_joined (lead) && leg < LEG_COUNT; leg++)
        ask_leg (self, lead, leg);
    }
}
