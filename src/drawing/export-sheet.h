#pragma once
#include <glib.h>
#include "drawing/wall-sheet.h"

/** A wall sheet as a file, in memory. NULL and an EXPORT_ERROR on failure. `sheet` is what the layout was made from. */

/** True to size at the resolution that it records, which is the whole number of px a metre next to `dpi`; no larger than 20000 px a
 *  side. */
GBytes *sheet_png (const WallSheetLayout *layout, const WallSheet *sheet, int dpi, GError **error);
/** One page of the paper's size; its words can be searched. Dated by the sheet's date alone. */
GBytes *sheet_pdf (const WallSheetLayout *layout, const WallSheet *sheet, GError **error);
/** Sized in mm, user units are mm; letters are shapes. With title and description. */
GBytes *sheet_svg (const WallSheetLayout *layout, const WallSheet *sheet, GError **error);
