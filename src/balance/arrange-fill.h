#pragma once
#include "balance/arrange-space.h"

/** How much of a length parts fill, wherever in it and however beside one another they stand. Private to the arrangement. */

/** Some parts, and the box that all of them stand in, half the clearance around it. */
typedef struct {
  size_t parts[PARTS_MOST], count;
  Span around;                    /* mm */
} Fill;

/** Adds a part whose centre stands in `span`. */
void fill_add (Fill *self, const Space *space, size_t part, const Span *span);
/** Of each part the length that it fills when it takes its share of the cross-section: its length times width over the box's width, and
 *  likewise height, or times 1 where nothing of these goes beside it (a conservative scale: Fekete and Schepers, A general framework for
 *  bounds for higher-dimensional orthogonal packing problems, 2004). Half the clearance counts on every side.
 *  filled   set, one a part, mm
 *  returns  their sum: more than the box is long when they cannot all stand in it */
double fill_lengths (const Fill *self, const Space *space, double filled[]);
