#pragma once
#include "document/units.h"
#include "figures/csv-text.h"
#include "figures/lead-need.h"

/** What is ordered by: each lead with its length, what its way needs and the extension that makes up for it. */

/** The heading's names of the fields that csv_lead appends. */
#define CSV_LEAD_HEADING "lead_from,lead_to,lead_length_mm,lead_needed_mm,lead_missing_mm,extension_mm"
/** The fields of one leg: the ids of the parts at its ends (of a two-into-one lead's leg the end at the joint is empty), then mm: its length,
 *  what its way needs, how much of that is missing, and the extension to buy: 0 where none is needed; empty where the length is not given,
 *  or one extension is not enough. lead NULL: as many empty fields. */
void  csv_lead (GString *text, const Aeroplane *aeroplane, const Lead *lead, LeadLeg leg);

/** All the leads as comma-separated values, a row each leg, with a heading row; what a lead weighs itself, g, stands with its last leg. */
void  csv_leads (GString *text, const Aeroplane *aeroplane);

/** What is to be bought for leads that are too short, in one sentence: "Extensions to buy: 1 of 100 mm, 2 of 150 mm." Where some are too
 *  short for one extension it says so as well. A new string, translated; NULL without a lead that is too short. */
char *leads_to_buy (const Aeroplane *aeroplane, Units units);

/** An extension to buy as a figure without its unit: "150"; "over 600" where one is not enough, "none" where none is needed, a dash where
 *  the length is not given. A new string, translated. */
char *lead_extension_figure (const LeadNeed *need, Units units);
