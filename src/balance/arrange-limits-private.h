#pragma once
#include "balance/arrange-space.h"

/** Shared by the files that tell why there is no arrangement. */

/** What was found so far; room for `most`. */
typedef struct {
  const ArrangeCase *wanted;
  const Space *space;
  ArrangeLimit *limits;
  size_t most, count;
} Findings;

/** Lengths mm → m and places are the caller's; `found` has part_count parts. Beyond `most` it is not kept. */
void findings_add (Findings *self, ArrangeLimit found);
/** What contradicts alone, each told without searching. False without memory. */
bool findings_add_alone (Findings *self);
