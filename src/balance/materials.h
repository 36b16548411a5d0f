#pragma once
#include <stdbool.h>
#include <stddef.h>
#include "geometry/status.h"

/** What a structure weighs before it exists: lines of sheet, sticks, ribs, covering, glue, each by its size and density, until a scale
 *  says. SI: kg, m, m², kg/m³, kg/m². */

/** How well a line is known: lines of one kind stray together, for the wood comes out of one bin and one hand covers. */
typedef enum {
  MATERIAL_BY_GRADE,        /* by the name of a grade or a covering: 18 % of it */
  MATERIAL_BY_SHEET,        /* the sheet was weighed before it was cut: 8 % */
  MATERIAL_BY_SCALE         /* the pieces themselves were weighed: 0.3 g a line, each on its own */
} MaterialKnown;

/** One line; NAN where something is not given. The first of these that is given tells its mass: weighed, of_others, each, area_density,
 *  density. */
typedef struct {
  MaterialKnown known;      /* of a weighed line always taken as MATERIAL_BY_SCALE */
  double count;             /* how many are alike, >= 0 */
  double share;             /* what notches and holes leave, or what overlaps add: 0.95, 1.06 */
  double area;              /* m², of one; NAN: length × width */
  double length, width;     /* m */
  double thickness;         /* m */
  double density;           /* kg/m³ */
  double area_density;      /* kg/m² */
  double each;              /* kg, of one */
  double of_others;         /* as a share of all lines of wood and of pieces, of none by area density: glue */
  double weighed;           /* kg, of the whole line, whatever count and share say */
  double sigma;             /* one standard deviation: kg of a weighed line, else a share of its mass; NAN: as usual for its kind */
} MaterialLine;

/** A line of which nothing is given yet: one, whole. */
MaterialLine material_line (void);

/** The mass of a line that is no share of others: count × (area × thickness × density | area × area density | each) × share.
 *  mass     kg, set on success
 *  returns  CORE_OUT_OF_RANGE when neither size nor mass of it tells, or when it is a share of others; CORE_NOT_FINITE when too much is */
CoreStatus material_line_mass (const MaterialLine *line, double *mass);

/** What lines come to. All kg. */
typedef struct {
  double lines;             /* of all lines */
  double excess;            /* the usual excess on what is not weighed */
  double mass;              /* both together */
  double by_grade, by_sheet, by_scale;     /* deviations of those kinds, the excess straying with its lines */
  double sigma;             /* √ of the sum of their squares */
} MaterialSum;

/** Adds lines up. A line whose size is not known adds nothing, and its mass is NAN.
 *  excess   share of all that is not weighed by which builders come out over a careful sum, for nobody lists fillets, doublers and
 *           repairs: 0.10 to 0.20, 0.12 usual
 *  masses   kg, of each line: room for `count`
 *  source   deviations and excess: common practice, no source */
MaterialSum materials_add_up (const MaterialLine lines[], size_t count, double excess, double masses[]);

/** Density of a sheet, kg/m³, from its mass, kg, and its size, m; NAN unless all are above 0. */
double sheet_density (double mass, double length, double width, double thickness);

/** The same density in pounds a cubic foot, as sheets are sold: 1 lb/ft³ = 16.018463 kg/m³. */
double density_in_lb_ft3 (double kg_m3);

/** What one side of a rib encloses, m²: 0.685 (t/c) c², of the thickness of the four-digit sections, chord c in m, thickness t/c.
 *  source  integral of the thickness in Abbott and von Doenhoff, Theory of Wing Sections, section 6.4 */
double rib_side_area (double chord, double thickness);
