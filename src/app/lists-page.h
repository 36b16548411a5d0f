#pragma once
#include <gtk/gtk.h>
#include "app/session.h"

/** The lists, one below the other: mass by group, moments, what moves the balance. A page of the panel; it stays while something is chosen
 *  or dragged on the sheet, so that the figures can be watched. */
GtkWidget *lists_page_new (TrammelSession *session);
