#pragma once
#include <gtk/gtk.h>
#include "drawing/look.h"

/** The drawing's look for a widget as the desktop stands: light or dark, high contrast, the system font's size. */
Look theme_look (GtkWidget *widget);
/** The same over a scan in its own colours: light, however the desktop stands, since only that palette can be read there. */
Look theme_look_over_scan (GtkWidget *widget);
/** Redraws the widget whenever that changes. */
void theme_follow (GtkWidget *widget);
