#pragma once
#include <gtk/gtk.h>

/** Shows the help in a window of its own, one for the program. The pages are the same that a help viewer of the desktop shows. */
void help_window_present (GtkApplication *application);
