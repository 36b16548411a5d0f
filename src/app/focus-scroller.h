#pragma once
#include <gtk/gtk.h>

G_BEGIN_DECLS

/** `takes`, scrolling up and down, in an area that `name` names for a screen reader. What the keyboard reaches is scrolled into sight;
 *  not so what a list has that opens over it: its rows would leave the hand that presses on them. Named "panel-scroller". */
GtkWidget *focus_scroller_new (GtkWidget *takes, const char *name);
/** Scrolls a widget of the content into sight as soon as what was changed in it is laid out. Nothing outside such an area. */
void focus_scroller_show (GtkWidget *widget);

G_END_DECLS
