#pragma once
#include <cairo.h>
#include "document/units.h"
#include "drawing/paper.h"
#include "figures/figures.h"

/** The drawing for the shop wall: plan and side view in line, the balance mark's section at full size, parts, figures, cautions, control
 *  lines, title block. Black on white; what is missing is said on it. */
typedef struct {
  const Figures *figures;
  Units units;
  const Paper *paper;
  bool portrait;
  const char *date;        /* of the last change, as it shall be read; "" leaves a line to fill in by hand */
} WallSheet;

/** Where everything stands on one sheet: made once, drawn as often as wanted, on anything. Keeps what `sheet` points to alive (figures)
 *  or copies it. */
typedef struct WallSheetLayout WallSheetLayout;

/** Finds the largest usual scale at which everything has its place, nothing upon anything. NULL when there is none on this paper.
 *  cost  tens of milliseconds: candidate drawings are tried one after the other */
WallSheetLayout *wall_sheet_layout_new  (const WallSheet *sheet);
void             wall_sheet_layout_free (WallSheetLayout *self);        /* NULL is fine */
/** Paints it on cr, whose user unit is 1 mm and whose origin is the paper's upper left corner. The paper itself is not painted. Leaves cr
 *  as it found it; a failure stays in cairo_status (cr). */
void             wall_sheet_draw        (const WallSheetLayout *self, cairo_t *cr);
/** The paper's size as it lies, mm. */
void             wall_sheet_size        (const WallSheet *sheet, double *width, double *height);
/** The same of one laid out. In mm. */
void             wall_sheet_layout_size (const WallSheetLayout *self, double *width, double *height);
/** The scale of plan and side view, a ratio: 0.4 for 1 : 2.5; 0 when nothing is drawn yet. */
double           wall_sheet_layout_scale (const WallSheetLayout *self);
/** Whether the mark's section stands on it, whole or broken off. */
bool             wall_sheet_layout_has_section (const WallSheetLayout *self);
/** The aeroplane's name, or what stands for it while it has none. Lent. */
const char      *wall_sheet_title       (const WallSheet *sheet);
