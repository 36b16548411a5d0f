#pragma once
#include "figures/ballast-places.h"
#include "figures/figures.h"
#include "figures/json-text.h"
#include "figures/text-table.h"

/** What the balance of an aeroplane as it stands has to be corrected by, to the place advised. */
BallastNeed ballast_need_of (const Figures *figures);

/** How much ballast is needed at each place, for a terminal, of BallastPlace; takes nothing. */
TextTable report_ballast_table (const GArray *places, Units units);
/** Of an aeroplane as it stands. */
TextTable report_ballast (const Figures *figures, Units units);

/** Adds `ballast_places`: place, bay (of an end of one), has_room, holds_g, and mass_g and x_mm where anything goes. */
void report_write_ballast_places (JsonText *json, const GArray *places);
void report_write_ballast        (JsonText *json, const Figures *figures);      /* the places that this aeroplane's need leaves, and the worst case */
