#pragma once
#include "app/numbers-shape.h"

/** What From Numbers says, translated. */

/** A number's label; a fin's span is its height. */
const char *numbers_label (NumbersThing thing, Number number);
/** Why these enclose nothing, when this number is too small for it; NUMBER_COUNT when none is. A new sentence. Values in mm. */
char *numbers_fault (NumbersThing thing, Number number, const double values[NUMBER_COUNT]);
