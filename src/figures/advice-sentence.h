#pragma once
#include "document/units.h"
#include "figures/advice-state.h"

/** The one sentence: state first, then one action with one figure. A new string, translated. */
char *advice_sentence (const Figures *figures, const AdviceMeans *means, AdviceState state, const SurfaceFigures *surface, Units units);

/** The smaller line beneath it; "" when there is nothing to add. A new string, translated. */
char *advice_second (const Figures *figures, const AdviceMeans *means, AdviceState state, Units units);
