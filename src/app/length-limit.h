#pragma once
#include "document/units.h"

/** The largest length or distance that a person may type, mm: no small aeroplane is larger, and a slip of the keyboard soon is. */
#define LENGTH_LIMIT_MM 20000.0

/* Sentences for what is refused, in the person's unit. New strings, translated. */

/** The limit itself: "20 m", "787 in". */
char *length_limit_words   (Units units);
/** NULL where mm can be the length of a span, else the sentence. */
char *length_limit_span    (Units units, double mm);
/** NULL where mm lies between `least` (0, or less) and the limit, else the sentence. */
char *length_limit_place   (Units units, double mm, double least);
