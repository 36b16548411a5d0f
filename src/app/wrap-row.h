#pragma once
#include <gtk/gtk.h>

G_BEGIN_DECLS

#define TRAMMEL_TYPE_WRAP_ROW (trammel_wrap_row_get_type ())
G_DECLARE_FINAL_TYPE (TrammelWrapRow, trammel_wrap_row, TRAMMEL, WRAP_ROW, GtkWidget)

/** A sentence with controls at its end; where they would leave it no room to be read in two lines they stand beneath it. Nothing is cut
 *  off as long as the wider of the two fits. `controls` (floating) may be invisible. */
GtkWidget *trammel_wrap_row_new (GtkWidget *controls);
/** The sentence, a label that wraps; lent. */
GtkLabel  *trammel_wrap_row_sentence (TrammelWrapRow *self);

G_END_DECLS
