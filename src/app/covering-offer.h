#pragma once
#include <gtk/gtk.h>
#include "app/session.h"

/** A button that opens what each covering would weigh on the piece selected, on the tail or on the whole aeroplane, and what it does to the
 *  balance; a press of one puts it there, in one step. NULL where nothing selected can be covered. */
GtkWidget *covering_offer_new (TrammelSession *session);
