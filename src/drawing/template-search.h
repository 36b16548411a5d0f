#pragma once
#include "drawing/template-pack.h"
#include "drawing/wall-sheet-pen.h"

/** Looks for places that need few pages. The same pieces always find the same. */
typedef struct {
  TemplateCell *places;      /* as many as pieces; g_free */
  Box taken;                 /* what was taken beside them */
  double cost;
} TemplateFound;

/** The cheapest so far; begins empty. */
typedef struct { TemplateFound found[12];  size_t count; } TemplateSearch;

/** Tries many orders to lay the pieces in, turned or not, beside each of the shapes; at least one piece. Cells and shapes are lent. Some tenths
 *  of a second. */
void          template_search     (TemplateSearch *self, const TemplatePack *pack);
/** Ends it: the cheapest of all, now that its words are counted too, which are carried off the edges of tiles. */
TemplateFound template_search_end (TemplateSearch *self, const SheetPen *pen, guint pieces);
