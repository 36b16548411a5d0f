#pragma once
#include <gtk/gtk.h>

/** libadwaita's pages and rows leave their lists, fields, spin buttons and switches without a name of their own. Gives each below `root` the
 *  title of the row that it stands in, and the lists and scrolled places that hold rows the name `lists`. */
void row_names_give (GtkWidget *root, const char *lists);
