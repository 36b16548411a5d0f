#pragma once
#include "app/sheet-canvas.h"

/** The lengths on the sheet that can be typed: the span, a mark's station, a part's and a node's place. */

/** What stands there exactly, mm; NAN when it is gone. A mark's figure opens its station: the figure itself follows from it. */
double     dimension_value   (const Figures *figures, const Hit *dimension);
/** Why it cannot be that length: a sentence in the person's unit, a new string; NULL when it can. In mm. */
char      *dimension_refusal (const Figures *figures, const Hit *dimension, double mm, Units units);
/** The aeroplane with that length, which dimension_refusal does not refuse; NULL when geometry does. In mm. */
Aeroplane *dimension_changed (const Aeroplane *aeroplane, const Hit *dimension, double mm);
/** Opens the field over the figure. */
void       dimension_field_open (TrammelSheetCanvas *sheet, const Hit *dimension);
