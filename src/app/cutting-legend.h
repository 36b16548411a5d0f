#pragma once
#include <gtk/gtk.h>

/** What each colour of a file for cutting means: for each layer a stroke in its colour, and its words. Hidden until it is filled. */
GtkWidget *cutting_legend_new  (void);
/** Shows those layers, as cutting_layers_used has them; none hides it. */
void       cutting_legend_fill (GtkWidget *legend, unsigned layers);
