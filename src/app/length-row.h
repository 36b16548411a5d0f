#pragma once
#include <adwaita.h>
#include "document/units.h"

G_BEGIN_DECLS

#define TRAMMEL_TYPE_LENGTH_ROW (trammel_length_row_get_type ())
G_DECLARE_FINAL_TYPE (TrammelLengthRow, trammel_length_row, TRAMMEL, LENGTH_ROW, AdwEntryRow)

/** A row of a dialog in which a length within bounds is typed. Text that is none, or out of bounds, stays with the error's look and keeps the last
 *  length. Emits "length-changed" when the length, or whether there is one, has changed. */

/** Its bounds, mm, ends included, and what is said beyond them (marked for translation). */
void        trammel_length_row_bound     (TrammelLengthRow *self, double least, double most, const char *beyond);
/** Shows it in those units; bare numbers are then read in them. The value in mm. */
void        trammel_length_row_set       (TrammelLengthRow *self, Units units, double mm);
double      trammel_length_row_mm        (TrammelLengthRow *self);      /* the last length understood, mm */
/** What is wrong with the text, a sentence for people; NULL when nothing is. Lent. */
const char *trammel_length_row_complaint (TrammelLengthRow *self);

G_END_DECLS
