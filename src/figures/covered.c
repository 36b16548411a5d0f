#include "figures/covered.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/structure-figures.h"

static const double mass_sigma = 0.18;      /* share of a mass that is typed without one, as structure-figures.h has it */

bool
structure_item_covers (const StructureItem *item)
{
  const MaterialClass *material = material_class_find (item->material);

  return material ? material->covers : item->of == TRACED_SKIN && !isnan (item->area_density);
}

double
structure_covering_g (const StructureFigures *figures)
{
  const Structure *structure = figures->structure;
  double sum = 0;

  for (size_t i = 0; figures->items_g && i < structure->item_count; i++)
    {
      const StructureItem *item = &structure->items[i];
      const double mass = g_array_index (figures->items_g, double, i) * (isnan (item->weighed) ? 1 + structure->excess : 1);

      if (structure_item_covers (item) && mass > 0)
        sum += mass;
    }
  return sum;
}

/* Overlaps add a twentieth on a surface, a tenth round a body; common practice, no source. */
static double
overlaps_on (const Piece *of)
{
  return of->kind == PIECE_BODY ? 1.10 : 1.05;
}

static bool
has_size (const StructureItem *item)
{
  return item->of != TRACED_NONE || !isnan (item->area) || (!isnan (item->length) && !isnan (item->width));
}

/* What was known of the old covering is not known of the next; a name of its own would tell of the old one. */
static void
take_covering (StructureItem *item, const Piece *of, const MaterialClass *covering)
{
  g_free (item->material);
  item->material = g_strdup (covering->word);
  item->density = item->density_sigma = item->area_density = item->mass = item->of_others = NAN;
  item->weighed = item->weighed_sigma = NAN;
  item->density_weighed = false;
  if (g_strcmp0 (item->name, _("Covering")) != 0)
    g_clear_pointer (&item->name, g_free);
  if (!has_size (item))
    {
      item->of = TRACED_SKIN;
      item->share = overlaps_on (of);
    }
}

static void
add_item (Structure *structure, StructureItem takes)
{
  structure->items = g_renew (StructureItem, structure->items, structure->item_count + 1);
  structure->items[structure->item_count++] = takes;
}

static void
add_covering (Structure *structure, const Piece *of, const MaterialClass *covering)
{
  StructureItem item = structure_item (_("Covering"));

  item.material = g_strdup (covering->word);
  item.of = TRACED_SKIN;
  item.share = overlaps_on (of);
  add_item (structure, item);
}

static bool
change_covering (Structure *structure, const Piece *of, const MaterialClass *covering)
{
  bool changed = false;

  for (size_t i = 0; i < structure->item_count; i++)
    if (structure_item_covers (&structure->items[i]))
      {
        take_covering (&structure->items[i], of, covering);
        changed = true;
      }
  return changed;
}

/* The bare frame as the scale has it: a line among lines, known as well as it was. */
static void
frame_becomes_a_line (Structure *structure)
{
  StructureItem frame = structure_item (_("Bare frame"));

  frame.weighed = structure->mass;
  frame.weighed_sigma = isnan (structure->mass_sigma) ? mass_sigma * structure->mass : structure->mass_sigma;
  structure->mass = structure->mass_sigma = NAN;
  add_item (structure, frame);
}

static double
estimate_of (const Structure *structure, const Spread *spread)
{
  StructureFigures made = structure_figures_of (structure, spread);
  const double estimate = made.estimate_g;

  g_clear_pointer (&made.items_g, g_array_unref);
  return isnan (estimate) ? 0 : estimate;
}

Structure *
structure_covered (const Structure *old, const Piece *of, const Spread *spread, const MaterialClass *covering)
{
  Structure *next = old ? (Structure *) piece_dup (&old->piece) : structure_new (NULL, of->id, NAN);

  if (next->mass == 0)      /* nobody has weighed it: its lines tell */
    next->mass = NAN;
  if (!isnan (next->mass) && !next->item_count)
    frame_becomes_a_line (next);
  if (!change_covering (next, of, covering))
    add_covering (next, of, covering);
  if (!isnan (next->mass))
    next->mass = fmax (0, next->mass + estimate_of (next, spread) - estimate_of (old, spread));
  return next;
}
