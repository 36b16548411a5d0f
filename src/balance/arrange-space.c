#include "balance/arrange-space.h"

#include <math.h>
#include <stdlib.h>

#include "balance/arrange-alike.h"

static const double mm = 1000;
/* A range that ends a nanometre early still holds what is written as long as it. */
static const double reach_slack = 1e-6;

static void
place_in_mm (ArrangePlace place, double in_mm[AXES])
{
  in_mm[0] = place.x * mm;
  in_mm[1] = place.y * mm;
  in_mm[2] = place.z * mm;
}

double
distance_between (const double a[AXES], const double b[AXES])
{
  const double x = a[0] - b[0], y = a[1] - b[1], z = a[2] - b[2];

  return sqrt (x * x + y * y + z * z);
}

double
space_lead_needed (const SpaceLead *lead, const double from[AXES], const double to[AXES])
{
  if (lead->over)
    return lead->fixed + distance_between (from, lead->first) + distance_between (to, lead->last);
  return lead->fixed + distance_between (from, to);
}

double
arrange_lead_needed (const ArrangeLead *lead, ArrangePlace from, ArrangePlace to)
{
  double needed = lead->slack, last[AXES], next[AXES];

  place_in_mm (from, last);
  for (size_t i = 0; i <= lead->via_count; i++)
    {
      place_in_mm (i < lead->via_count ? lead->via[i] : to, next);
      needed += distance_between (last, next) / mm;
      for (size_t axis = 0; axis < AXES; axis++)
        last[axis] = next[axis];
    }
  return needed;
}

/* False when nothing stands in it. */
static bool
span_of_range (const ArrangeRange *range, Span *span)
{
  place_in_mm ((ArrangePlace) { range->x_from, range->y_from, range->z_from }, span->low);
  place_in_mm ((ArrangePlace) { range->x_to, range->y_to, range->z_to }, span->high);
  for (size_t axis = 0; axis < AXES; axis++)
    {
      if (span->low[axis] > span->high[axis] + reach_slack)
        return false;
      span->high[axis] = fmax (span->low[axis], span->high[axis]);
    }
  return true;
}

static bool
part_moves (const SpacePart *part)
{
  for (size_t axis = 0; axis < AXES; axis++)
    if (part->range_count && part->ranges[0].high[axis] - part->ranges[0].low[axis] > reach_slack)
      return true;
  return part->range_count != 1;
}

static void
take_parts (Space *self, const ArrangeCase *wanted)
{
  Span *span = self->memory[0];
  size_t *room = self->memory[1], *number = self->memory[2];

  for (size_t i = 0; i < wanted->part_count; i++)
    {
      const ArrangePart *given = &wanted->parts[i];
      SpacePart *part = &self->parts[self->part_count++];

      *part = (SpacePart) { .share = given->mass / self->mass, .size = { given->length * mm, given->width * mm, given->height * mm },
                            .ranges = span, .rooms = room, .numbers = number };
      place_in_mm (given->now, part->now);
      for (size_t k = 0; k < given->range_count; k++)
        if (span_of_range (&given->ranges[k], span))
          {
            *room++ = given->ranges[k].room;
            *number++ = k;
            part->range_count++;
            span++;
          }
      part->moves = part_moves (part);
    }
}

static double
bulk_of (const SpacePart *part)
{
  return part->size[0] * part->size[1] * part->size[2];
}

static void
take_ties (Space *self, const ArrangeCase *wanted)
{
  for (size_t i = 0; i < self->part_count; i++)
    {
      self->parts[i].leader = i;
      for (size_t k = 0; k < self->part_count && wanted->parts[i].tie; k++)
        if (wanted->parts[k].tie == wanted->parts[i].tie && (bulk_of (&self->parts[k]) > bulk_of (&self->parts[self->parts[i].leader])
            || (bulk_of (&self->parts[k]) == bulk_of (&self->parts[self->parts[i].leader]) && k < self->parts[i].leader)))
          self->parts[i].leader = k;
    }
}

bool
space_is_tied (const Space *self, size_t a, size_t b)
{
  return self->parts[a].leader == self->parts[b].leader;
}

double
space_tie_offset (const Space *self, size_t part, size_t axis)
{
  return self->parts[part].now[axis] - self->parts[self->parts[part].leader].now[axis];
}

static void
take_alike (Space *self, const ArrangeCase *wanted)
{
  for (size_t b = 0; b < self->part_count; b++)
    {
      self->parts[b].before = self->part_count;
      for (size_t a = 0; a < b && self->parts[b].moves; a++)
        if (parts_are_alike (wanted, a, b))
          {
            self->parts[a].alike = self->parts[b].alike = true;
            self->parts[b].before = a;
          }
    }
}

void
space_forget_alike (Space *self)
{
  for (size_t i = 0; i < self->part_count; i++)
    {
      self->parts[i].alike = false;
      self->parts[i].before = self->part_count;
    }
}

static void
take_pairs (Space *self)
{
  for (size_t a = 0; a < self->part_count; a++)
    for (size_t b = a + 1; b < self->part_count; b++)
      {
        SpacePair pair = { .a = a, .b = b };

        if ((!self->parts[a].moves && !self->parts[b].moves) || space_is_tied (self, a, b))
          continue;
        for (size_t axis = 0; axis < AXES; axis++)
          pair.apart[axis] = (self->parts[a].size[axis] + self->parts[b].size[axis]) / 2 + self->clearance;
        self->pairs[self->pair_count++] = pair;
      }
}

static void
take_lead (Space *self, const ArrangeLead *given)
{
  SpaceLead *lead = &self->leads[self->lead_count++];

  *lead = (SpaceLead) { .from = given->from, .to = given->to, .over = given->via_count > 0, .fixed = given->slack * mm,
                        .limit = isnan (given->length) ? INFINITY : given->length * mm };
  for (lead->pair = 0; lead->pair < self->pair_count; lead->pair++)
    if (self->pairs[lead->pair].a == (given->from < given->to ? given->from : given->to)
        && self->pairs[lead->pair].b == (given->from < given->to ? given->to : given->from))
      break;
  for (size_t i = 0; i < given->via_count; i++)
    {
      double next[AXES];

      place_in_mm (given->via[i], next);
      if (i == 0)
        place_in_mm (given->via[i], lead->first);
      else
        lead->fixed += distance_between (lead->last, next);
      place_in_mm (given->via[i], lead->last);
      self->mirrored = self->mirrored && next[1] == 0;
    }
}

static bool
parts_are_mirrored (const Space *self)
{
  for (size_t i = 0; i < self->part_count; i++)
    if (fabs (space_tie_offset (self, i, 1)) > reach_slack)
      return false;
  for (size_t i = 0; i < self->part_count; i++)
    for (size_t k = 0; k < self->parts[i].range_count; k++)
      if (fabs (self->parts[i].ranges[k].low[1] + self->parts[i].ranges[k].high[1]) > reach_slack)
        return false;
  return true;
}

static bool
allocate (Space *self, const ArrangeCase *wanted)
{
  const size_t count = wanted->part_count;
  size_t ranges = 1;

  for (size_t i = 0; i < count; i++)
    ranges += wanted->parts[i].range_count;
  self->parts = calloc (count + 1, sizeof *self->parts);
  self->pairs = calloc (count * count / 2 + 1, sizeof *self->pairs);
  self->leads = calloc (wanted->lead_count + 1, sizeof *self->leads);
  self->memory[0] = calloc (ranges, sizeof (Span));
  self->memory[1] = calloc (ranges, sizeof (size_t));
  self->memory[2] = calloc (ranges, sizeof (size_t));
  return self->parts && self->pairs && self->leads && self->memory[0] && self->memory[1] && self->memory[2];
}

Space *
space_new (const ArrangeCase *wanted)
{
  Space *self = calloc (1, sizeof *self);

  if (!self || !allocate (self, wanted))
    {
      space_free (self);
      return NULL;
    }
  self->mass = wanted->other_mass;
  for (size_t i = 0; i < wanted->part_count; i++)
    self->mass += wanted->parts[i].mass;
  self->other = wanted->other_mass / self->mass * wanted->other_x * mm;
  self->forward = wanted->forward_limit_x * mm;
  self->aft = wanted->aft_limit_x * mm;
  self->aim = wanted->aim_x * mm;
  self->nose = wanted->nose_x * mm;
  self->tail = wanted->tail_x * mm;
  self->clearance = wanted->clearance * mm;
  take_parts (self, wanted);
  take_ties (self, wanted);
  take_alike (self, wanted);
  take_pairs (self);
  self->mirrored = parts_are_mirrored (self);
  for (size_t i = 0; i < wanted->lead_count; i++)
    take_lead (self, &wanted->leads[i]);
  return self;
}

void
space_free (Space *self)
{
  if (!self)
    return;
  free (self->parts);
  free (self->pairs);
  free (self->leads);
  for (size_t i = 0; i < sizeof self->memory / sizeof *self->memory; i++)
    free (self->memory[i]);
  free (self);
}
