#pragma once
#include "figures/spread.h"

/** What structures weigh, from the scale or from what they are made of. */

/** Of one. A mass of its own wins, with 18 % of deviation unless one is stated (common practice, no source); else its items tell, by
 *  material-class.h and materials.h, with the traced areas and lengths of what it is of.
 *  spread  of that; NULL when there is none. Its measures count also where its centroid cannot be had */
StructureFigures structure_figures_of (const Structure *structure, const Spread *spread);

/** Says which items weigh nothing yet, since what they go by is not traced. */
void structure_note (const StructureFigures *figures, GPtrArray *notes);

/** Says where a heavier weighed sheet is in a tail than in a wing or body: the lightest belongs behind. Common practice, no source. */
void structure_note_sheets (const Aeroplane *aeroplane, GPtrArray *notes);

StructureFigures *structure_figures_dup  (const StructureFigures of[], size_t count);       /* the items' masses are shared */
void              structure_figures_free (StructureFigures of[], size_t count);             /* NULL is fine */

/** A sheet's density, kg/m³, from grams and millimetres (sheet_density); the same in lb/ft³. */
double sheet_density_of (double grams, double length_mm, double width_mm, double thickness_mm);
double density_lb_ft3   (double kg_m3);      /* from kg/m³ */

/** Density of the material that an item goes by, kg/m³, given or its material's; NAN without one. */
double structure_item_density      (const StructureItem *item);
/** The same of a covering or shell, g/m². */
double structure_item_area_density (const StructureItem *item);
