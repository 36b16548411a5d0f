#pragma once
#include "document/units.h"
#include "figures/places-memo.h"
#include "figures/report.h"

/** A list of report.h as a table for people: what it is about, then figures in the person's units, without a unit: that stands in the
 *  heading. */
enum { LIST_COLUMNS = 4, LIST_SHARES = 36 };

typedef struct {
  char **ids;                     /* the pieces to be chosen with it, NULL-terminated; NULL: none */
  char *cells[LIST_COLUMNS];
  double keys[LIST_COLUMNS];      /* what its figures are sorted by, in mm and g; NAN: none */
  char *words;                    /* the whole of it, as it is read aloud */
} ListRow;

typedef struct {
  const char *titles[LIST_COLUMNS];       /* translated */
  const char *units[LIST_COLUMNS];        /* "": none */
  int shares[LIST_COLUMNS];               /* of the width, LIST_SHARES in all; nothing of the first, which has a line of its own */
  bool ways[LIST_COLUMNS];                /* goes forward or aft: said with its side, copied with a sign */
  Units in;
  GPtrArray *rows;                        /* of ListRow; the order is the list's own: what matters most first */
  char *beneath;                          /* what is true of all of it, in sentences; NULL: nothing */
  const char *empty;                      /* a sentence in place of rows; NULL: there are some */
} ListRows;

/** What the list says of these figures: REPORT_LIST_GROUPS, _MOMENTS, _MOVERS or _LEADS. A new one.
 *  memo    kept by who asks at each frame; NULL: none */
ListRows *list_rows_new  (const Figures *figures, Units units, ReportList list, PlacesMemo *memo);
void      list_rows_free (ListRows *self);      /* not NULL */
/** By a column: names by the alphabet, figures by their size, what has none last. */
void      list_rows_sort (ListRows *self, guint column, bool descending);
/** For a spreadsheet: a line each row, headings with units first, tabs between; signs and blanks as a keyboard has them, and ways
 *  without words: positive aft. A new string. */
char     *list_rows_text (const ListRows *self);

G_DEFINE_AUTOPTR_CLEANUP_FUNC (ListRows, list_rows_free)
