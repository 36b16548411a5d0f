#pragma once
#include <stdbool.h>

/** Parts between and beyond the catalogue's entries, by their size. Masses grams, boxes millimetres along x, y, z; mass_sigma one standard
 *  deviation of one bought and not weighed. Common practice, no source, where none is named; the catalogue's own entries lie within their
 *  spread of what is reckoned here. Each returns false, with *size untouched, for what is out of its range or not finite. */
typedef struct { double mass, mass_sigma, length, width, height; } PartSize;

/** A lithium-polymer pack: cells × capacity × k, and from 300 mAh on a pair of plugs.
 *  cells     in series, 1 to 12
 *  capacity  mAh, 20 to 20,000
 *  method    k 0.030 g/mAh up to 300 mAh, 0.028 from 450 to 800, 0.027 from 850 on, evenly between; its deviation 0.004, 0.003, 0.002 */
bool part_size_pack      (double cells, double capacity, PartSize *size);
/** An outrunner with its leads, by the outside of its can: through the rows of the catalogue, evenly in the logarithms of mass and volume.
 *  diameter, length  of the can, mm, 5 to 100 each */
bool part_size_motor     (double diameter, double length, PartSize *size);
/** A propeller: 0.011 D³ (thin, for slow models) or 0.018 D³ g (stiff); three blades weigh 1.45 times as much. Deviation a fifth.
 *  inches    its diameter, 1 to 30
 *  blades    2 or 3 */
bool part_size_propeller (double inches, int blades, bool stiff, PartSize *size);

/** Grams of a round rod of `diameter` and `length`, mm, not negative; exactly.
 *  source  geometry; 7.85 g/cm³ for music wire, 1.55 for carbon rod (densities: common practice) */
double part_size_wire   (double diameter, double length);
double part_size_carbon (double diameter, double length);      /* the same of carbon rod, grams */
