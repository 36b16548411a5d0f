#pragma once
#include <gtk/gtk.h>

/** What an empty sheet says: the one question, and the ways to begin, each a button that activates an action of the window:
 *  win.start-from-numbers, win.draw-outline, win.empty-sheet, app.open-example. Lies on the sheet and takes no more room than it needs. */
GtkWidget *start_page_new (void);
