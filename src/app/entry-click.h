#pragma once
#include <gtk/gtk.h>

G_BEGIN_DECLS

/** A click that brings the keyboard into the entry selects all of its text, as Tab does: what is typed next replaces it. Text marked by
 *  dragging stays marked, and clicks that follow place the cursor. */
void entry_select_on_click (GtkWidget *entry);

G_END_DECLS
