#pragma once
#include "drawing/wall-sheet-pen.h"

/** What has to be known of a template as a whole: whose it is, how it is put together, the cautions. */
typedef struct {
  const char *title, *date;      /* lent; date "" leaves it out */
  bool tiled;
} TemplateNotes;

/** How high they are, `width` mm wide, mm. */
double template_notes_height (const SheetPen *pen, const TemplateNotes *notes, double width);
/** Writes them into a box of that size. */
void   template_notes_draw   (const SheetPen *pen, const TemplateNotes *notes, Box box);
