#pragma once
#include <gtk/gtk.h>

/** A label at the left of a row, wrapped where it must be. A label by itself is asked by its row, each time the window is laid out, how
 *  narrow it could be at the row's height, and tries width after width to tell: of all that a start lays out that took the most. This one
 *  tells how wide it is in one line, whatever the height. */
GtkWidget *row_label_new (const char *text);
