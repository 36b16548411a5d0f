#pragma once
#include <gtk/gtk.h>
#include "app/session.h"

/** A menu button that opens the catalogue of parts; the one chosen is put in its usual place and selected.
 *  `chosen` (may be NULL) is told a part like it, lent. */
GtkWidget *part_adder_new (TrammelSession *session, void (*chosen) (gpointer data, const Part *pattern), gpointer data);

/** The aeroplane with one more part like `pattern` (lent; its id and place do not count) in its usual place; its new id in *id (a new
 *  string). */
Aeroplane *part_adder_with (const Aeroplane *aeroplane, const Part *pattern, char **id);
/** The same with its middle there, mm, at the datum's height. */
Aeroplane *part_adder_at   (const Aeroplane *aeroplane, const Part *pattern, Point place, char **id);
/** What that step is called: "Add Battery". A new string. */
char      *part_adder_step (const Part *pattern);
