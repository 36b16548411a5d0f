#pragma once
#include "drawing/ruled-table.h"

/** A ruled table as wide as a page's column: words that find no room beside one another go on below, nothing is cut, and it may break between
 *  any two rows, its heads drawn again. Lengths mm. */
typedef struct {
  const RuledTable *table;      /* lent; its title is not drawn, and `widest` does not count */
  double width;                 /* of the rules */
  double columns[TABLE_COLUMNS];
  bool ticks;                   /* the first column is boxes to tick off; its words are not drawn */
  unsigned parted;              /* before this column a second table begins beside the first; 0: there is none */
  unsigned ditto;               /* so many of the first columns are blank where they say what the row above says, except at the head of a page */
} PageTable;

/** What a table is like beside its words. */
typedef struct { unsigned stretches, parted, ditto; bool ticks; } PageTableStyle;
/** Columns as wide as their words where there is room for all of them, what is left over given to the column `stretches`, to all alike where there
 *  is no such column; else the widest are narrowed, none below its longest word while that goes. `width` of it all, mm. */
PageTable page_table_new  (const SheetPen *pen, const RuledTable *table, double width, PageTableStyle style);
/** How high a row is with the air about it; of the heads with row -1, 0 without any. In mm. */
double    page_table_high (const SheetPen *pen, const PageTable *self, int row);
/** Whether a row goes on with what the rows above it have in common, all of it: no page should end before it. */
bool      page_table_goes_on (const PageTable *self, guint row);
/** Draws rows from `from` up to, not with, `to` below their heads; its upper left corner at `at`. */
void      page_table_draw (const SheetPen *pen, const PageTable *self, Point at, guint from, guint to);
