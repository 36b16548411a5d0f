#pragma once
#include "drawing/wall-sheet-pen.h"

enum { TABLE_COLUMNS = 8 };

/** A small table as on a drawing: a title, firm lines above and below, a thin one under each row. Columns are as wide as their words. */
typedef struct {
  const char *title;
  unsigned columns;                          /* <= TABLE_COLUMNS */
  const char *heads[TABLE_COLUMNS];          /* heads[0] NULL: no row of heads */
  bool to_right[TABLE_COLUMNS];              /* figures stand at the right of their column */
  GPtrArray *rows;                           /* of char *[TABLE_COLUMNS], owned */
  double caps;                               /* of the rows */
  double widest;                             /* a column's words are cut beyond it */
} RuledTable;

RuledTable ruled_table_new   (const char *title, unsigned columns);      /* without heads and rows; the title is lent */
void       ruled_table_clear (RuledTable *self);                         /* frees the rows, not itself */
/** Adds a row; the strings are taken, NULL is an empty cell. Returns its cells. */
char     **ruled_table_add   (RuledTable *self, char *const takes[]);
/** Draws it in `parts` tables side by side, each with its heads; its upper left corner at `at`. */
void       ruled_table_draw  (const SheetPen *pen, const RuledTable *self, Point at, unsigned parts);
