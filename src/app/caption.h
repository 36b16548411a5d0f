#pragma once
#include <gtk/gtk.h>

/** Small pale words beneath or beside what they are about, at the left, wrapped where they must be. */
GtkWidget *caption_new (const char *text);      /* NULL: none yet */
