#pragma once
#include "document/units.h"
#include "figures/figures.h"

/** Every figure as text for people, in their units, translated; ends with a newline. A new string. */
char *report_text (const Figures *figures, Units units);

/** How each of these figures came about, in the same form: formula, inputs, source, limits. A new string. */
char *report_explanations (const Figures *figures, Units units);

/** Every figure for programs: JSON with units in the names, C locale, the same bytes for the same aeroplane; a figure that cannot be had is
 *  null, with the reason in "notes". A new string. */
char *report_json (const Figures *figures);

/** Lists for a spreadsheet: comma-separated values, C locale, mm and g, a heading row with the units. */
typedef enum {
  REPORT_LIST_PARTS,            /* report_parts_csv */
  REPORT_LIST_GROUPS,           /* mass by what it serves: mass-lists.h */
  REPORT_LIST_MOMENTS,          /* of each thing aboard, about the balance point and the datum */
  REPORT_LIST_MOVERS,           /* what each part can do for the balance: movers.h */
  REPORT_LIST_COVERINGS,        /* what other coverings would do: coverings.h */
  REPORT_LIST_LEADS,            /* how long each lead is and must be, and the extension to buy: lead-lists.h */
  REPORT_LIST_CUTTING,          /* what is to be cut of sheet and sticks: cutting-list.h */
  REPORT_LIST_BEFORE_CLOSING,   /* what goes in before the body is closed: before-closing.h */
  REPORT_LIST_FORMERS,          /* where formers and ribs stand: station-list.h */
  REPORT_LIST_COUNT
} ReportList;
char       *report_list_csv       (const Figures *figures, ReportList list);      /* a new string */
const char *report_list_word      (ReportList list);                              /* "moments" */
bool        report_list_from_word (const char *word, ReportList *list);           /* false for none of these */

/** The parts list as comma-separated values (RFC 4180), C locale, a heading row; leads that are no part
 *  of their own follow as rows of the class "lead". A new string. */
char *report_parts_csv (const Figures *figures);
