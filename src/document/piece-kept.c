#include "document/elements.h"
#include <stdlib.h>

static int
kept_compare (const Kept *one, const Kept *other)
{
  if (one->inner != other->inner)
    return one->inner < other->inner ? -1 : 1;
  return one->index < other->index ? -1 : one->index > other->index;
}

const Kept *
piece_kept (const Piece *piece, InnerKind inner, size_t index)
{
  const Kept wanted = { .inner = inner, .index = index };
  size_t low = 0, high = piece->kept_count;

  while (low < high)
    {
      const size_t middle = low + (high - low) / 2;

      if (kept_compare (&piece->kept[middle], &wanted) < 0)
        low = middle + 1;
      else
        high = middle;
    }
  return low < piece->kept_count && kept_compare (&piece->kept[low], &wanted) == 0 ? &piece->kept[low] : NULL;
}

static int
kept_compare_any (const void *a, const void *b)
{
  return kept_compare (a, b);
}

void
piece_sort_kept (Piece *piece)
{
  if (piece->kept_count > 0)
    qsort (piece->kept, piece->kept_count, sizeof *piece->kept, kept_compare_any);
}
