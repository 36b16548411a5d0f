#pragma once
#include <gtk/gtk.h>
#include "app/session.h"

/** The panel's group of a surface or body that was traced: how it lies over its printed line, and while the trace is fresh how near it is to
 *  keep to it and whether it was drawn flat. Of a body's two outlines the one whose view is in hand, and the one traced last. Hides what does
 *  not hold, and itself. */
GtkWidget *traced_group_new (TrammelSession *session);
/** Shows the present state again. */
void       traced_group_refresh (GtkWidget *group);
