#pragma once
#include "drawing/template-paper.h"
#include "drawing/template-place.h"

/** One of a template's tiles as a page: what lies there, crosses, glue edges, control lines, where it belongs. */
typedef struct {
  const TemplateSheet *sheet;
  const TemplatePaper *paper;
  const TemplatePlaces *places;
  const TemplateNotes *notes;
} TemplateTilePage;

/** Paints tile `index` of the places' tiles; it is page `page` (from 0) of `count`. User units are the paper's true mm. */
void template_tile_page_draw (const SheetPen *pen, const TemplateTilePage *self, size_t index, size_t page, size_t count);
