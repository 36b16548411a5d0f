#pragma once
#include "drawing/template-map.h"
#include "drawing/template-sheet.h"

/** What has to be known of a template as a whole: whose it is, how it is put together, where its pages go, what its lines say, the cautions. */
typedef struct {
  const char *title, *date;      /* lent; date "" leaves it out */
  bool tiled;
  unsigned purposes;             /* which kinds of lines there are: 1 << FLAT_CUT and so on */
} TemplateNotes;

/** Of a sheet, whose words are lent. */
TemplateNotes template_notes_of (const TemplateSheet *sheet);

/** How high they are, `width` mm wide, mm. */
double template_notes_height (const SheetPen *pen, const TemplateNotes *notes, double width);
/** Writes them into a box of that size, with a map of the tiles where it is tiled. */
void   template_notes_draw   (const SheetPen *pen, const TemplateNotes *notes, Box box, const TemplateTiles *tiles);
