#include "figures/arranging-private.h"

#include <math.h>
#include "document/changes.h"
#include "figures/lead-need.h"

/* mm: what a lead is short by less nobody is told of. */
static const double REACHES = 0.5;
/* How many steps are taken, and into how many shares the time is parted. */
enum { STEPS = 24, SHARES = 8, BEGINNINGS = 3 };
/* kg, m: what differs by less is the same. */
static const double SAME_BALLAST = 1e-6, SAME_PLACE = 1e-6;

/* Whether it is elsewhere when parts are: the joint between two parts, a usual way out of a wing. */
static bool
way_moves (const Arranging *self, const AskedLeg *asked)
{
  const Lead *lead = asked->lead;
  const Part *const ends[] = { aeroplane_part_by_id (self->aeroplane, lead->from), aeroplane_part_by_id (self->aeroplane, lead->to),
                               lead->also ? aeroplane_part_by_id (self->aeroplane, lead->also) : NULL };
  bool moves = false;

  for (size_t i = 0; i < G_N_ELEMENTS (ends); i++)
    moves = moves || (ends[i] && arranging_may_move (self, ends[i]));
  return moves && ((lead_is_joined (lead) && !isfinite (lead->joint_x)) || lead_runs_as_usual (self->aeroplane, lead, asked->leg));
}

/* Whether any of these that move has a length to keep to. */
static bool
ways_matter (const Arranging *self)
{
  for (guint i = 0; i < self->legs->len; i++)
    if (isfinite (arranging_lead_length (self, i)) && way_moves (self, &g_array_index (self->legs, AskedLeg, i)))
      return true;
  return false;
}

/* A joint goes with the two that meet there, a usual way with a part in a wing. */
static bool
moves_a_way (const Arranging *self, const Part *part)
{
  const char *id = part->piece.id;

  for (guint i = 0; i < self->legs->len; i++)
    {
      const AskedLeg *asked = &g_array_index (self->legs, AskedLeg, i);
      const Lead *lead = asked->lead;
      const bool meets = lead_is_joined (lead) && (g_strcmp0 (id, lead->from) == 0 || g_strcmp0 (id, lead->also) == 0);
      const bool is_end = g_strcmp0 (id, lead->from) == 0 || g_strcmp0 (id, lead->to) == 0 || g_strcmp0 (id, lead->also) == 0;

      if ((meets || (part->of && is_end)) && way_moves (self, asked))
        return true;
    }
  return false;
}

/* Parts that move ways stay within `reach`, m, of where they are in `routed`, for whose ways the question is. */
static void
hold_near (Arranging *again, const Arranging *self, double reach)
{
  const double metre = ARRANGING_METRE;
  guint range = 0;

  g_array_append_vals (again->ranges, self->ranges->data, self->ranges->len);
  g_array_append_vals (again->asked, self->asked->data, self->asked->len);
  for (guint i = 0; i < again->asked->len; i++)
    {
      ArrangePart *part = &g_array_index (again->asked, ArrangePart, i);
      const char *id = ((const Part *) g_ptr_array_index (self->parts, i))->piece.id;
      const Part *at = aeroplane_part_by_id (again->routed, id);
      const bool held = i < self->movable && moves_a_way (self, at);

      part->ranges = &g_array_index (again->ranges, ArrangeRange, range);
      for (size_t k = 0; k < part->range_count; k++, range++)
        if (held)
          {
            ArrangeRange *of = &g_array_index (again->ranges, ArrangeRange, range);

            of->x_from = fmax (of->x_from, at->x * metre - reach);
            of->x_to = fmin (of->x_to, at->x * metre + reach);
            of->y_from = fmax (of->y_from, at->y * metre - reach);
            of->y_to = fmin (of->y_to, at->y * metre + reach);
            of->z_from = fmax (of->z_from, at->z * metre - reach);
            of->z_to = fmin (of->z_to, at->z * metre + reach);
          }
    }
  again->wanted.parts = (const ArrangePart *) (void *) again->asked->data;
}

/* Of any length, or shorter by what the way may grow by while parts stay so near: a place on it goes up to twice as far as they do, where
 * a wing's root chord is twice that at the part. */
static void
allow_for_moving (Arranging *again, const Arranging *self, double reach, bool lax)
{
  for (guint i = 0; i < again->legs->len; i++)
    if (way_moves (self, &g_array_index (again->legs, AskedLeg, i)))
      {
        ArrangeLead *lead = &g_array_index (again->asked_leads, ArrangeLead, i);

        lead->length = lax ? NAN : fmax (lead->length - 2 * reach, 0);
      }
}

/* The question by the ways of another aeroplane, from which parts that move ways stay within `reach`, m; `lax`: their leads are
 * of any length. */
static CoreStatus
search (const Arranging *self, const Aeroplane *routed, double reach, bool lax, size_t most, Arrangements *found)
{
  Arranging again = *self;
  CoreStatus status;

  again.routed = routed;
  again.legs = g_array_new (FALSE, FALSE, sizeof (AskedLeg));
  again.vias = g_ptr_array_new_with_free_func (g_free);
  again.asked_leads = g_array_new (FALSE, FALSE, sizeof (ArrangeLead));
  again.asked = g_array_new (FALSE, FALSE, sizeof (ArrangePart));
  again.ranges = g_array_new (FALSE, FALSE, sizeof (ArrangeRange));
  hold_near (&again, self, reach);
  arranging_ask_leads (&again);
  allow_for_moving (&again, self, reach, lax);
  again.wanted.leads = (const ArrangeLead *) (void *) again.asked_leads->data;
  again.wanted.lead_count = again.asked_leads->len;
  again.wanted.seconds = self->wanted.seconds / SHARES;
  status = arrange (&again.wanted, most, found);
  g_array_unref (again.legs);
  g_ptr_array_unref (again.vias);
  g_array_unref (again.asked_leads);
  g_array_unref (again.asked);
  g_array_unref (again.ranges);
  return status;
}

/* By how much a leg that nobody asked about, for no part that moves is at its end, is short by more than it was; 0: none is. */
static double
falls_short (const Arranging *self, const Aeroplane *then)
{
  double most = 0;

  for (size_t i = 0; i < aeroplane_count (then, PIECE_LEAD); i++)
    for (int leg = 0; leg < lead_leg_count (aeroplane_lead (then, i)); leg++)
      {
        const Lead *lead = aeroplane_lead (then, i);
        const double was = lead_need_of (self->aeroplane, lead, leg).missing, is = lead_need_of (then, lead, leg).missing;

        if (is > fmax (REACHES, was + REACHES))
          most = fmax (most, is);
      }
  return most;
}

/* What is told where nothing reaches: the lead that is short by the most, where that is least. */
static void
take_nearest (NearestWay *nearest, size_t lead, double missing_mm, double way)
{
  if (!nearest->met || missing_mm < nearest->missing_mm)
    *nearest = (NearestWay) { true, lead, missing_mm, way };
}

/* What its leads need then, in the question's terms; whether all reach. */
static bool
take_ways (const Arranging *self, Arrangement *found)
{
  g_autoptr (Aeroplane) then = arranging_applied_bare (self, found);
  double worst = falls_short (self, then);
  size_t lead = (size_t) ARRANGE_NONE;

  for (guint i = 0; i < self->legs->len; i++)
    {
      const AskedLeg *asked = &g_array_index (self->legs, AskedLeg, i);
      const LeadNeed need = lead_need_of (then, asked->lead, asked->leg);

      found->needed[i] = (need.route + asked->beyond_mm) * ARRANGING_METRE;
      if (need.missing > fmax (REACHES, worst))
        {
          worst = need.missing;
          lead = i;
        }
    }
  if (worst > 0)
    take_nearest (self->nearest, lead, worst, lead < self->legs->len ? found->needed[lead] : NAN);
  return !(worst > 0);
}

static void
drop (Arrangements *found, size_t index)
{
  Arrangements one = { .count = 1, .found = { found->found[index] } };

  arrangements_clear (&one);
  found->count--;
  for (size_t i = index; i < found->count; i++)
    found->found[i] = found->found[i + 1];
}

/* Keeps those whose leads reach by the ways they have then. */
static void
keep_those_that_reach (const Arranging *self, Arrangements *found)
{
  for (size_t i = 0; i < found->count;)
    if (take_ways (self, &found->found[i]))
      i++;
    else
      drop (found, i);
  found->status = found->count ? found->found[0].status : found->status == ARRANGE_IMPOSSIBLE ? ARRANGE_IMPOSSIBLE : ARRANGE_NOT_FOUND;
}

static bool
is_better (const Arranging *self, const Arrangements *one, const Arrangements *other)
{
  const double aim = self->wanted.aim_x;

  if (!one->count || !other->count)
    return one->count > 0;
  if (fabs (one->found[0].ballast - other->found[0].ballast) > SAME_BALLAST)
    return one->found[0].ballast < other->found[0].ballast;
  return fabs (one->found[0].x - aim) < fabs (other->found[0].x - aim) - SAME_PLACE;
}

/* Takes what was found where it is better; `one` is then empty. */
static bool
take_better (const Arranging *self, Arrangements *one, Arrangements *best)
{
  const bool better = is_better (self, one, best);

  if (better)
    {
      arrangements_clear (best);
      *best = *one;
      *one = (Arrangements) { .count = 0 };
    }
  arrangements_clear (one);
  return better;
}

/* With parts that move ways at one end of where they may be: 0 as they are, 1 the fore end, 2 the aft end. */
static Aeroplane *
begun_at (const Arranging *self, int end)
{
  Aeroplane *now = aeroplane_ref (self->aeroplane);

  for (guint i = 0; i < self->movable && end > 0; i++)
    {
      const ArrangePart *asked = &self->wanted.parts[i];
      const Part *part = aeroplane_part_by_id (now, ((const Part *) g_ptr_array_index (self->parts, i))->piece.id);
      Aeroplane *last = now;

      if (!asked->range_count || !moves_a_way (self, part))
        continue;
      const double x = end == 1 ? asked->ranges[0].x_from : asked->ranges[asked->range_count - 1].x_to;
      now = change_part_place (last, part->piece.id, x / ARRANGING_METRE, part->y, part->z);
      aeroplane_unref (last);
    }
  return now;
}

/* By the ways of one of three beginnings, with parts that move ways where they are then. */
static CoreStatus
begin (const Arranging *self, size_t most, Arrangements *best)
{
  CoreStatus status = CORE_OK;

  for (int end = 0; end < BEGINNINGS && !best->count && status == CORE_OK; end++)
    {
      g_autoptr (Aeroplane) routed = begun_at (self, end);
      Arrangements found = { .count = 0 };

      status = search (self, routed, 0, false, most, &found);
      keep_those_that_reach (self, &found);
      take_better (self, &found, best);
    }
  return status;
}

/* Step after step by the ways of the step before, ever nearer to that while nothing better reaches. */
static CoreStatus
search_in_steps (const Arranging *self, size_t most, Arrangements *best)
{
  const double first = 8e-3, least = 0.9e-3;
  CoreStatus status = begin (self, most, best);
  double reach = first;

  for (int step = 0; step < STEPS && reach > least && best->count && status == CORE_OK; step++)
    {
      g_autoptr (Aeroplane) routed = arranging_applied_bare (self, &best->found[0]);
      Arrangements found = { .count = 0 };

      status = search (self, routed, reach, false, most, &found);
      keep_those_that_reach (self, &found);
      if (!take_better (self, &found, best))
        reach /= 2;
    }
  return status;
}

/* With ways of any length there is less ballast to beat than with any others: `*least`, kg; −1 where that is not proved. */
static CoreStatus
search_lax (const Arranging *self, size_t most, double *least, Arrangements *best)
{
  Arrangements found = { .count = 0 };
  const CoreStatus status = search (self, self->aeroplane, INFINITY, true, most, &found);

  *least = status == CORE_OK && found.count && found.status == ARRANGE_PROVED ? found.found[0].ballast : -1;
  keep_those_that_reach (self, &found);
  take_better (self, &found, best);
  return status;
}

/* How little a lead is short by at each of the beginnings, where none reaches. */
static CoreStatus
come_nearer (const Arranging *self)
{
  CoreStatus status = CORE_OK;

  for (int end = 0; end < BEGINNINGS && status == CORE_OK; end++)
    {
      g_autoptr (Aeroplane) routed = begun_at (self, end);
      Arrangements found = { .count = 0 };

      status = search (self, routed, 0, true, 1, &found);
      keep_those_that_reach (self, &found);
      arrangements_clear (&found);
    }
  return status;
}

/* Where ways move what is found by those of now comes first; it is proved where no ways at all do with less ballast. */
static CoreStatus
find_routed (const Arranging *self, size_t most, Arrangements *found)
{
  CoreStatus status = arrange (&self->wanted, most, found);
  double least = -1;

  if (status)
    return status;
  keep_those_that_reach (self, found);
  if (!ways_matter (self) || (found->count && found->found[0].ballast < SAME_BALLAST))
    return CORE_OK;
  status = search_lax (self, most, &least, found);
  if (status == CORE_OK && !(found->count && found->found[0].ballast <= least + SAME_BALLAST))
    status = search_in_steps (self, most, found);
  if (status == CORE_OK && found->count && !(found->found[0].ballast <= least + SAME_BALLAST))
    {
      found->status = found->found[0].status = ARRANGE_BEST_FOUND;
      found->found[0].leads_gap = 0;
    }
  if (status)
    arrangements_clear (found);
  return status;
}

CoreStatus
arranging_find_routed (const Arranging *self, size_t most, Arrangements *found, NearestWay *nearest)
{
  Arranging asked = *self;
  CoreStatus status;

  *nearest = (NearestWay) { .lead = (size_t) ARRANGE_NONE, .way = NAN };
  asked.nearest = nearest;
  status = find_routed (&asked, most, found);
  /* By the ways of now nothing may do; by those of then something else would, but for a lead: that is no proof. */
  if (status == CORE_OK && !found->count && nearest->met)
    {
      found->status = ARRANGE_NOT_FOUND;
      status = come_nearer (&asked);
    }
  return status;
}
