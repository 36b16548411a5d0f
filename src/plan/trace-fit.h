#pragma once
#include <stdbool.h>
#include "geometry/drawn-run.h"
#include "geometry/outline.h"

/* Private to the plan room. */

/** Makes an outline of a half-outline as it was measured, mm: two exact quarters of ellipses where its outer part is that (all of it, or
 *  from some station on; not where it is no half but goes round), lines and curves else. `places` is what run->places points to;
 *  it is changed meanwhile and put back.
 *  tolerance  mm
 *  returns    as curve_fit and outline_new */
CoreStatus trace_fit (const DrawnRun *run, Point *places, bool half, double tolerance, Outline **outline);
