#pragma once
#include "figures/figures.h"

/** The static margin that is advised, percent of MAC: the aim, or more where that is not one deviation clear of the aft limit; NAN without a
 *  target. */
double margin_advised_percent (const Figures *figures);
/** The same in the middle of a sentence, after "for": "the aim, 12 %", or "14 %, one deviation clear of the aft limit". A new string; NULL
 *  without a target. */
char  *margin_advised_phrase  (const Figures *figures);
