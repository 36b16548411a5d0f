#include "document/kept-follow.h"

static bool
node_equal (const Outline *a, size_t node_a, const Outline *b, size_t node_b)
{
  const Point one = outline_node (a, node_a), other = outline_node (b, node_b);

  return one.x == other.x && one.y == other.y;
}

/* How many nodes the two have in common at their ends. */
static size_t
common_tail (const Outline *old, const Outline *next)
{
  const size_t olds = outline_node_count (old), nexts = outline_node_count (next);
  size_t common = 0;

  while (common < MIN (olds, nexts) && node_equal (old, olds - 1 - common, next, nexts - 1 - common))
    common++;
  return common;
}

void
kept_follow_outline (Piece *piece, InnerKind inner, const Outline *old, const Outline *next)
{
  size_t olds, nexts, tail;

  if (piece->kept_count == 0 || !old || outline_node_count (old) == outline_node_count (next))
    return;
  olds = outline_node_count (old);
  nexts = outline_node_count (next);
  tail = common_tail (old, next);
  for (size_t i = 0; i < piece->kept_count; i++)
    {
      Kept *kept = &piece->kept[i];

      if (kept->inner != inner || kept->index >= olds)
        continue;
      if (kept->index >= olds - tail)
        kept->index = kept->index + nexts - olds;
      else if (kept->index >= nexts - tail)
        {
          kept->index = nexts - tail;
          g_clear_pointer (&kept->attributes, g_free);
          g_clear_pointer (&kept->inside, g_free);
        }
    }
}

void
kept_follow_removed (Piece *piece, InnerKind inner, size_t index)
{
  for (size_t i = 0; i < piece->kept_count; i++)
    {
      Kept *kept = &piece->kept[i];

      if (kept->inner != inner || kept->index < index)
        continue;
      if (kept->index == index)
        {
          g_clear_pointer (&kept->attributes, g_free);
          g_clear_pointer (&kept->inside, g_free);
        }
      else
        kept->index--;
    }
}

void
kept_follow_added (Piece *piece, InnerKind inner, size_t index)
{
  for (size_t i = 0; i < piece->kept_count; i++)
    if (piece->kept[i].inner == inner && piece->kept[i].index >= index)
      piece->kept[i].index++;
}
