#pragma once
#include <gtk/gtk.h>
#include "app/session.h"

/** What the selected part is, of the catalogue's entries of its class: a button with the kind it has, which opens the others, each with what it
 *  would do to the place of the battery. To be refreshed by piece_control_refresh. */
GtkWidget *part_kind_control (TrammelSession *session);
