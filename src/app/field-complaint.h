#pragma once
#include "app/field.h"

/** What a row of the panel says of what was typed and could not be taken: a sentence beneath it, which a screen reader reads out.
 *  entry  of the row; NULL where it is shown only */
GtkWidget *field_complaint_new   (GtkWidget *entry);
/** Says it, and marks the entry; NULL takes both away. */
void       field_complaint_say   (GtkWidget *self, GtkWidget *entry, const char *sentence);
/** Behind it, what stands in the aeroplane still: who has left the row is not asked to type it again. */
void       field_complaint_leave (GtkWidget *self, GtkWidget *entry, TrammelSession *session, const FieldSpec *spec);
/** Says it once more over the sheet, which does not move beneath the pointer for it, where it can be read when the row goes; nothing without one. */
void       field_complaint_hand_on (GtkWidget *self);

/** Why the aeroplane does not take that value, in the field's own unit (mm, g, degrees or %, by its kind): a new sentence. */
char      *field_complaint_why   (TrammelSession *session, const FieldSpec *spec, double value);
