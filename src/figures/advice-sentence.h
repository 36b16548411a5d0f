#pragma once
#include "document/units.h"
#include "figures/advice-state.h"

/** The one sentence: state first, then one action with one figure. A new string, translated. */
char *advice_sentence (const Figures *figures, const AdviceMeans *means, AdviceState state, const SurfaceFigures *surface, Units units);

/** The same for the states of an outline, STATE_OUTLINE_OPEN to _LAST. A new string, translated. */
char *advice_outline_sentence (AdviceState state, SurfaceRole role);

/** The smaller line beneath it; "" when there is nothing to add. A new string, translated. */
char *advice_second (const Figures *figures, const AdviceMeans *means, AdviceState state, Units units);
