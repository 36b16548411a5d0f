#pragma once
#include "app/window.h"
#include "drawing/export.h"

/** Called when nothing was written, with the reason; not when it was cancelled or the window is gone. All lent.
 *  sentence   NULL: the person would not have files replaced
 *  elsewhere  and wishes to name another place at once */
typedef void (*ExportReturned) (TrammelWindow *window, const ExportOptions *options, const char *sentence, bool elsewhere);

/** Writes an export away from the main thread and says in the window when it is done: a toast "Exported Saltmarsh.pdf" with "Open Folder".
 *  Whoever chose `path` was asked about a file there; of several pages each is a file of its own, and where some of those are there it asks once
 *  before it writes. What takes its time can be cancelled in the window's strip; nothing is written then. */
void export_job_run (TrammelWindow *window, const Figures *figures, const ExportOptions *options, const char *path, ExportReturned returned);
