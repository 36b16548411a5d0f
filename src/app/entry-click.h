#pragma once
#include <gtk/gtk.h>

G_BEGIN_DECLS

/** A click that brings the keyboard into the entry selects all of its text, as Tab does: what is typed next replaces it. Text marked by
 *  dragging stays marked, and clicks that follow place the cursor. */
void entry_select_on_click (GtkWidget *entry);
/** Selects all of it, seen from its beginning. */
void entry_select_all      (GtkWidget *entry);
/** A text longer than the entry is seen from its beginning when the keyboard has come, with all of it selected, or gone. */
void entry_show_beginning  (GtkWidget *entry);

/** Ctrl+Z and its like in the entry are the aeroplane's, not the text's. */
void entry_leave_undo (GtkWidget *entry);

G_END_DECLS
