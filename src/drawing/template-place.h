#pragma once
#include "drawing/template-cell.h"
#include "drawing/template-notes.h"

/** All of a template on one large area whose upper left corner is 0, 0. mm */
typedef struct {
  GArray *cells;                 /* of TemplateCell */
  Box notes;
  Point size;                    /* of the area */
  TemplateTiles tiles;           /* where it was laid out for tiles */
} TemplatePlaces;

/** Lays out the notes, in the upper left corner, and pieces, nothing upon anything, the highest first. With a step (from tile to
 *  tile, mm) so that few tiles are needed and few small pieces are cut by a tile's edge, and pieces may be turned a quarter; without (NULL) so
 *  that the area is small.
 *  The same pieces always lie the same. */
TemplatePlaces template_place       (const SheetPen *pen, const GPtrArray *pieces, const TemplateNotes *notes, const Point *step);
void           template_places_clear (TemplatePlaces *self);      /* frees what is in it */
/** Paints what of it is of that ink, of all that meets the box; user units mm, 0, 0 the area's corner. */
void           template_places_draw  (const SheetPen *pen, const TemplatePlaces *self, const TemplateNotes *notes, Box seen, TemplateInk ink);
