#include "figures/loads.h"

#include <math.h>
#include "document/part-class.h"

static const double metre = 1e-3, kilogram = 1e-3;        /* of a mm, of a g */
static const double structure_place_sigma = 0.03;         /* share of the mean chord */

double
part_mass_deviation (const Part *part)
{
  return isnan (part->mass_sigma) ? part_class_mass_sigma (part->class_name, part->mass) : part->mass_sigma;
}

MassItem
load_figures_item (const LoadFigures *load)
{
  return (MassItem) { .mass = load->mass_g * kilogram, .mass_sigma = load->mass_sigma_g * kilogram, .x_sigma = load->x_sigma_mm * metre,
                      .x = load->x_mm * metre, .y = load->y_mm * metre, .z = load->z_mm * metre, .own_roll = load->own_roll_kgm2,
                      .own_pitch = load->own_pitch_kgm2, .own_yaw = load->own_yaw_kgm2 };
}

static void
turn_about_height (MassItem *item, double degrees)
{
  const double across = pow (sin (degrees * G_PI / 180), 2), roll = item->own_roll;

  item->own_roll += across * (item->own_pitch - roll);
  item->own_pitch += across * (roll - item->own_pitch);
}

MassItem
load_of_part (const Part *part)
{
  const double x_sigma = isnan (part->x_sigma) ? part_class_place_sigma (part->class_name) : part->x_sigma;
  MassItem item = { .mass = part->mass * kilogram, .mass_sigma = part_mass_deviation (part) * kilogram, .x_sigma = x_sigma * metre,
                    .x = part->x * metre, .y = part->y * metre, .z = part->z * metre };

  mass_item_as_box (&item, part->length * metre, part->width * metre, part->height * metre);
  turn_about_height (&item, part->turn);
  return item;
}

static void
spread_out (MassItem *item, const Structure *structure, const Spread *spread)
{
  const double x = isnan (structure->centre) ? spread->x : spread->from_x + structure->centre * spread->length_x;

  item->x = x * metre;
  item->y = spread->y * metre;
  item->z = (spread->z - (x - spread->x) * spread->slope) * metre;
  item->own_roll = item->mass * spread->roll * metre * metre;
  item->own_pitch = item->mass * spread->pitch * metre * metre;
  item->own_yaw = item->mass * spread->yaw * metre * metre;
}

/* What is left of a spread mass, spread alike. */
static MassItem
lighter (MassItem item, double mass)
{
  const double share = item.mass > 0 ? fmax (mass, 0) / item.mass : 0;

  item.mass *= share;
  item.own_roll *= share;
  item.own_pitch *= share;
  item.own_yaw *= share;
  return item;
}

static MassItem
item_at (const Structure *structure, double mass, double x, double z)
{
  return (MassItem) { .mass = mass, .x = x * metre, .y = structure->y * metre, .z = z * metre };
}

/* What runs by the span or the length is a thin rod about its middle, m l² / 12, wherever along the surface or body it stands.
 * source  elementary mechanics */
static void
lie_along (MassItem *item, ItemTraced of, const Spread *spread)
{
  const double across = item->mass * pow (spread->traced[of] * metre, 2) / 12;

  if ((of != TRACED_SPAN && of != TRACED_LENGTH) || !isfinite (across))
    return;
  if (of == TRACED_LENGTH)
    item->own_pitch = item->own_yaw = across;
  else if (surface_is_horizontal ((const Surface *) spread->piece))
    item->own_roll = item->own_yaw = across;
  else
    item->own_roll = item->own_pitch = across;
}

/* By how much what a line comes to is multiplied. */
typedef struct { double weighed, unweighed; } ItemShares;

/* What the scale said of a line stays; the usual excess, and what a typed mass of the whole adds or takes, is everywhere alike on the
 * others. Only where weighed lines alone come to more than that whole are they taken to be less. */
static ItemShares
item_shares (const StructureFigures *of)
{
  double weighed = 0, unweighed = of->estimate_g - of->excess_g;

  for (size_t i = 0; i < of->structure->item_count; i++)
    if (!isnan (of->structure->items[i].weighed))
      weighed += of->structure->items[i].weighed;
  unweighed -= weighed;
  return (ItemShares) { .weighed = weighed > of->mass_g ? of->mass_g / weighed : 1,
                        .unweighed = unweighed > 0 ? fmax (of->mass_g - weighed, 0) / unweighed : 0 };
}

/* Items that stand at places of their own, and all the rest where the structure is spread: one body with one centre. */
static void
gather_items (MassItem *item, const StructureFigures *weighed, MassItem spread, const Spread *over)
{
  const Structure *structure = weighed->structure;
  const ItemShares shares = item_shares (weighed);
  g_autofree MassItem *items = g_new (MassItem, structure->item_count + 1);
  double rest = item->mass;
  size_t count = 1;
  MassSum sum;

  for (size_t i = 0; i < structure->item_count; i++)
    {
      const StructureItem *at = &structure->items[i];
      const double share = isnan (at->weighed) ? shares.unweighed : shares.weighed;
      const double mass = g_array_index (weighed->items_g, double, i) * kilogram * share;

      if (isnan (at->x) || !(mass > 0))
        continue;
      items[count] = item_at (structure, mass, at->x, isnan (at->z) ? spread.z / metre : at->z);
      lie_along (&items[count++], at->of, over);
      rest -= mass;
    }
  items[0] = lighter (spread, rest);
  if (count == 1 || mass_sum (items, count, &sum) != CORE_OK)
    return;
  item->x = sum.x, item->y = sum.y, item->z = sum.z;
  item->own_roll = sum.roll, item->own_pitch = sum.pitch, item->own_yaw = sum.yaw;
}

CoreStatus
load_of_structure (const StructureFigures *weighed, const Spread *spread, double mac, MassItem *item)
{
  const Structure *structure = weighed->structure;
  const double x_sigma = isnan (structure->x_sigma) ? structure_place_sigma * mac : structure->x_sigma;
  MassItem made = item_at (structure, weighed->mass_g * kilogram, structure->x, structure->z);

  if (isnan (structure->x))
    {
      if (!spread)
        return CORE_OUT_OF_RANGE;
      if (spread->status != CORE_OK)
        return spread->status;
      spread_out (&made, structure, spread);
      if (weighed->items_g)
        gather_items (&made, weighed, made, spread);
    }
  made.mass_sigma = weighed->mass_sigma_g * kilogram;
  made.x_sigma = x_sigma * metre;
  *item = made;
  return CORE_OK;
}
