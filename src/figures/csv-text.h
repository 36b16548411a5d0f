#pragma once
#include <stdbool.h>
#include <glib.h>

/** Rows of comma-separated values, RFC 4180, C locale. Fields follow each other with a comma between; a row ends with csv_end. */
void csv_field  (GString *text, const char *field);       /* quoted where it must be; NULL is an empty one */
/** To the hundredth, which is all that grams and millimetres are worth; no more digits than that needs. Empty where there is none. */
void csv_number (GString *text, double value);
void csv_share  (GString *text, double value);            /* a part of one, to the ten-thousandth; no unit; empty where there is none */
void csv_end    (GString *text);
