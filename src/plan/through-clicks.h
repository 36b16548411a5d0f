#pragma once
#include <stddef.h>
#include "geometry/point.h"
#include "geometry/status.h"

/* Private to the plan room. */

/** A smooth run through places in their order, a place about every px, in *run (the caller's, from malloc).
 *  returns  CORE_OK, CORE_NO_MEMORY
 *  method   centripetal Catmull–Rom: passes every click without loops where they stand at uneven distances
 *  source   Catmull and Rom, A Class of Local Interpolating Splines, 1974 (title from memory) */
CoreStatus through_clicks (const Point clicks[], size_t count, Point **run, size_t *run_count);
