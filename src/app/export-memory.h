#pragma once
#include "app/settings.h"
#include "drawing/export.h"

/** What was last chosen in the dialog of prints and exports: for as long as the program runs, the printer's correction for good.
 *  Before anything was: the wall sheet on the paper of the place, in the person's units. */
ExportOptions export_memory_read   (TrammelSettings *settings);
void          export_memory_keep   (TrammelSettings *settings, const ExportOptions *options);      /* copies the options */
/** The format that was last chosen of that sheet; its usual one before any was. */
ExportFormat  export_memory_format (TrammelSettings *settings, ExportSheet sheet);

/** The folder an export was last written to while the program runs; NULL before any was, and where it is no more. The caller's. */
char         *export_memory_folder      (TrammelSettings *settings);
/** `path` was written. */
void          export_memory_keep_folder (TrammelSettings *settings, const char *path);
