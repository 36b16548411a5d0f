#pragma once
#include "figures/figures.h"

/** What is to be cut of sheet, sticks and covering: the lines of all structures that have a size, those of one material and thickness
 *  together. Millimetres, square millimetres, grams; NAN where something is not given, or not traced yet. */
typedef struct {
  const Structure *structure;
  const StructureItem *item;    /* of it; both lent by the figures */
  double count;                 /* how many pieces: of ribs and formers how many are named, else as the line says; NAN not told */
  double thickness_mm, width_mm, length_mm;     /* of one */
  double area_mm2;              /* of all, before notches and holes and with what overlaps */
  double total_length_mm;       /* of sticks, all end to end: what is not wider than 15 mm (common practice, no source), of no plywood or plastic */
  double mass_g;                /* of all, as the structure's line weighs */
} CuttingLine;

/** Lines of one material (by its word, or its density where none is named) and one thickness. */
typedef struct {
  size_t first, count;          /* of the list's lines */
  double area_mm2, mass_g;      /* of all lines that tell theirs */
  double total_length_mm;       /* where all are sticks of one width; else NAN */
} CuttingGroup;

typedef struct { CuttingLine *lines; size_t count; CuttingGroup *groups; size_t group_count; } CuttingList;

/** Groups in the order in which materials are offered, thin before thick, in each the lines as the document has them; last what has no size to
 *  cut by. Left out are glue, paint and what else is no piece. */
CuttingList cutting_list_of    (const Figures *figures);
void        cutting_list_clear (CuttingList *self);      /* frees its arrays, not itself */

/** What the line is cut of: "Balsa, medium", "170 kg/m³" where only that is known; "" where nothing is. A new string, translated. */
char *cutting_material (const CuttingLine *line);

/** The list as comma-separated values, a heading row first. */
void csv_cutting (GString *text, const Figures *figures);
