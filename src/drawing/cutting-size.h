#pragma once
#include "document/units.h"
#include "drawing/cutting.h"

/** How large the whole file is and on what sheet it fits, the smaller the better: "600 by 347 mm over all; it fits on a sheet of 600 by 400 mm."
 *  A new string, translated. Sheets are what cutters' beds take, up to 1300 by 900 mm or 48 by 36 in; common practice, no source. */
char *cutting_size_text (const Cutting *cutting, Units units);
/** Which layers have something: a bit each, 1 << layer. */
unsigned cutting_layers_used (const Cutting *cutting);
