#pragma once
#include <glib.h>
#include <stdbool.h>

/** Bytes as text (RFC 4648, section 4), strictly: nothing but its alphabet, filled up with "=" at the end and nowhere else, no bits left
 *  over that a second text of the same bytes could differ in. Blanks and line ends must be gone already. Private to this room. */

/** The bytes, a new reference; NULL when the text is not that. An empty text gives no bytes. */
GBytes *base64_read (const char *text, size_t length);
/** Appends the bytes' text in lines of 76 signs (RFC 2045), each with its end. */
void base64_append (GString *to, GBytes *bytes);
