#pragma once
#include <gtk/gtk.h>

/** Shows the help in a window of its own, one for the program. The pages are the same that a help viewer of the desktop shows.
 *  page   comes to be read; NULL: the one that is read already, at first the first */
void help_window_present (GtkApplication *application, const char *page);
