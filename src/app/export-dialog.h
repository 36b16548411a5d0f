#pragma once
#include "app/window.h"

/** Asks what the window's document is exported as, with the page beside it as it will be, then where to; writes it away from the main
 *  thread and says so in a toast with "Open Folder". Modal to the window. */
void export_dialog_present (TrammelWindow *window);
