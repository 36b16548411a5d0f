#pragma once
#include "figures/figures.h"

/** Why a solve gave no neutral point, in a builder's words: what stands in the way and what to do. */

/** For the answer, at most two lines of the panel. Translated, lent. `point` has a status other than CORE_OK and CORE_NO_AREA. */
const char *no_neutral_point_headline (const NeutralPointFigures *point);

/** For the findings, with the surfaces' names. A new string, translated. */
char *no_neutral_point_finding (const NeutralPointFigures *point);
