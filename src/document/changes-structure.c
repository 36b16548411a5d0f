#include "document/changes-private.h"
#include <math.h>
#include <string.h>
#include "document/kept-follow.h"

/* A copy of that structure, the caller's; NULL when there is none, or no item of that index. */
static Structure *
copy_with (const Aeroplane *self, const char *id, size_t index)
{
  const Structure *old = aeroplane_structure_by_id (self, id);

  return old && index < old->item_count ? (Structure *) piece_dup (&old->piece) : NULL;
}

/* The texts of a lent item become the structure's own. */
static StructureItem
item_copy (const StructureItem *item)
{
  StructureItem copy = *item;

  copy.name = g_strdup (item->name);
  copy.material = g_strdup (item->material);
  return copy;
}

Aeroplane *
change_structure_item (const Aeroplane *self, const char *id, size_t index, const StructureItem *next)
{
  Structure *changed = copy_with (self, id, index);
  StructureItem old;

  if (!changed)
    return NULL;
  old = changed->items[index];
  changed->items[index] = item_copy (next);
  structure_item_clear (&old);
  return changed_to (self, aeroplane_find (self, id), &changed->piece);
}

/* What is reckoned line by line needs no typed mass of 0, which says that nobody has weighed it. */
static void
let_items_tell (Structure *structure)
{
  if (structure->mass == 0)
    structure->mass = NAN;
}

Aeroplane *
change_structure_item_added (const Aeroplane *self, const char *of, const StructureItem *item)
{
  const Structure *old = aeroplane_structure_of (self, of);
  Structure *next;

  if (!aeroplane_find (self, of))
    return NULL;
  next = old ? (Structure *) piece_dup (&old->piece) : structure_new (NULL, of, NAN);
  let_items_tell (next);
  next->items = g_renew (StructureItem, next->items, next->item_count + 1);
  next->items[next->item_count++] = item_copy (item);
  if (old)
    return changed_to (self, &old->piece, &next->piece);
  g_autofree char *stem = g_strdup_printf ("%s-structure", of);
  next->piece.id = aeroplane_free_id (self, stem);
  return aeroplane_with_added (self, &next->piece);
}

Aeroplane *
change_structure_item_removed (const Aeroplane *self, const char *id, size_t index)
{
  Structure *next = copy_with (self, id, index);

  if (!next)
    return NULL;
  structure_item_clear (&next->items[index]);
  memmove (next->items + index, next->items + index + 1, (next->item_count - index - 1) * sizeof *next->items);
  next->item_count--;
  kept_follow_removed (&next->piece, INNER_ITEM, index);
  if (next->item_count == 0 && isnan (next->mass))      /* nothing is left that says what it weighs */
    next->mass = 0;
  return changed_to (self, aeroplane_find (self, id), &next->piece);
}

/* NAN, spread over the area, stays NAN. */
static Piece *
structure_moved (const Structure *structure, double dx, double dz)
{
  Structure *next = (Structure *) piece_dup (&structure->piece);

  next->z += isnan (next->x) ? 0 : dz;
  next->x += dx;
  for (size_t i = 0; i < next->item_count; i++)
    {
      next->items[i].x += dx;
      next->items[i].z += dz;
    }
  return &next->piece;
}

Aeroplane *
structures_moved_with (Aeroplane *takes, const char *id, double dx, double dz)
{
  Aeroplane *now = takes;

  for (size_t i = 0; now && id && i < aeroplane_count (now, PIECE_STRUCTURE); i++)
    {
      const Structure *structure = aeroplane_structure (now, i);
      Aeroplane *last = now;

      if (g_strcmp0 (structure->of, id) != 0)
        continue;
      now = changed_to (last, &structure->piece, structure_moved (structure, dx, dz));
      aeroplane_unref (last);
    }
  return now;
}
