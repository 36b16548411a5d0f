#include "figures/loads.h"

#include <math.h>
#include "document/part-class.h"

static const double metre = 1e-3, kilogram = 1e-3;        /* of a mm, of a g */
static const double structure_mass_sigma = 0.18;          /* share of its mass, by grade names of wood; common practice, no source */
static const double structure_place_sigma = 0.03;         /* share of the mean chord */

double
part_mass_deviation (const Part *part)
{
  return isnan (part->mass_sigma) ? part_class_mass_sigma (part->class_name, part->mass) : part->mass_sigma;
}

double
structure_mass_deviation (const Structure *structure)
{
  return isnan (structure->mass_sigma) ? structure_mass_sigma * structure->mass : structure->mass_sigma;
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

CoreStatus
load_of_structure (const Structure *structure, const Spread *spread, double mac, MassItem *item)
{
  const double x_sigma = isnan (structure->x_sigma) ? structure_place_sigma * mac : structure->x_sigma;
  MassItem made = { .mass = structure->mass * kilogram, .mass_sigma = structure_mass_deviation (structure) * kilogram, .x_sigma = x_sigma * metre,
                    .x = structure->x * metre, .y = structure->y * metre, .z = structure->z * metre };

  if (isnan (structure->x))
    {
      if (!spread)
        return CORE_OUT_OF_RANGE;
      if (spread->status != CORE_OK)
        return spread->status;
      spread_out (&made, structure, spread);
    }
  *item = made;
  return CORE_OK;
}
