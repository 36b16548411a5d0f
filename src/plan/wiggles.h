#pragma once
#include <stdbool.h>
#include "geometry/drawn-run.h"

/* Private to the plan room. */

/** Takes the trust from stretches that turn to and fro, as a path among letters does and no outline: where over 4 mm each way it turns by
 *  more than 0.8 radians beyond what it comes round in the end. A corner and a bend only come round.
 *  run      mm; weights is what run->weights points to, changed
 *  returns  false without memory */
bool distrust_wiggles (const DrawnRun *run, double *weights);
