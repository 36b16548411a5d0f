#pragma once
#include "figures/figures.h"
#include "figures/json-text.h"

/** Adds `coverings`, one for all that can be looked at: see coverings.h. */
void report_write_coverings (JsonText *json, const Figures *figures);
