#pragma once
#include <gtk/gtk.h>
#include "app/session.h"

G_BEGIN_DECLS

#define TRAMMEL_TYPE_NUMBERS (trammel_numbers_get_type ())
G_DECLARE_FINAL_TYPE (TrammelNumbers, trammel_numbers, TRAMMEL, NUMBERS, GtkBox)

/** "Start from Numbers": a page of fields for one new surface or body, drawn on the sheet while typing, one undo step. Emits "done" when it was
 *  added or given up. */
GtkWidget *trammel_numbers_new   (TrammelSession *session);
/** Begins with usual numbers beside what is drawn, for the next thing that is missing, and draws it. */
void       trammel_numbers_begin (TrammelNumbers *self);
/** Puts the sheet back as it was if nothing was added. */
void       trammel_numbers_leave (TrammelNumbers *self);

G_END_DECLS
