#pragma once
#include "figures/figures.h"

/** Where the mass is, and what it does: by group, and part by part. Grams, g mm. */

typedef enum {
  MASS_STRUCTURE,               /* structures, cowls, canopies, the firewall */
  MASS_POWER,                   /* motors with their mounts, propellers, spinners, controllers, batteries */
  MASS_CONTROL,                 /* receivers, servos, switches, pushrods, horns, hinges, leads */
  MASS_GEAR,                    /* undercarriages, wheels, skids */
  MASS_BALLAST,
  MASS_OTHER,
  MASS_GROUP_COUNT
} MassGroup;

typedef struct { double mass_g, sigma_g; size_t count; } MassGroupSum;

/** All aboard by what it serves; one standard deviation each. A part goes by its class, without one, or as "other", by its kind of the
 *  catalogue. */
void        mass_groups_of  (const Figures *figures, MassGroupSum groups[MASS_GROUP_COUNT]);
MassGroup   mass_group_of   (const Piece *piece);             /* of a part, structure or lead */
const char *mass_group_name (MassGroup group);                /* for people, translated: "Landing gear" */
const char *mass_group_word (MassGroup group);                /* for programs: "landing-gear" */

/** What one thing aboard does about the balance point: its mass by how far aft of it its middle is, forward negative; all of them together
 *  are nought. About the datum likewise; together they are the mass by the balance point's place. */
typedef struct { const Piece *piece; double mass_g, x_mm, about_balance_g_mm, about_datum_g_mm; } Moment;

/** Of all aboard that has a place, of Moment, the greatest about the balance point first, where it can be had; a new array.
 *  source  FAA-H-8083-1, Weight and Balance Handbook */
GArray *moments_of (const Figures *figures);
