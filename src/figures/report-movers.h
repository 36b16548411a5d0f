#pragma once
#include "figures/figures.h"
#include "figures/json-text.h"

/** Adds `movers`, the most useful first, and `missing`, the ballast that would do (null where none is needed, or none does): see movers.h. */
void report_write_movers (JsonText *json, const Figures *figures);
