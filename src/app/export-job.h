#pragma once
#include "app/window.h"
#include "drawing/export.h"

/** Called when nothing was written, with the reason; not when it was cancelled or the window is gone. All lent. */
typedef void (*ExportReturned) (TrammelWindow *window, const ExportOptions *options, const char *sentence);

/** Writes an export away from the main thread and says in the window when it is done: a toast "Exported Saltmarsh.pdf" with "Open Folder".
 *  Whoever chose `path` was asked about files that are there; of several pages each is a file of its own. What takes its time can be cancelled
 *  in the window's strip; nothing is written then.
 *  remark  a sentence for the window's strip, said once it is written; NULL for none */
void export_job_run (TrammelWindow *window, const Figures *figures, const ExportOptions *options, const char *path, const char *remark,
                     ExportReturned returned);
