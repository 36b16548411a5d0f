#pragma once
#include "drawing/wall-sheet.h"

/** The parts sheet: what goes in before the body is closed, to be ticked off; the parts, with the numbers they have on the wall sheet, and where they
 *  stand; where formers and ribs do; the leads; what to cut; on as many upright pages as that takes. Black on white. */
typedef struct PartsSheetLayout PartsSheetLayout;

/** What is on it, in one line, translated. */
const char       *parts_sheet_subject      (void);
/** Of what a wall sheet is made of; `portrait` does not count, for lists stand upright. Keeps the figures alive, copies the rest.
 *  cost  tens of milliseconds */
PartsSheetLayout *parts_sheet_layout_new   (const WallSheet *sheet);
void              parts_sheet_layout_free  (PartsSheetLayout *self);        /* NULL is fine */
size_t            parts_sheet_layout_count (const PartsSheetLayout *self);  /* of pages, >= 1 */
void              parts_sheet_layout_size  (const PartsSheetLayout *self, double *width, double *height);      /* of each, mm */
/** Paints page `page`, from 0, on cr, whose user unit is 1 mm and whose origin is the paper's upper left corner. The paper itself is not
 *  painted. Leaves cr as it found it. */
void              parts_sheet_draw         (const PartsSheetLayout *self, size_t page, cairo_t *cr);
