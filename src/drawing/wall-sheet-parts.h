#pragma once
#include "drawing/wall-sheet-pen.h"
#include "figures/part-stand.h"
#include "figures/wing-stand.h"

/** A line of the parts list: one part, or two alike that mirror one another. */
typedef struct {
  int number;              /* its balloon's on the plan; 0 for what is not drawn */
  char *name;
  double mass, x;          /* g, of all of them; mm aft of datum */
  const Part *part;        /* to starboard where there are two; NULL for structure */
  const Part *partner;     /* the other of two; else NULL */
  PartStand stand;         /* where its tray goes; without a former for what no rule on the body tells */
  WingStand wing;          /* where its bay is; in none for what is in no wing */
} PartLine;

typedef struct { PartLine *lines; size_t count; bool has_stands, has_wings; } PartList;      /* whether any line has a tray or a bay */

/** Parts aboard in the order of the document, then what is built, as one line. */
PartList part_list_of    (const Figures *figures);
void     part_list_clear (PartList *self);      /* frees the lines and their names, not itself */

/** Height of capitals, mm; how many tables side by side; beyond `most` lines it says how many more there are. */
typedef struct { double caps; unsigned side_by_side, most; } PartTableStyle;
/** The table, its upper left corner at `at`, mm: number, part, mass, place, where any has one its tray's (front edge from a former, underside above the
 *  bottom) or its bay's in a wing (front edge behind the leading edge, its rib), and the sum. */
void     part_table_draw (const SheetPen *pen, const PartList *list, Point at, PartTableStyle style);
