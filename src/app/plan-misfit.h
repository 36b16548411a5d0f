#pragma once
#include "document/aeroplane.h"
#include "document/units.h"
#include "plan/mapping.h"

/** What is known of a plan, in words. New strings, translated. */

/** How well what is known agrees, the weightiest thing alone: "Paper has stretched: across 0.4 % more than along. Both are used." NULL when
 *  nothing is known yet. `misfit` is of that plan. */
char *plan_misfit_words (const Plan *plan, const MappingMisfit *misfit, bool is_true, Units units);
/** How large the whole picture comes out by that. NULL while it is not measured, or where a photograph was squared up: then it has no one
 *  size. */
char *plan_misfit_picture (const Plan *plan, const MappingMisfit *misfit, Units units);
/** Where by all that is known the whole picture would be larger than any plan, or smaller: how large. NULL otherwise. */
char *plan_misfit_size  (const Plan *plan, const MappingMisfit *misfit, Units units);
/** Where a known length of the plan is meant to be the wing's span, tip to tip or root to tip, and they differ by more than a quarter per
 *  cent: by how much. NULL otherwise, and without a wing. One is meant that lies within five per cent of it. */
char *plan_misfit_span  (const Aeroplane *aeroplane, const Plan *plan);
