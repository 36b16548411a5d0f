#pragma once
#include "balance/arrange.h"

/** Parts that may change places without any figure changing: two servos of one kind. Of their orders one is searched. Private to the
 *  arrangement. */

/** Whether two parts have the same mass, size and ranges, and leads alike to the same other ends (none to each other). */
bool parts_are_alike (const ArrangeCase *wanted, size_t a, size_t b);
/** Exchanges parts that are alike where both together are then moved less. */
void exchange_parts_alike (const ArrangeCase *wanted, Arrangement *made);
