#pragma once
#include "drawing/template-sheet.h"
#include "geometry/segment.h"

/** How a tile divides its paper. mm as they come out of the printer, so that all that is laid out is true; `correction` says how long each
 *  is in the file. */
typedef struct {
  Point correction;          /* mm in the file to 1 mm on paper, across and down */
  Box room;                  /* inside the margins */
  Box field;                 /* where the drawing stands, with what neighbours overlap by */
  Point step;                /* from one tile's cross to the next one's, whole mm */
  bool wide;                 /* the control lines beside their words */
} TemplatePaper;

/** Two neighbours both show a strip as wide as this, mm; the crosses stand in its middle. */
static const double TEMPLATE_OVERLAP = 10;
/** What the line down the page takes at the left, mm. */
static const double TEMPLATE_COLUMN = 6;

/** Of the sheet's paper; false where no tile finds room. Tiles are of one size whatever is corrected, up to 2 %. */
bool  template_paper_divide (const TemplateSheet *sheet, TemplatePaper *paper);
/** What is made up for, of the sheet's readings: by the paper's own sides, so that it turns with the page. */
Point template_correction   (const TemplateSheet *sheet);
/** "Corrected for a printer that draws 100 mm as 99.2 mm."; NULL where nothing is corrected. A new string. */
char *template_correction_sentence (const TemplateSheet *sheet);
