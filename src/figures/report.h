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

/** The parts list as comma-separated values (RFC 4180), C locale, a heading row. A new string. */
char *report_parts_csv (const Figures *figures);
