#pragma once
#include <gtk/gtk.h>
#include "app/session.h"

/** Bays in the panel: each with its name, the formers that bound it, and a button that takes it out; every change one undo step. To be
 *  refreshed by piece_control_refresh. */
GtkWidget *bay_list_control (TrammelSession *session);     /* of the selected body, and below them two formers and a button to add one */
GtkWidget *bay_control      (TrammelSession *session);     /* the selected bay alone */

/** The selected bay; NULL without. */
const Bay *bay_selected     (TrammelSession *session);
