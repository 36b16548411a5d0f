#pragma once
#include <gtk/gtk.h>

/** Has each row of a drop-down list of words bear them as its name, for a screen reader: the toolkit's own rows have none. */
void named_rows_of (GtkDropDown *list);
