#pragma once
#include <gtk/gtk.h>

/** Gives a widget that tooltip, NULL for none. To be used where it is said again and again: an unchanged one costs nothing, whereas the
 *  toolkit asks the display each time where the pointer is, and shows anew what it may be showing. */
void tooltip_set (GtkWidget *widget, const char *text);
