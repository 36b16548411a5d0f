#pragma once
#include <gtk/gtk.h>
#include "drawing/look.h"

/** The drawing's look for a widget as the desktop stands: light or dark, high contrast, the system font's size. */
Look theme_look (GtkWidget *widget);
/** Redraws the widget whenever that changes. */
void theme_follow (GtkWidget *widget);
