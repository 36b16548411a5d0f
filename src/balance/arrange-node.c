#include "balance/arrange-node.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

/* Boxes that miss one another by less than the linear program's rounding still meet. */
static const double rounding = 1e-5;

static Node *
node_alloc (const Space *space)
{
  Node *self = calloc (1, sizeof *self);

  if (!self)
    return NULL;
  self->spans = calloc (space->part_count + 1, sizeof *self->spans);
  self->ranges = calloc (space->part_count + 1, sizeof *self->ranges);
  self->ways = calloc (space->pair_count + 1, sizeof *self->ways);
  if (self->spans && self->ranges && self->ways)
    return self;
  node_free (self);
  return NULL;
}

void
node_free (Node *self)
{
  if (!self)
    return;
  free (self->spans);
  free (self->ranges);
  free (self->ways);
  free (self);
}

Node *
node_dup (const Space *space, const Node *node)
{
  Node *self = node_alloc (space);

  if (!self)
    return NULL;
  self->bound = node->bound;
  memcpy (self->spans, node->spans, space->part_count * sizeof *self->spans);
  memcpy (self->ranges, node->ranges, space->part_count * sizeof *self->ranges);
  memcpy (self->ways, node->ways, space->pair_count * sizeof *self->ways);
  return self;
}

Node *
node_new (const Space *space)
{
  Node *self = node_alloc (space);

  if (!self)
    return NULL;
  self->bound = -INFINITY;
  for (size_t i = 0; i < space->part_count; i++)
    {
      const size_t count = space->parts[i].range_count;

      self->ranges[i] = count < RANGES_MOST ? ((uint64_t) 1 << count) - 1 : UINT64_MAX;
      for (size_t axis = 0; axis < AXES; axis++)
        {
          self->spans[i].low[axis] = -INFINITY;
          self->spans[i].high[axis] = INFINITY;
        }
    }
  memset (self->ways, WAY_OPEN, space->pair_count);
  return self;
}

static bool
spans_meet (const Span *a, const Span *b)
{
  for (size_t axis = 0; axis < AXES; axis++)
    if (a->low[axis] > b->high[axis] + rounding || b->low[axis] > a->high[axis] + rounding)
      return false;
  return true;
}

/* Of a part whose ranges lie apart the box around those it can still reach. */
static bool
settle_part (const SpacePart *part, Span *span, uint64_t *ranges, bool *changed)
{
  Span around = { { INFINITY, INFINITY, INFINITY }, { -INFINITY, -INFINITY, -INFINITY } };

  for (size_t axis = 0; axis < AXES; axis++)
    if (span->low[axis] > span->high[axis] + rounding)
      return false;
  for (size_t k = 0; k < part->range_count; k++)
    {
      if (!(*ranges >> k & 1))
        continue;
      if (!spans_meet (&part->ranges[k], span))
        {
          *ranges &= ~((uint64_t) 1 << k);
          continue;
        }
      for (size_t axis = 0; axis < AXES; axis++)
        {
          around.low[axis] = fmin (around.low[axis], part->ranges[k].low[axis]);
          around.high[axis] = fmax (around.high[axis], part->ranges[k].high[axis]);
        }
    }
  for (size_t axis = 0; axis < AXES && *ranges; axis++)
    {
      *changed = *changed || span->low[axis] < around.low[axis] - rounding || span->high[axis] > around.high[axis] + rounding;
      span->low[axis] = fmax (span->low[axis], around.low[axis]);
      span->high[axis] = fmax (span->low[axis], fmin (span->high[axis], around.high[axis]));
    }
  return *ranges != 0;
}

bool
node_way_is_open (const Node *self, const SpacePair *pair, int way)
{
  const size_t axis = (size_t) way / 2, ahead = way % 2 ? pair->b : pair->a, behind = way % 2 ? pair->a : pair->b;

  return self->spans[behind].high[axis] - self->spans[ahead].low[axis] >= pair->apart[axis] - rounding;
}

double
node_least_apart (const Space *space, const Node *self, size_t index)
{
  const SpacePair *pair = &space->pairs[index];
  double least = INFINITY;

  if (self->ways[index] == WAY_SETTLED)
    return 0;
  if (self->ways[index] != WAY_OPEN)
    return pair->apart[self->ways[index] / 2];
  for (int way = 0; way < WAYS; way++)
    if (node_way_is_open (self, pair, way))
      least = fmin (least, pair->apart[way / 2]);
  return isfinite (least) ? least : 0;
}

static bool
pair_is_apart (const Node *self, const SpacePair *pair, int way)
{
  const size_t axis = (size_t) way / 2, ahead = way % 2 ? pair->b : pair->a, behind = way % 2 ? pair->a : pair->b;

  return self->spans[behind].low[axis] - self->spans[ahead].high[axis] >= pair->apart[axis];
}

/* What a decided way leaves of both boxes. */
static bool
keep_apart (Node *self, const SpacePair *pair, int way, bool *changed)
{
  const size_t axis = (size_t) way / 2;
  Span *ahead = &self->spans[way % 2 ? pair->b : pair->a], *behind = &self->spans[way % 2 ? pair->a : pair->b];
  const double low = ahead->low[axis] + pair->apart[axis], high = behind->high[axis] - pair->apart[axis];

  *changed = *changed || low > behind->low[axis] + rounding || high < ahead->high[axis] - rounding;
  if (low > behind->high[axis] + rounding)
    return false;
  behind->low[axis] = fmin (fmax (behind->low[axis], low), behind->high[axis]);
  ahead->high[axis] = fmax (fmin (ahead->high[axis], high), ahead->low[axis]);
  return true;
}

static bool
settle_pair (const Space *space, Node *self, size_t index, bool *changed)
{
  const SpacePair *pair = &space->pairs[index];
  int open = 0, last = WAY_OPEN;

  if (self->ways[index] == WAY_SETTLED)
    return true;
  if (self->ways[index] != WAY_OPEN)
    return keep_apart (self, pair, self->ways[index], changed);
  for (int way = 0; way < WAYS; way++)
    {
      if (pair_is_apart (self, pair, way))
        {
          self->ways[index] = WAY_SETTLED;
          return true;
        }
      if (node_way_is_open (self, pair, way))
        {
          open++;
          last = way;
        }
    }
  if (open != 1)
    return open > 0;
  self->ways[index] = (int8_t) last;
  return keep_apart (self, pair, last, changed);
}

void
node_hull (const Space *space, Node *self)
{
  bool changed = false;

  for (size_t i = 0; i < space->part_count; i++)
    settle_part (&space->parts[i], &self->spans[i], &self->ranges[i], &changed);
}

/* Of parts that are alike the one before stands no farther aft. */
static bool
settle_order (const Space *space, Node *self, size_t part, bool *changed)
{
  const size_t before = space->parts[part].before;

  if (before == space->part_count)
    return true;
  *changed = *changed || self->spans[part].low[0] < self->spans[before].low[0] - rounding
          || self->spans[before].high[0] > self->spans[part].high[0] + rounding;
  self->spans[part].low[0] = fmax (self->spans[part].low[0], self->spans[before].low[0]);
  self->spans[before].high[0] = fmin (self->spans[before].high[0], self->spans[part].high[0]);
  return self->spans[part].low[0] <= self->spans[part].high[0] + rounding;
}

/* What moves as one has one box, each part's as far from it as they stand apart. */
static bool
settle_tie (const Space *space, Node *self, size_t part, bool *changed)
{
  Span *own = &self->spans[part], *leader = &self->spans[space->parts[part].leader];

  for (size_t axis = 0; axis < AXES && own != leader; axis++)
    {
      const double offset = space_tie_offset (space, part, axis);
      const double low = fmax (leader->low[axis], own->low[axis] - offset), high = fmin (leader->high[axis], own->high[axis] - offset);

      if (low > high + rounding)
        return false;
      *changed = *changed || low > fmin (leader->low[axis], own->low[axis] - offset) + rounding
              || high < fmax (leader->high[axis], own->high[axis] - offset) - rounding;
      leader->low[axis] = low;
      leader->high[axis] = fmax (low, high);
      own->low[axis] = low + offset;
      own->high[axis] = fmax (low, high) + offset;
    }
  return true;
}

bool
node_settle_tied (const Space *space, Node *self, size_t leader)
{
  bool changed = true;

  for (int round = 0; changed && round < 50; round++)
    {
      changed = false;
      for (size_t i = 0; i < space->part_count; i++)
        if (space->parts[i].leader == leader
            && (!settle_part (&space->parts[i], &self->spans[i], &self->ranges[i], &changed) || !settle_tie (space, self, i, &changed)))
          return false;
    }
  return true;
}

bool
node_settle (const Space *space, Node *self)
{
  bool changed = true;

  for (int round = 0; changed && round < 50; round++)
    {
      changed = false;
      for (size_t i = 0; i < space->part_count; i++)
        if (!settle_part (&space->parts[i], &self->spans[i], &self->ranges[i], &changed)
            || !settle_order (space, self, i, &changed) || !settle_tie (space, self, i, &changed))
          return false;
      for (size_t i = 0; i < space->pair_count; i++)
        if (!settle_pair (space, self, i, &changed))
          return false;
    }
  return true;
}

bool
node_is_mirrored (const Space *space, const Node *self)
{
  if (!space->mirrored)
    return false;
  for (size_t i = 0; i < space->part_count; i++)
    if (fabs (self->spans[i].low[1] + self->spans[i].high[1]) > rounding)
      return false;
  for (size_t i = 0; i < space->pair_count; i++)
    if (self->ways[i] / 2 == 1)
      return false;
  return true;
}

static bool
range_holds (const Span *range, const double place[AXES])
{
  /* What the linear program takes for a bound kept. */
  const double kept = 1e-3;

  for (size_t axis = 0; axis < AXES; axis++)
    if (place[axis] < range->low[axis] - kept || place[axis] > range->high[axis] + kept)
      return false;
  return true;
}

size_t
node_range_at (const Space *space, const Node *self, size_t part, const double place[AXES])
{
  const SpacePart *whole = &space->parts[part];
  const uint64_t left = self->ranges[part];
  const bool one_left = (left & (left - 1)) == 0;
  size_t k = 0;

  while (k < whole->range_count && !(left >> k & 1 && (one_left || range_holds (&whole->ranges[k], place))))
    k++;
  return k;
}
