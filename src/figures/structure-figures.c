#include "figures/structure-figures.h"

#include <math.h>
#include "balance/materials.h"
#include "document/material-class.h"

static const double metre = 1e-3, square_metre = 1e-6, kilogram = 1e-3;      /* of a mm, a mm², a g */
static const double mass_sigma = 0.18;        /* share of a mass that is typed without one; common practice, no source */

double
structure_item_density (const StructureItem *item)
{
  const MaterialClass *material = isnan (item->density) ? material_class_find (item->material) : NULL;

  return material ? material->density : item->density;
}

double
structure_item_area_density (const StructureItem *item)
{
  const MaterialClass *material = isnan (item->area_density) ? material_class_find (item->material) : NULL;

  return material && isnan (item->density) ? material->area_density : item->area_density;
}

double
sheet_density_of (double grams, double length_mm, double width_mm, double thickness_mm)
{
  return sheet_density (grams * kilogram, length_mm * metre, width_mm * metre, thickness_mm * metre);
}

double
density_lb_ft3 (double kg_m3)
{
  return density_in_lb_ft3 (kg_m3);
}

static bool
is_length (ItemTraced of)
{
  return of == TRACED_SPAN || of == TRACED_LENGTH;
}

/* In SI, as the balance room wants it. */
static MaterialLine
line_of (const StructureItem *item, const Spread *spread)
{
  const double traced = item->of != TRACED_NONE && spread ? spread->traced[item->of] : NAN;
  MaterialLine line = material_line ();

  line.known = item->density_weighed ? MATERIAL_BY_SHEET : MATERIAL_BY_GRADE;
  line.count = item->count;
  line.share = item->share;
  line.area = (item->of == TRACED_NONE || is_length (item->of) ? item->area : traced) * square_metre;
  line.length = (is_length (item->of) ? traced : item->length) * metre;
  line.width = item->width * metre;
  line.thickness = item->thickness * metre;
  line.density = structure_item_density (item);
  line.area_density = structure_item_area_density (item) * kilogram;
  line.each = item->mass * kilogram;
  line.of_others = item->of_others;
  line.weighed = item->weighed * kilogram;
  line.sigma = isnan (item->weighed) ? item->density_sigma : item->weighed_sigma * kilogram;
  /* An area that goes by ribs and is not traced is not length × width either. */
  if (item->of != TRACED_NONE && !is_length (item->of) && isnan (traced))
    line.length = line.width = NAN;
  return line;
}

static void
estimate (StructureFigures *made, const Spread *spread)
{
  const Structure *structure = made->structure;
  const guint count = (guint) structure->item_count;
  g_autofree MaterialLine *lines = g_new (MaterialLine, count);
  MaterialSum sum;

  for (guint i = 0; i < count; i++)
    lines[i] = line_of (&structure->items[i], spread);
  made->items_g = g_array_sized_new (FALSE, FALSE, sizeof (double), count);
  g_array_set_size (made->items_g, count);
  sum = materials_add_up (lines, count, structure->excess, (double *) (void *) made->items_g->data);
  for (guint i = 0; i < count; i++)
    g_array_index (made->items_g, double, i) /= kilogram;
  made->estimate_g = sum.mass / kilogram;
  made->estimate_sigma_g = sum.sigma / kilogram;
  made->excess_g = sum.excess / kilogram;
}

StructureFigures
structure_figures_of (const Structure *structure, const Spread *spread)
{
  StructureFigures made = { .structure = structure, .estimate_g = NAN, .estimate_sigma_g = NAN, .excess_g = NAN };

  if (structure->item_count)
    estimate (&made, spread);
  made.mass_g = isnan (structure->mass) ? made.estimate_g : structure->mass;
  made.mass_sigma_g = isnan (structure->mass) ? made.estimate_sigma_g : mass_sigma * structure->mass;
  if (!isnan (structure->mass_sigma))
    made.mass_sigma_g = structure->mass_sigma;
  if (isnan (made.mass_g))      /* neither: nothing is known to be there */
    made.mass_g = made.mass_sigma_g = 0;
  return made;
}

StructureFigures *
structure_figures_dup (const StructureFigures of[], size_t count)
{
  for (size_t i = 0; i < count; i++)
    if (of[i].items_g)
      g_array_ref (of[i].items_g);
  return g_memdup2 (of, count * sizeof *of);
}

void
structure_figures_free (StructureFigures of[], size_t count)
{
  for (size_t i = 0; of && i < count; i++)
    g_clear_pointer (&of[i].items_g, g_array_unref);
  g_free (of);
}
