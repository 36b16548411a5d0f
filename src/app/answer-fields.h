#pragma once
#include "app/piece-fields.h"

/** What is typed behind the figures of the answer: the wanted band's three percents, which must not turn it inside out, and the station of
 *  the first balance mark, mm. */
FieldList answer_band_fields    (void);
FieldList answer_station_fields (void);      /* the station alone, mm */
