#include "balance/arrange-limits-private.h"

#include <math.h>
#include <stdlib.h>

#include "balance/arrange-guard.h"
#include "balance/arrange-tree.h"

static const double mm = 1000;
/* What is missed by less, mm, is rounding. */
static const double rounding = 1e-2;

/* What contradicts only together is searched for, with one thing after another let go. */
typedef struct {
  Findings findings;
  Program *program;
  Tree tree;
} Search;

static ArrangeLimit
limit_together (ArrangeLimitKind kind)
{
  return (ArrangeLimit) { .kind = kind, .lead = (size_t) ARRANGE_NONE, .room = (size_t) ARRANGE_NONE, .needed = NAN, .had = NAN };
}

static bool
search_below (Search *self, const Node *root)
{
  self->tree.value = INFINITY;
  self->tree.accuracy = rounding / 10;
  self->tree.found = false;
  tree_search (&self->tree, root, SIZE_MAX);
  return self->tree.found;
}

static ArrangePlace
place_of (const double at[AXES])
{
  return (ArrangePlace) { at[0] / mm, at[1] / mm, at[2] / mm };
}

static void
add_leads_to_lengthen (Search *self)
{
  const Space *space = self->findings.space;
  double (*places)[AXES] = self->tree.places;

  for (size_t i = 0; i < space->lead_count; i++)
    {
      const SpaceLead *lead = &space->leads[i];
      const double needed = space_lead_needed (lead, places[lead->from], places[lead->to]);
      ArrangeLimit found = limit_together (ARRANGE_LEAD_TOO_SHORT);

      if (needed <= lead->limit + rounding)
        continue;
      found.lead = i;
      found.parts[0] = lead->from;
      found.parts[1] = lead->to;
      found.part_count = 2;
      found.needed = needed / mm;
      found.had = lead->limit / mm;
      found.nearest[0] = place_of (places[lead->from]);
      found.nearest[1] = place_of (places[lead->to]);
      findings_add (&self->findings, found);
    }
}

static void
add_band_missed (Search *self)
{
  const Space *space = self->findings.space;
  ArrangeLimit found = limit_together (ARRANGE_BAND);
  double x = space->other;

  for (size_t i = 0; i < space->part_count; i++)
    x += space->parts[i].share * self->tree.places[i][0];
  found.needed = x / mm;
  found.had = (x > space->aft ? space->aft : space->forward) / mm;
  findings_add (&self->findings, found);
}

/* Whether these parts, whatever the rest does, cannot all stand apart. */
static bool
is_too_full (Search *self, const bool counts[])
{
  const Space *space = self->findings.space;
  Node *node = node_new (space);
  bool too_full;

  if (!node)
    {
      self->tree.no_memory = true;
      return false;
    }
  for (size_t i = 0; i < space->pair_count; i++)
    if (!counts[space->pairs[i].a] || !counts[space->pairs[i].b])
      node->ways[i] = WAY_SETTLED;
  too_full = !node_settle (space, node);
  if (!too_full)
    too_full = !search_below (self, node) && tree_is_proved (&self->tree);
  node_free (node);
  return too_full;
}

static bool
all_in_room (const Space *space, const bool counts[], size_t room)
{
  for (size_t i = 0; i < space->part_count; i++)
    for (size_t k = 0; counts[i] && space->parts[i].moves && k < space->parts[i].range_count; k++)
      if (space->parts[i].rooms[k] != room)
        return false;
  return true;
}

/* Each part in turn is let go; it is kept only when the others then stand apart. What stays cannot spare any of them. */
static void
add_parts_in_each_others_way (Search *self)
{
  const Space *space = self->findings.space;
  ArrangeLimit found = limit_together (ARRANGE_TOO_FULL);
  bool counts[PARTS_MOST];

  for (size_t i = 0; i < space->part_count; i++)
    counts[i] = true;
  program_set_goal (self->program, GOAL_ANY);
  program_let_go (self->program);
  if (!is_too_full (self, counts))
    return;
  for (size_t i = 0; i < space->part_count; i++)
    {
      counts[i] = false;
      counts[i] = !is_too_full (self, counts);
    }
  for (size_t i = 0; i < space->part_count; i++)
    if (counts[i] && found.part_count < ARRANGE_LIMIT_PARTS)
      found.parts[found.part_count++] = i;
  for (size_t i = 0; i < space->part_count; i++)
    if (counts[i] && space->parts[i].moves && all_in_room (space, counts, space->parts[i].rooms[0]))
      found.room = space->parts[i].rooms[0];
  /* None is named where boxes are not to blame. */
  if (found.part_count)
    findings_add (&self->findings, found);
}

/* Leads first: of any length, as little beyond what they have as can be; then the balance too; then room alone. */
static void
search_for_limits (Search *self, const Node *root, bool settled)
{
  if (settled)
    {
      program_set_goal (self->program, GOAL_LONGER_LEADS);
      if (search_below (self, root))
        add_leads_to_lengthen (self);
      if (self->tree.found || !tree_is_proved (&self->tree))
        return;
      program_set_goal (self->program, GOAL_BAND);
      if (search_below (self, root))
        add_band_missed (self);
      if (self->tree.found || !tree_is_proved (&self->tree))
        return;
    }
  add_parts_in_each_others_way (self);
}

static CoreStatus
run_search (void *data)
{
  Search *self = data;
  const Space *space = self->findings.space;
  Node *root = node_new (space), *whole = node_new (space);
  CoreStatus status = CORE_NO_MEMORY;

  if (root && whole)
    {
      const bool settled = node_settle (space, root);

      node_hull (space, whole);
      self->program = program_new (space, whole);
      if (self->program)
        {
          self->tree.program = self->program;
          search_for_limits (self, root, settled);
          program_free (self->program);
          status = self->tree.no_memory ? CORE_NO_MEMORY : self->tree.cancelled ? CORE_CANCELLED : CORE_OK;
        }
    }
  node_free (root);
  node_free (whole);
  return status;
}

CoreStatus
arrange_limits (const ArrangeCase *wanted, ArrangeLimit limits[], size_t most, size_t *count)
{
  CoreStatus status = most ? arrange_check (wanted) : CORE_OUT_OF_RANGE;
  Search *search;
  Space *space;

  if (status)
    return status;
  search = calloc (1, sizeof *search);
  space = search ? space_new (wanted) : NULL;
  if (space)
    {
      *search = (Search) { .findings = { wanted, space, limits, most, 0 },
                           .tree = { .space = space, .until = tree_clock () + wanted->seconds, .goes_on = wanted->goes_on,
                                     .data = wanted->data, .done_part = 1 } };
      space_forget_alike (space);
      status = findings_add_alone (&search->findings) ? CORE_OK : CORE_NO_MEMORY;
      if (!status && !search->findings.count)
        status = guarded (run_search, search);
      if (!status)
        *count = search->findings.count;
    }
  else
    status = CORE_NO_MEMORY;
  space_free (space);
  free (search);
  return status;
}
