#pragma once
#include "app/sheet-canvas.h"

/** The lengths on the sheet that can be typed: the span, a mark's station, a part's and a node's place. */

/** What stands there exactly, mm; NAN when it is gone. A mark's figure opens its station: the figure itself follows from it. */
double     dimension_value   (const Figures *figures, const Hit *dimension);
/** The aeroplane with that length; NULL when it does not fit. */
Aeroplane *dimension_changed (const Aeroplane *aeroplane, const Hit *dimension, double mm);
/** Opens the field over the figure. */
void       dimension_field_open (TrammelSheetCanvas *sheet, const Hit *dimension);
