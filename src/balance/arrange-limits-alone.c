#include "balance/arrange-limits-private.h"

#include <math.h>

#include "balance/arrange-fill.h"
#include "balance/arrange-node.h"

static const double mm = 1000;
/* A millimetre's ten-thousandth is no contradiction. */
static const double rounding = 1e-4;

void
findings_add (Findings *self, ArrangeLimit found)
{
  if (self->count < self->most)
    self->limits[self->count++] = found;
}

static ArrangeLimit
limit_of (ArrangeLimitKind kind)
{
  return (ArrangeLimit) { .kind = kind, .lead = (size_t) ARRANGE_NONE, .room = (size_t) ARRANGE_NONE, .alone = true };
}

/* By how much the part is too long for a range, along the axis where that is most. */
static double
excess_in (const ArrangeRange *range, int *axis)
{
  const double excess[AXES] = { range->x_from - range->x_to, range->y_from - range->y_to, range->z_from - range->z_to };

  *axis = 0;
  for (int i = 1; i < AXES; i++)
    if (excess[i] > excess[*axis])
      *axis = i;
  return excess[*axis];
}

static void
add_part_without_room (Findings *self, size_t part)
{
  const ArrangePart *given = &self->wanted->parts[part];
  ArrangeLimit found = limit_of (ARRANGE_NO_ROOM);

  found.parts[found.part_count++] = part;
  found.needed = INFINITY;
  for (size_t k = 0; k < given->range_count; k++)
    {
      int axis;
      const double excess = excess_in (&given->ranges[k], &axis);

      if (excess < found.needed)
        {
          found.needed = excess;
          found.axis = axis;
          found.room = given->ranges[k].room;
        }
    }
  findings_add (self, found);
}

/* The places of two boxes, or of one box and a point, that are nearest to each other. */
static void
nearest_places (const Span *a, const Span *b, double in_a[AXES], double in_b[AXES])
{
  for (size_t axis = 0; axis < AXES; axis++)
    {
      in_a[axis] = fmin (fmax (b->low[axis], a->low[axis]), a->high[axis]);
      in_b[axis] = fmin (fmax (in_a[axis], b->low[axis]), b->high[axis]);
    }
}

static Span
span_at (const double place[AXES])
{
  return (Span) { { place[0], place[1], place[2] }, { place[0], place[1], place[2] } };
}

static double
least_needed (const SpaceLead *lead, const Span *from, const Span *to, double at_from[AXES], double at_to[AXES])
{
  const Span first = span_at (lead->first), last = span_at (lead->last);
  double unused[AXES];

  nearest_places (from, lead->over ? &first : to, at_from, lead->over ? unused : at_to);
  if (lead->over)
    nearest_places (to, &last, at_to, unused);
  return space_lead_needed (lead, at_from, at_to);
}

static ArrangePlace
place_of (const double at[AXES])
{
  return (ArrangePlace) { at[0] / mm, at[1] / mm, at[2] / mm };
}

static void
add_lead_that_never_reaches (Findings *self, size_t index)
{
  const SpaceLead *lead = &self->space->leads[index];
  const SpacePart *from = &self->space->parts[lead->from], *to = &self->space->parts[lead->to];
  ArrangeLimit found = limit_of (ARRANGE_LEAD_TOO_SHORT);
  double least = INFINITY;

  for (size_t i = 0; i < from->range_count; i++)
    for (size_t k = 0; k < to->range_count; k++)
      {
        double at_from[AXES], at_to[AXES];
        const double needed = least_needed (lead, &from->ranges[i], &to->ranges[k], at_from, at_to);

        if (needed >= least)
          continue;
        least = needed;
        found.nearest[0] = place_of (at_from);
        found.nearest[1] = place_of (at_to);
      }
  if (!isfinite (least) || least <= lead->limit + rounding)
    return;
  found.lead = index;
  found.parts[0] = lead->from;
  found.parts[1] = lead->to;
  found.part_count = 2;
  found.needed = least / mm;
  found.had = lead->limit / mm;
  findings_add (self, found);
}

/* The box around a part's ranges when all are of this room, else false. */
static bool
stands_only_in (const SpacePart *part, size_t room, Span *span)
{
  for (size_t k = 0; k < part->range_count; k++)
    {
      if (part->rooms[k] != room)
        return false;
      for (size_t axis = 0; axis < AXES; axis++)
        {
          span->low[axis] = k ? fmin (span->low[axis], part->ranges[k].low[axis]) : part->ranges[k].low[axis];
          span->high[axis] = k ? fmax (span->high[axis], part->ranges[k].high[axis]) : part->ranges[k].high[axis];
        }
    }
  return part->range_count > 0;
}

static void
add_room_that_is_too_full (Findings *self, size_t room)
{
  ArrangeLimit found = limit_of (ARRANGE_TOO_FULL);
  Fill fill = { .count = 0 };
  double filled[PARTS_MOST], had, needed;
  Span span;

  for (size_t i = 0; i < self->space->part_count; i++)
    if (self->space->parts[i].moves && self->space->parts[i].leader == i && stands_only_in (&self->space->parts[i], room, &span))
      {
        fill_add (&fill, self->space, i, &span);
        if (found.part_count < ARRANGE_LIMIT_PARTS)
          found.parts[found.part_count++] = i;
      }
  needed = fill_lengths (&fill, self->space, filled);
  had = fill.around.high[0] - fill.around.low[0];
  if (fill.count < 2 || needed <= had + rounding)
    return;
  found.room = room;
  found.needed = (needed - self->space->clearance) / mm;
  found.had = (had - self->space->clearance) / mm;
  findings_add (self, found);
}

static bool
room_was_met (const Space *space, size_t part, size_t range)
{
  for (size_t i = 0; i <= part; i++)
    for (size_t k = 0; k < (i < part ? space->parts[i].range_count : range); k++)
      if (space->parts[i].rooms[k] == space->parts[part].rooms[range])
        return true;
  return false;
}

static bool
pair_goes_together (const Space *space, const SpacePair *pair)
{
  const SpacePart *a = &space->parts[pair->a], *b = &space->parts[pair->b];

  for (size_t i = 0; i < a->range_count; i++)
    for (size_t k = 0; k < b->range_count; k++)
      for (size_t axis = 0; axis < AXES; axis++)
        if (fmax (b->ranges[k].high[axis] - a->ranges[i].low[axis], a->ranges[i].high[axis] - b->ranges[k].low[axis])
            >= pair->apart[axis] - rounding)
          return true;
  return false;
}

static void
add_pair_that_does_not_go_together (Findings *self, const SpacePair *pair)
{
  ArrangeLimit found = limit_of (ARRANGE_TOO_FULL);
  const SpacePart *a = &self->space->parts[pair->a], *b = &self->space->parts[pair->b];
  Span span;

  found.parts[0] = pair->a;
  found.parts[1] = pair->b;
  found.part_count = 2;
  found.needed = found.had = NAN;
  if (stands_only_in (a, a->rooms[0], &span) && stands_only_in (b, a->rooms[0], &span))
    found.room = a->rooms[0];
  findings_add (self, found);
}

static void
add_rooms_that_are_too_full (Findings *self)
{
  const Space *space = self->space;
  const size_t before = self->count;

  for (size_t i = 0; i < space->part_count; i++)
    for (size_t k = 0; k < space->parts[i].range_count; k++)
      if (!room_was_met (space, i, k))
        add_room_that_is_too_full (self, space->parts[i].rooms[k]);
  for (size_t i = 0; i < space->pair_count && self->count == before; i++)
    if (space->parts[space->pairs[i].a].range_count && space->parts[space->pairs[i].b].range_count
        && !pair_goes_together (space, &space->pairs[i]))
      add_pair_that_does_not_go_together (self, &space->pairs[i]);
}

/* With ballast at its end the balance reaches every limit that lies beyond that end from it; so only a misplaced end stands in the way. */
static void
add_band_out_of_reach (Findings *self)
{
  const Space *space = self->space;
  ArrangeLimit found = limit_of (ARRANGE_BAND);
  const double front = fmin (space->nose, space->tail), rear = fmax (space->nose, space->tail);
  double foremost = space->other, rearmost = space->other;

  for (size_t i = 0; i < space->part_count; i++)
    {
      double low = INFINITY, high = -INFINITY;

      for (size_t k = 0; k < space->parts[i].range_count; k++)
        {
          low = fmin (low, space->parts[i].ranges[k].low[0]);
          high = fmax (high, space->parts[i].ranges[k].high[0]);
        }
      foremost += space->parts[i].share * low;
      rearmost += space->parts[i].share * high;
    }
  if (!(foremost > space->aft + rounding && front >= space->aft)
      && !(rearmost < space->forward - rounding && rear <= space->forward))
    return;
  found.needed = (foremost > space->aft ? foremost : rearmost) / mm;
  found.had = (foremost > space->aft ? space->aft : space->forward) / mm;
  findings_add (self, found);
}

/* Parts that move as one and have each its places, but none together. */
static bool
add_tie_without_room (Findings *self, size_t leader)
{
  ArrangeLimit found = limit_of (ARRANGE_TIED);
  Node *node = node_new (self->space);

  if (!node)
    return false;
  if (!node_settle_tied (self->space, node, leader))
    {
      for (size_t i = 0; i < self->space->part_count; i++)
        if (self->space->parts[i].leader == leader && found.part_count < ARRANGE_LIMIT_PARTS)
          found.parts[found.part_count++] = i;
      found.needed = found.had = NAN;
      findings_add (self, found);
    }
  node_free (node);
  return true;
}

bool
findings_add_alone (Findings *self)
{
  const Space *space = self->space;
  bool all_fit = true, memory = true;

  for (size_t i = 0; i < space->part_count; i++)
    if (!space->parts[i].range_count)
      {
        add_part_without_room (self, i);
        all_fit = false;
      }
  for (size_t i = 0; i < space->part_count && all_fit && memory; i++)
    if (space->parts[i].leader == i)
      memory = add_tie_without_room (self, i);
  for (size_t i = 0; i < space->lead_count; i++)
    add_lead_that_never_reaches (self, i);
  add_rooms_that_are_too_full (self);
  if (all_fit)
    add_band_out_of_reach (self);
  return memory;
}
