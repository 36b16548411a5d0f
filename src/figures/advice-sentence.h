#pragma once
#include "document/units.h"
#include "figures/advice-state.h"

/** The one sentence: state first, then one action with one figure. A new string, translated. */
char *advice_sentence (const Figures *figures, const AdviceMeans *means, AdviceState state, const SurfaceFigures *surface, Units units);

/** The same for the states of an outline, STATE_OUTLINE_OPEN to _LAST. A new string, translated. */
char *advice_outline_sentence (AdviceState state, SurfaceRole role);

/** The same where something drawn has no mass yet, naming it; one surface or body is unweighed at least. A new string, translated. */
char *advice_unweighed_sentence (const Aeroplane *aeroplane);
/** The same where this part slides and weighs nothing. A new string, translated. */
char *advice_weightless_sentence (const Part *part);
/** The fact alone, for the smaller line: that the airframe, something drawn or what slides has no mass; NULL when all have one. A new
 *  string, translated. */
char *advice_missing_mass (const Figures *figures);

/** The smaller line beneath it; "" when there is nothing to add. A new string, translated. */
char *advice_second (const Figures *figures, const AdviceMeans *means, AdviceState state, Units units);
