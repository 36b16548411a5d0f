#include "document/part-size.h"
#include <math.h>
#include <stddef.h>

#define COUNT(array) (sizeof (array) / sizeof *(array))
static const double INCH = 25.4, PI = 3.14159265358979323846;

static double
between (double from, double to, double share)
{
  return from + (to - from) * share;
}

static bool
within (double value, double least, double most)
{
  return value >= least && value <= most;         /* false for NAN */
}

/* g/mAh of one cell, its deviation, and the plugs, g. */
typedef struct { double capacity, k, k_sigma, plugs; } PackMass;
static const PackMass pack_masses[] = {
  { 300, 0.030, 0.004, 0 }, { 450, 0.028, 0.003, 1.5 }, { 800, 0.028, 0.003, 1.5 }, { 850, 0.027, 0.002, 3 },
};

/* Boxes of packs of one kind: length, width, and the thickness that each cell takes. */
typedef struct { double capacity, length, width, thickness; } PackBox;
static const PackBox single_boxes[] = { { 150, 28, 18, 6 }, { 300, 40, 20, 7 }, { 500, 50, 20, 8 } };
static const PackBox several_boxes[] = {
  { 150, 34, 19, 5.2 }, { 180, 37, 20, 5.2 }, { 300, 44, 20, 6.6 }, { 450, 56, 30, 6 }, { 800, 58, 30, 7.4 }, { 1300, 72, 35, 8 },
  { 1500, 75, 35, 8.3 },
};

static PackMass
pack_mass (double capacity)
{
  const PackMass *at = pack_masses, *last = pack_masses + COUNT (pack_masses) - 1;

  while (at < last && at[1].capacity < capacity)
    at++;
  if (capacity <= at->capacity || at == last)
    return *at;
  const double share = (capacity - at->capacity) / (at[1].capacity - at->capacity);
  return (PackMass) { capacity, between (at->k, at[1].k, share), between (at->k_sigma, at[1].k_sigma, share),
                      between (at->plugs, at[1].plugs, share) };
}

/* Evenly in the logarithm of capacity; beyond the ends a pack of the same shape. */
static PackBox
pack_box (const PackBox *rows, size_t count, double capacity)
{
  const PackBox *at = rows, *last = rows + count - 1;

  while (at < last && at[1].capacity < capacity)
    at++;
  if (capacity <= at->capacity || at == last)
    {
      const double grown = cbrt (capacity / at->capacity);
      return (PackBox) { capacity, at->length * grown, at->width * grown, at->thickness * grown };
    }
  const double share = log (capacity / at->capacity) / log (at[1].capacity / at->capacity);
  return (PackBox) { capacity, between (at->length, at[1].length, share), between (at->width, at[1].width, share),
                     between (at->thickness, at[1].thickness, share) };
}

bool
part_size_pack (double cells, double capacity, PartSize *size)
{
  if (!within (cells, 1, 12) || cells != floor (cells) || !within (capacity, 20, 20000))
    return false;
  const PackMass mass = pack_mass (capacity);
  const PackBox box = cells == 1 ? pack_box (single_boxes, COUNT (single_boxes), capacity)
                                 : pack_box (several_boxes, COUNT (several_boxes), capacity);
  *size = (PartSize) {
    .mass = cells * capacity * mass.k + (cells > 1 ? mass.plugs : 0), .mass_sigma = cells * capacity * mass.k_sigma,
    .length = round (box.length), .width = round (box.width), .height = round (box.thickness * cells),
  };
  return true;
}

/* Classes of outrunners: their cans, mm, masses and deviations, g. */
static const struct { double diameter, length, mass, sigma; } motors[] = {
  { 18, 13.5, 8, 1.5 }, { 22.5, 16, 14, 2 }, { 27.5, 18.5, 24, 3 }, { 28, 25, 41, 4 }, { 28, 29, 54, 4 },
};

static double
can_volume (double diameter, double length)
{
  return PI / 4 * diameter * diameter * length;
}

static double
log_between (double from, double to, double share)
{
  return exp (between (log (from), log (to), share));
}

bool
part_size_motor (double diameter, double length, PartSize *size)
{
  const double volume = can_volume (diameter, length);
  size_t i = 0;

  if (!within (diameter, 5, 100) || !within (length, 5, 100))
    return false;
  while (i + 1 < COUNT (motors) && can_volume (motors[i + 1].diameter, motors[i + 1].length) < volume)
    i++;
  const double here = can_volume (motors[i].diameter, motors[i].length);
  *size = (PartSize) { 0, 0, length, diameter, diameter };
  if (volume <= here || i + 1 == COUNT (motors))          /* smaller or larger than all: of the same make-up */
    {
      size->mass = motors[i].mass * volume / here;
      size->mass_sigma = motors[i].sigma * volume / here;
      return true;
    }
  const double share = log (volume / here) / log (can_volume (motors[i + 1].diameter, motors[i + 1].length) / here);
  size->mass = log_between (motors[i].mass, motors[i + 1].mass, share);
  size->mass_sigma = log_between (motors[i].sigma, motors[i + 1].sigma, share);
  return true;
}

bool
part_size_propeller (double inches, int blades, bool stiff, PartSize *size)
{
  const double mass = (stiff ? 0.018 : 0.011) * inches * inches * inches * (blades == 3 ? 1.45 : 1);

  if (!within (inches, 1, 30) || (blades != 2 && blades != 3))
    return false;
  *size = (PartSize) { mass, mass / 5, 9, inches * INCH, 18 };
  return true;
}

/* g of a round rod, by its density in g/cm³. */
static double
rod (double diameter, double length, double density)
{
  return PI / 4 * diameter * diameter * length * density * 1e-3;
}

double
part_size_wire (double diameter, double length)
{
  return rod (diameter, length, 7.85);
}

double
part_size_carbon (double diameter, double length)
{
  return rod (diameter, length, 1.55);
}
