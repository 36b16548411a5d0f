#pragma once
#include "document/units.h"
#include "figures/figures.h"
#include "figures/json-text.h"

/** What the lightest covering on the tail would spare there and at the nose, in a sentence; caller frees. NULL where the tail is bare, there
 * is none, or nothing worth telling is spared. */
char *report_covering_worth (const Figures *figures, Units units);

/** Adds `coverings`, one for all that can be looked at: see coverings.h. */
void report_write_coverings (JsonText *json, const Figures *figures);
