#pragma once
#include <gtk/gtk.h>
#include "app/session.h"

/** The panel's group of a surface that was traced: how it lies over its printed line, and while the trace is fresh how near it is to keep to
 *  it and whether it was drawn flat. Hides what does not hold. */
GtkWidget *traced_group_new (TrammelSession *session);
/** Shows the present state again. */
void       traced_group_refresh (GtkWidget *group);
