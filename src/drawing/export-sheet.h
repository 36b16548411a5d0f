#pragma once
#include "drawing/sheet-pages.h"

/** Pages as files, in memory. NULL and an EXPORT_ERROR on failure. `page` is less than their count. */

/** True to size at the resolution that it records, which is the whole number of px a metre next to `dpi`; no larger than 20000 px a
 *  side. */
GBytes *sheet_png (const SheetPages *pages, size_t page, int dpi, GError **error);
/** All pages, each of its size; words can be searched. Dated by the pages' own date alone. */
GBytes *sheet_pdf (const SheetPages *pages, GError **error);
/** Sized in mm, user units are mm; letters are shapes. With title and description. */
GBytes *sheet_svg (const SheetPages *pages, size_t page, GError **error);
