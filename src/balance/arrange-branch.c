#include "balance/arrange-branch.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

/* Boxes that overlap by less touch, mm. */
static const double touching = 1e-4;
/* What makes one arrangement another, mm. */
static const double another = 15;

void
branches_free (Branches *self)
{
  for (size_t i = 0; i < self->count; i++)
    node_free (self->nodes[i]);
  self->count = 0;
}

/* A copy to decide something in; it counts as a branch only when branch_close() finds it possible. */
static Node *
branch_open (const Tree *tree, const Node *node, Branches *made)
{
  Node *branch = node_dup (tree->space, node);

  if (branch)
    made->nodes[made->count++] = branch;
  return branch;
}

static void
branch_close (const Tree *tree, Branches *made)
{
  if (!node_settle (tree->space, made->nodes[made->count - 1]))
    node_free (made->nodes[--made->count]);
}

/* By how much both must at least move for the boxes to be apart; 0 when they are. */
static double
overlap_of (const SpacePair *pair, double places[][AXES])
{
  double least = INFINITY;

  for (size_t axis = 0; axis < AXES; axis++)
    least = fmin (least, pair->apart[axis] - fabs (places[pair->b][axis] - places[pair->a][axis]));
  return least > touching ? least : 0;
}

static int
open_ways (const Node *node, const SpacePair *pair)
{
  int open = 0;

  for (int way = 0; way < WAYS; way++)
    open += node_way_is_open (node, pair, way);
  return open;
}

/* The more pressing before; of the least pressing none beyond CHOICES_MOST. */
static void
choices_add (Choices *self, Choice choice)
{
  size_t k = self->count < CHOICES_MOST ? self->count++ : CHOICES_MOST;

  for (; k > 0 && self->choices[k - 1].pressing < choice.pressing; k--)
    if (k < CHOICES_MOST)
      self->choices[k] = self->choices[k - 1];
  if (k < CHOICES_MOST)
    self->choices[k] = choice;
}

/* A great overlap with few ways out presses; how much more the one than the other was tried out. */
static double
pressing_of (double overlap, int open)
{
  return overlap / ((double) open * open * open);
}

static void
add_pairs (const Space *space, const Node *node, double places[][AXES], Choices *found)
{
  for (size_t i = 0; i < space->pair_count; i++)
    {
      const double overlap = node->ways[i] == WAY_OPEN ? overlap_of (&space->pairs[i], places) : 0;

      if (overlap > 0)
        choices_add (found, (Choice) { CHOICE_WAY, i, 1, pressing_of (overlap, open_ways (node, &space->pairs[i])) });
    }
}

/* The parts that stand between their ranges come first. */
static void
add_parts (const Space *space, const Node *node, double places[][AXES], Choices *found)
{
  for (size_t i = 0; i < space->part_count; i++)
    if (node_range_at (space, node, i, places[i]) == space->parts[i].range_count)
      choices_add (found, (Choice) { CHOICE_RANGE, i, 1, INFINITY });
}

static bool
branch_on_ways (const Tree *tree, const Node *node, size_t pair, Branches *made)
{
  const bool mirrored = node_is_mirrored (tree->space, node);

  for (int way = 0; way < WAYS; way++)
    {
      Node *branch;

      if ((mirrored && way == 3) || !node_way_is_open (node, &tree->space->pairs[pair], way))
        continue;
      if (!(branch = branch_open (tree, node, made)))
        return false;
      branch->ways[pair] = (int8_t) way;
      branch_close (tree, made);
    }
  return true;
}

static bool
branch_on_ranges (const Tree *tree, const Node *node, size_t part, Branches *made)
{
  for (size_t k = 0; k < tree->space->parts[part].range_count; k++)
    {
      Node *branch;

      if (!(node->ranges[part] >> k & 1))
        continue;
      if (!(branch = branch_open (tree, node, made)))
        return false;
      branch->ranges[part] = (uint64_t) 1 << k;
      branch_close (tree, made);
    }
  return true;
}

/* `across` −1 asks of the mirror image. */
static bool
is_taken (const Tree *tree, const Node *node, double places[][AXES], const Taken *taken, double across)
{
  const double rounding = 1e-3;

  for (size_t i = 0; i < tree->space->part_count; i++)
    {
      const SpacePart *part = &tree->space->parts[i];

      if (!part->moves)
        continue;
      if (part->rooms[node_range_at (tree->space, node, i, places[i])] != taken->rooms[i])
        return false;
      for (size_t axis = 0; axis < AXES; axis++)
        if (fabs (places[i][axis] - (axis == 1 ? across : 1) * taken->places[i][axis]) >= another - rounding)
          return false;
    }
  return true;
}

static uint64_t
ranges_elsewhere (const SpacePart *part, size_t room)
{
  uint64_t ranges = 0;

  for (size_t k = 0; k < part->range_count; k++)
    if (part->rooms[k] != room)
      ranges |= (uint64_t) 1 << k;
  return ranges;
}

static bool
move_part_away (const Tree *tree, const Node *node, size_t part, const double from[AXES], size_t room, Branches *made)
{
  for (size_t way = 0; way <= WAYS; way++)
    {
      const size_t axis = way / 2;
      Node *branch = branch_open (tree, node, made);

      if (!branch)
        return false;
      if (way == WAYS)
        branch->ranges[part] &= ranges_elsewhere (&tree->space->parts[part], room);
      else if (way % 2 == 0)
        branch->spans[part].low[axis] = fmax (branch->spans[part].low[axis], from[axis] + another);
      else
        branch->spans[part].high[axis] = fmin (branch->spans[part].high[axis], from[axis] - another);
      branch_close (tree, made);
    }
  return true;
}

static bool
branch_away (const Tree *tree, const Node *node, const Taken *taken, double across, Branches *made)
{
  for (size_t i = 0; i < tree->space->part_count; i++)
    {
      const double from[AXES] = { taken->places[i][0], across * taken->places[i][1], taken->places[i][2] };

      if (tree->space->parts[i].moves && !move_part_away (tree, node, i, from, taken->rooms[i], made))
        return false;
    }
  return true;
}

void
choices_find (const Tree *tree, const Node *node, double places[][AXES], Choices *found)
{
  found->count = 0;
  add_pairs (tree->space, node, places, found);
  add_parts (tree->space, node, places, found);
  for (size_t i = 0; i < tree->taken_count && found->count == 0; i++)
    for (int side = 0; side < (tree->space->mirrored ? 2 : 1) && found->count == 0; side++)
      if (is_taken (tree, node, places, &tree->taken[i], side ? -1 : 1))
        choices_add (found, (Choice) { CHOICE_AWAY, i, side ? -1 : 1, 0 });
}

bool
branches_make (const Tree *tree, const Node *node, const Choice *choice, Branches *made)
{
  made->count = 0;
  if (choice->kind == CHOICE_WAY)
    return branch_on_ways (tree, node, choice->which, made);
  if (choice->kind == CHOICE_RANGE)
    return branch_on_ranges (tree, node, choice->which, made);
  return branch_away (tree, node, &tree->taken[choice->which], choice->across, made);
}
