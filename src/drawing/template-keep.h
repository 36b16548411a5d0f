#pragma once
#include "drawing/template-cell.h"

/** Where words of a cell stand so that no edge of a tile cuts them: along those, pages are trimmed and glued. mm of the area. */

/** How far word number `i` of the piece is carried, together with the lines above and below it: as little as may be, off firm lines where it
 *  can, within the cell. 0, 0 without tiles, and where no edge cuts it. */
Point  template_keep_shift   (const SheetPen *pen, const TemplateCell *cell, guint i);
/** The box around that word, so carried. */
Box    template_keep_word    (const SheetPen *pen, const TemplateCell *cell, guint i);
/** The upper left corner of name and remark. */
Point  template_keep_caption (const TemplateCell *cell);
/** Whether no edge of a column of tiles (across), or of a row of them, goes through name and remark where they stand. */
bool   template_keep_is_kept (const TemplateCell *cell, bool across);
