#include "balance/arrange-polish.h"

#include <math.h>

/* Nodes that one try may take. */
static const size_t try_nodes = 80;

/* Along which of the ways that a pair is apart it is farthest apart. */
static int
way_of (const SpacePair *pair, const double places[][AXES])
{
  int widest = 0;
  double most = -INFINITY;

  for (int way = 0; way < WAYS; way++)
    {
      const size_t axis = (size_t) way / 2;
      const double distance = (way % 2 ? -1 : 1) * (places[pair->b][axis] - places[pair->a][axis]) - pair->apart[axis];

      if (distance > most)
        {
          most = distance;
          widest = way;
        }
    }
  return widest;
}

static bool
is_of (const Space *space, size_t part, size_t one, size_t two)
{
  return space_is_tied (space, part, one) || space_is_tied (space, part, two);
}

/* Decides all but what concerns the two and what moves with them. */
static bool
hold_the_rest (const Tree *tree, Node *node, size_t one, size_t two)
{
  const Space *space = tree->space;

  for (size_t i = 0; i < space->part_count; i++)
    if (!is_of (space, i, one, two))
      node->ranges[i] = (uint64_t) 1 << node_range_at (space, node, i, tree->places[i]);
  for (size_t i = 0; i < space->pair_count; i++)
    {
      const SpacePair *pair = &space->pairs[i];

      if (node->ways[i] == WAY_OPEN && !is_of (space, pair->a, one, two) && !is_of (space, pair->b, one, two))
        node->ways[i] = (int8_t) way_of (pair, tree->places);
    }
  return node_settle (space, node);
}

static bool
try_elsewhere (Tree *tree, const Node *root, size_t one, size_t two)
{
  const double before = tree->value;
  Node *node = node_dup (tree->space, root);

  if (!node)
    {
      tree->no_memory = true;
      return false;
    }
  if (hold_the_rest (tree, node, one, two))
    tree_search (tree, node, try_nodes);
  node_free (node);
  return tree->value < before;
}

void
tree_polish (Tree *tree, const Node *root)
{
  const Space *space = tree->space;
  bool better = true;

  while (better && !tree_is_stopped (tree))
    {
      better = false;
      for (size_t i = 0; i < space->part_count && !tree_is_stopped (tree); i++)
        if (space->parts[i].moves)
          better = try_elsewhere (tree, root, i, i) || better;
      for (size_t i = 0; i < space->lead_count && !tree_is_stopped (tree); i++)
        better = try_elsewhere (tree, root, space->leads[i].from, space->leads[i].to) || better;
    }
}
