#pragma once
#include "figures/figures.h"
#include "figures/json-text.h"

/** Writes "structures", an array with an object for each: what it weighs, and where it has items what they come to, each and
 *  together. */
void report_write_structures (JsonText *json, const Figures *figures);
