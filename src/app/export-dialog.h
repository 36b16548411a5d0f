#pragma once
#include "app/window.h"

typedef enum { EXPORT_TO_FILE, EXPORT_TO_PRINTER } ExportAim;

/** Asks which sheet of the window's document is printed or exported, with its pages beside it as they will be. Exported, it asks where to,
 *  writes away from the main thread and says so in a toast with "Open Folder"; printed, it opens the desktop's own dialog. Begins with what was
 *  last chosen; `aim` says which button is the suggested one. Modal to the window. */
void export_dialog_present (TrammelWindow *window, ExportAim aim);
