#pragma once
#include "app/settings.h"
#include <gtk/gtk.h>

/** The cautions, on a card that lies at the foot of the sheet until "Understood" has been pressed once; it holds nothing up. NULL when
 *  it was read already. */
GtkWidget *cautions_card_new (TrammelSettings *settings);
