#pragma once
#include "document/units.h"
#include "figures/figures.h"
#include "figures/json-text.h"
#include "figures/text-table.h"

/** A row each covering, on the tail and on all; none while all is bare.
 *  beneath  which part the rows speak of, and what the lightest on the tail would spare there and at the nose, in sentences; caller frees.
 *           NULL where there is nothing to tell */
TextTable report_coverings (const Figures *figures, Units units, char **beneath);

/** Adds `coverings`, one for all that can be looked at: see coverings.h. */
void report_write_coverings (JsonText *json, const Figures *figures);
