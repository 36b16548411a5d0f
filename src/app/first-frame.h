#pragma once
#include <gtk/gtk.h>

/** Has `act` done with the widget once, when it has first been painted: for what the first sight of a window can do without. What is made
 *  then is seen in the very next frame. Not done at all when the widget goes before. */
void first_frame_then (GtkWidget *widget, void (*act) (GtkWidget *widget));
