#pragma once
#include "drawing/cutting.h"
#include "drawing/sheet-pages.h"

/** A file for cutting as a page to be looked at: its pieces at their places, edges with their kerf, each layer in its colour. One page, in broader lines
 *  than the file's hairlines. NULL and an error as export_cutting. */
SheetPages *cutting_page    (const Figures *figures, const ExportOptions *options, GError **error);
/** The same of what such a file holds, which it takes. */
SheetPages *cutting_page_of (Cutting *takes);
