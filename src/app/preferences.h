#pragma once
#include "app/settings.h"
#include <gtk/gtk.h>

/** Shows the person's choices over `parent`; each takes effect at once, in every window. */
void preferences_present (GtkWindow *parent, TrammelSettings *settings);
