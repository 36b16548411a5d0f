#pragma once
#include "app/settings.h"
#include "drawing/export.h"

/** What was last chosen in the dialog of prints and exports: for as long as the program runs, the printer's correction for good.
 *  Before anything was: the wall sheet on the paper of the place, in the person's units. */
ExportOptions export_memory_read (TrammelSettings *settings);
void          export_memory_keep (TrammelSettings *settings, const ExportOptions *options);
