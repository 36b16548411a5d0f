#pragma once
#include "document/aeroplane.h"
#include "document/units.h"

/** What a part's class goes by when it is bought: "1900 rpm per volt, up to 70 W", "2 cells, 450 mAh", "152 × 102 mm (6 × 4 in)", "12 A"; of a
 *  servo what it weighs, by which servos are sold. A new string, translated; NULL where the document knows nothing of the kind. */
char *part_rating_text (const Part *part, Units units);

/** The same as fields of their own, those of CSV_RATING_HEADING; part NULL: all empty. */
void csv_part_rating (GString *text, const Part *part);
#define CSV_RATING_HEADING "rpm_per_volt,power_w,input_w,diameter_mm,pitch_mm,cells,capacity_mah,current_a"
