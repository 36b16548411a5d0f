#pragma once
#include "document/units.h"
#include "figures/figures.h"
#include "figures/json-text.h"
#include "figures/lead-need.h"

/** How a leg's length serves: "12 mm left over", "short by 30 mm: an extension of 100 mm". A new string, translated; NULL where its length is
 *  not given. */
char *lead_reach_text    (const LeadNeed *need, Units units);
/** Writes the member "leads", one object a lead, in mm; a two-into-one lead is one, with "also", its joint and its "legs". Nothing without
 *  leads. */
void  report_write_leads (JsonText *json, const Figures *figures);
