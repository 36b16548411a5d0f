#pragma once
#include <stdbool.h>
#include <stddef.h>

/** Numbers as the file has them: point as decimal sign whatever the locale. Private to this room. */

enum { NUMBER_ROOM = 32 };

/** Writes the shortest text that reads back to the same bits, and returns its length. `text` has NUMBER_ROOM bytes; value finite,
 *  in whatever unit the document holds (mm, g, degrees): no unit is written. */
size_t number_write (double value, char *text);

/** The same, without a unit likewise (mm, g, degrees), for what needs 15 to 17 digits, without going through printf: several times
 *  as fast. 0 where the value is below 1e-3, not below 1e8, or so near to a rounding's edge that only exact arithmetic can tell.
 *  What it writes is what number_write writes without it. */
size_t number_write_long (double value, char *text);

/** Reads a whole text: sign, digits with a point among them, exponent; blanks around it are allowed. No "inf", no hexadecimal, no
 *  comma. False when it is something else or not finite; *value is then untouched, else in the document's unit (mm, g, degrees). */
bool number_read (const char *text, size_t length, double *value);

/** The same bytes with the decimal sign exchanged: what a locale writes for '.'. A new string. */
char *number_with_sign (const char *text, const char *decimal);
