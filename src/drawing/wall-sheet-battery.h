#pragma once
#include "drawing/wall-sheet.h"

/** What the sheet says of the battery's place: where its middle stands for the mark when that is known and within its rail, else where it
 *  is drawn. New strings; `note` is a sentence when the two differ or the rail does not reach, else NULL. */
typedef struct { char *field, *words, *note; } BatteryWords;

BatteryWords battery_words_of    (const WallSheet *sheet);     /* "none yet" without a battery; end it with battery_words_clear */
void         battery_words_clear (BatteryWords *self);         /* frees the strings, not itself */
/** x, mm: "105 mm aft of datum", or ahead of it. A new string. */
char        *place_words (Units units, double x);
