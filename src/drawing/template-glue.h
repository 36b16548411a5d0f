#pragma once
#include "drawing/template-cell.h"

/** An edge of a page that its neighbour is glued on: hatched, with words that say which page goes there. */
typedef struct {
  Box strip;                 /* on the page, mm */
  bool upright;              /* down the page: its words are read from the right */
  char name[8];              /* of the neighbour */
  Point middle;              /* of the words; template_glue_find says where */
} TemplateGlue;

/** Finds the place for its words: the one next to the strip's middle where no line is.
 *  cells    of TemplateCell
 *  to_area  from a place on the page to that of the area */
void template_glue_find        (const SheetPen *pen, TemplateGlue *self, const GArray *cells, Point to_area);
/** The hatch with a blank for the words, its edge firm: to be drawn before the lines, so that it hides none. */
void template_glue_draw_ground (const SheetPen *pen, const TemplateGlue *self);
/** The words, black. */
void template_glue_draw_words  (const SheetPen *pen, const TemplateGlue *self);
