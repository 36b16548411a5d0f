#pragma once
#include <gtk/gtk.h>

/** What the panel says where several things are selected: how many. */
GtkWidget *several_label_new (guint count);
