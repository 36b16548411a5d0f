#pragma once
#include "app/file-chooser.h"
#include "drawing/export.h"

/** Tells which files are there that such an export to `path` will replace, and no others: at once, or where its pages must be counted first, later,
 *  when that is done away from the main thread.
 *  pages  how many it has; 0 where that is not known
 *  told   takes the paths; called once with `asked` */
void export_place_look (const Figures *figures, const ExportOptions *options, const char *path, size_t pages, FilesTold told, gpointer asked);

/** What is to be said where the ending that was typed went for another, since the sheet has no such files: a sentence, the caller's; NULL where it
 *  stands, or nothing was typed that is an ending of ours. */
char *export_place_exchanged (const ExportOptions *options, const char *typed);
