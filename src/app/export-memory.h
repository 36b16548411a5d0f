#pragma once
#include "app/settings.h"
#include "drawing/export.h"

/** What was last chosen in the dialog of prints and exports: for as long as the program runs, the printer's correction for good.
 *  Before anything was: the wall sheet on the paper of the place, in the person's units. */
ExportOptions export_memory_read   (TrammelSettings *settings);
void          export_memory_keep   (TrammelSettings *settings, const ExportOptions *options);      /* copies the options */
/** The sheet of the options as it was left: format, paper and orientation. Before it was chosen, in its usual format on the paper that the options have. */
void          export_memory_recall (TrammelSettings *settings, ExportOptions *options);

/** The folder an export was last written to while the program runs; NULL before any was, and where it is no more. The caller's. */
char         *export_memory_folder      (TrammelSettings *settings);
/** `path` was written. */
void          export_memory_keep_folder (TrammelSettings *settings, const char *path);
