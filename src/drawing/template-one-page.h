#pragma once
#include "drawing/template-place.h"
#include "drawing/template-sheet.h"

/** A template on one page as large as it needs, without tiles. */

/** Its size, mm as they come out of the printer. */
Point template_one_page_size (const TemplateSheet *sheet, const TemplatePlaces *places);
/** Paints it; user units are those mm. */
void  template_one_page_draw (const SheetPen *pen, const TemplateSheet *sheet, const TemplatePlaces *places, const TemplateNotes *notes);
