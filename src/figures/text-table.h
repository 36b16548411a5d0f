#pragma once
#include <glib.h>

/** A table of words for a terminal: columns as wide as their widest cell, the first to the left, the others to the right unless a bit of
 *  `left` says otherwise; two blanks between. Widths count characters, not bytes. */
typedef struct {
  unsigned columns;
  unsigned left;          /* bit 0 is the first column */
  GPtrArray *cells;       /* strings, row by row */
} TextTable;

/** An empty one; bit 0 of `left` is set besides. text_table_print frees it. */
TextTable text_table_new   (unsigned columns, unsigned left);
/** One more cell; takes the string, NULL stands for an empty one. Rows fill from the left. */
void      text_table_cell  (TextTable *table, char *takes);
/** Appends it, two blanks in, and frees it. Nothing for an empty table. */
void      text_table_print (TextTable *table, GString *text);

/** Appends a paragraph, broken between words at `width` characters, `indent` blanks in; begins where the line stands now. */
void text_wrap (GString *text, const char *paragraph, unsigned indent, unsigned width);
