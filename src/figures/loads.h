#pragma once
#include "balance/centre.h"
#include "figures/aerodynamics.h"
#include "figures/figures.h"
#include "figures/piece-key.h"

/** All that has mass and is aboard, and its sum; remembered until one of the parts, structures, surfaces or bodies changes. SI within,
 *  as the balance room wants it. */
typedef struct {
  PieceKey key;
  size_t count;
  MassItem *items;               /* kg, m; in the document's order */
  const Piece **pieces;          /* what each item is */
  MassItem *told;                /* the same items before what is weighed, or not known, changes them */
  PieceKey structure_key;        /* what the structures were weighed by */
  size_t structure_count;
  StructureFigures *structures;  /* in the document's order; remembered while parts and leads alone change */
  CoreStatus status;             /* of the sum; CORE_OUT_OF_RANGE without a mass */
  MassSum sum;
  MassFigures figures;           /* the same in mm and g; NAN where there is none */
  AeroplaneTraits traits;        /* of which the bare airframe on the scale counts; no name */
  AirframeFigures airframe;
  const Piece *weigh_first[2];   /* the two to which the balance point's deviation owes most; NULL without */
  GPtrArray *notes;
} Loads;

/** g: one standard deviation of what a kitchen scale says, where nobody typed another. Common practice, no source. */
#define SCALE_SIGMA_G 0.5

/** Makes it new unless the pieces are those it was made from. */
void loads_update (Loads *self, const Aerodynamics *aerodynamics, const Aeroplane *aeroplane);
/** Whether the piece is on the bare airframe before any gear goes in: a structure, a cowl, canopy, pilot, wheels, undercarriage. */
bool load_is_of_airframe (const Piece *piece);
/** The bare airframe on the scale has every mass and place of it give in by as much as it is uncertain (weighed_correct); parts still to come
 *  were on no scale. Fills self->airframe; does nothing more where nobody has weighed it. Deviations nobody typed: 0.5 g, 2 mm (common practice,
 *  no source). */
void loads_weigh_airframe (Loads *self);
/** One standard deviation, mm, of where the bare airframe was found to balance: as typed, else as fingers tell it, 2 mm (common practice, no
 *  source). */
double airframe_place_sigma (const AeroplaneTraits *traits);

/** Frees what it holds, not itself; made anew by the next update. */
void loads_clear  (Loads *self);

/** One standard deviation of a part's mass, in grams: as stated, else typical of its class (part_class_mass_sigma). */
double part_mass_deviation      (const Part *part);

/** A load of the figures as a mass again. */
MassItem load_figures_item (const LoadFigures *load);

/** A part as a mass: a box at its place, deviations as stated or typical of its class. */
MassItem load_of_part (const Part *part);

/** A structure as a mass. With a place of its own: a point there. Else spread as a thin sheet over what it is of, about the area's
 *  centroid, which `centre` moves along the mean chord or the body's length. Deviations as stated, else 18 % of its mass and 3 % of
 *  the MAC (common practice, no source). Items with places of their own stand there, the rest is spread; a place of the whole wins.
 *  weighed  what it weighs
 *  spread  where mass of its surface or body lies; NULL when there is none
 *  mac     of the reference wing, mm; NAN without one: x_sigma is NAN then, unless it is stated
 *  item    set on success; CORE_OUT_OF_RANGE when it has neither a place nor a spread, else the spread's status */
CoreStatus load_of_structure (const StructureFigures *weighed, const Spread *spread, double mac, MassItem *item);
