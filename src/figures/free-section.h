#pragma once
#include <stddef.h>

/** A rectangle across a body, mm: y to starboard, z up. */
typedef struct { double y_from, y_to, z_from, z_to; } Section;

/** mm²; 0 where one end lies beyond the other. */
double  section_area (Section self);
/** The largest rectangle within `whole` that meets none of the blocked ones; one without area where there is none. All of them are tried:
 *  its sides lie on sides of the whole or of what is blocked. */
Section section_largest_free (Section whole, const Section blocked[], size_t count);
/** The largest such that is as wide to one side of y = 0 as to the other. */
Section section_largest_centred (Section whole, const Section blocked[], size_t count);
