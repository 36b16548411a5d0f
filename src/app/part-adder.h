#pragma once
#include <gtk/gtk.h>
#include "app/session.h"

/** A menu button that opens the catalogue of parts; the one chosen is put in its usual place and selected.
 *  `chosen` (may be NULL) is told a part like it, lent. */
GtkWidget *part_adder_new (TrammelSession *session, void (*chosen) (gpointer data, const Part *pattern), gpointer data);

/** The aeroplane with one more part like `pattern` (lent; its id and place do not count) in its usual place; its new id in *id (a new
 *  string). A cowl of no size of its own is fitted over the nose (cowl_fit_nose). */
Aeroplane *part_adder_with (const Aeroplane *aeroplane, const Part *pattern, char **id);
/** The same with its middle there, mm, at the datum's height. */
Aeroplane *part_adder_at   (const Aeroplane *aeroplane, const Part *pattern, Point place, char **id);
/** Whether a part like it is no part but a two-into-one lead, which joins parts that are there. */
bool       part_adder_is_lead (const Part *pattern);
/** Adds one like `pattern` as a step and selects it: with its middle at `place`, mm, or, NULL, in its usual place. A two-into-one lead joins
 *  the servos and the receiver that are nearest (lead_joining_ends).
 *  returns  what somebody has to be told of it, a sentence and a new string; NULL where it is plain to see */
char      *part_adder_put  (TrammelSession *session, const Part *pattern, const Point *place);
/** What that step is called: "Add Battery". A new string. */
char      *part_adder_step (const Part *pattern);
