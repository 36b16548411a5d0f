#pragma once
#include <gtk/gtk.h>

/** A button whose words go on in a second line where they have no room: two beside each other never widen the panel, in no language. */
GtkWidget *wrapped_button_new (const char *words);
