#pragma once
#include <gtk/gtk.h>
#include "app/session.h"

G_BEGIN_DECLS

/** The outlines of what is selected that pass a click by far, a sentence each, and a button that accepts them as they are, one step. Not to
 *  be seen while there are none. */
GtkWidget *passed_group_new (TrammelSession *session);

G_END_DECLS
