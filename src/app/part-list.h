#pragma once
#include <gtk/gtk.h>
#include "app/session.h"

G_BEGIN_DECLS

/** Told what was chosen: a part like it, lent, without id. */
typedef void (*PartChosen) (gpointer data, const Part *pattern);

/** The catalogue of parts, grouped by class, with a field to search it and, on a second leaf, packs, motors and propellers by their size.
 *  Typing searches, Return takes the first row, Down goes into the list; a row can be dragged onto the sheet. What is wrong with a person's
 *  own catalogue is said beneath. Made for a popover. */
GtkWidget *part_list_new (TrammelSession *session, PartChosen chosen, gpointer data);

/** What a row that is dragged carries: a Part, counted. */
#define TRAMMEL_TYPE_PART_PATTERN (trammel_part_pattern_get_type ())
GType trammel_part_pattern_get_type (void);      /* a boxed type */

G_END_DECLS
