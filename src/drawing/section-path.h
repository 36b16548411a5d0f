#pragma once
#include <cairo.h>
#include "geometry/point.h"

/** A thin even section: from `until` along the upper side to the leading edge and back along the lower, open at `until`.
 *  leading, trailing  its ends, user units, x to the right, y down
 *  thickness          share of the chord
 *  until              0..1: where it is cut; 1 gives the whole
 *  shape              section_half_thickness */
typedef struct { Point leading, trailing; double thickness, until; } SectionPath;
/** Adds it to cr's path; nothing is stroked. */
void section_path (cairo_t *cr, const SectionPath *section);
