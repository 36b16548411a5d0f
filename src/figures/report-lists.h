#pragma once
#include "figures/figures.h"
#include "figures/json-text.h"

/** Adds `mass_groups` and `moments`: see mass-lists.h. No moments without a balance point. */
void report_write_groups  (JsonText *json, const Figures *figures);
void report_write_moments (JsonText *json, const Figures *figures);      /* grams × mm, about the balance point and the datum */
