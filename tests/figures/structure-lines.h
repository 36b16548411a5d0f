#pragma once
#include "support/aeroplanes.h"

/* Lines of which a test makes a structure. */

static inline StructureItem
by_area (const char *name, ItemTraced of, double thickness, double density)
{
  StructureItem item = structure_item (name);

  item.of = of;
  item.thickness = thickness;
  item.density = density;
  return item;
}

static inline StructureItem
weighing (const char *name, double grams)
{
  StructureItem item = structure_item (name);

  item.weighed = grams;
  return item;
}

/* Takes the items' texts. */
static inline Structure *
made_of (const char *of, const StructureItem items[], size_t count)
{
  Structure *structure = structure_new ("frame", of, NAN);

  structure->items = g_memdup2 (items, count * sizeof *items);
  structure->item_count = count;
  structure->excess = 0;
  return structure;
}

/* A wing of 640 × 100 mm, its leading edge at 30 mm, with that structure. */
static inline Aeroplane *
wing_of (Structure *structure)
{
  return with_piece (with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (30, 640, 100)), structure);
}
