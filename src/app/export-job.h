#pragma once
#include "app/window.h"
#include "drawing/export.h"

/** Writes an export away from the main thread and says in the window how it went: a toast "Exported Saltmarsh.pdf" with "Open Folder", or
 *  the reason in the strip. What takes its time can be cancelled there; nothing is written then. */
void export_job_run (TrammelWindow *window, const Figures *figures, const ExportOptions *options, const char *path);
