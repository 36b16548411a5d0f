#pragma once
#include "drawing/ruled-table.h"

/** A ruled table as wide as a page's column: words that find no room beside one another go on below, nothing is cut, and it may break between
 *  any two rows, its heads drawn again. Lengths mm. */
typedef struct {
  const RuledTable *table;      /* lent; its title is not drawn, and `widest` does not count */
  double width;                 /* of the rules */
  double columns[TABLE_COLUMNS];
  bool ticks;                   /* the first column is boxes to tick off; its words are not drawn */
} PageTable;

/** Columns as wide as their words where there is room for all of them, what is left over given to the column `stretches`; else the widest are
 *  narrowed, none below its longest word while that goes. */
PageTable page_table_new  (const SheetPen *pen, const RuledTable *table, double width, unsigned stretches, bool ticks);
/** How high a row is with the air about it; of the heads with row -1, 0 without any. */
double    page_table_high (const SheetPen *pen, const PageTable *self, int row);
/** Draws rows from `from` up to, not with, `to` below their heads; its upper left corner at `at`. */
void      page_table_draw (const SheetPen *pen, const PageTable *self, Point at, guint from, guint to);
