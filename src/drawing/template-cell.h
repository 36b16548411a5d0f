#pragma once
#include "drawing/flat-piece.h"
#include "drawing/wall-sheet-pen.h"

/** A flat piece on its place, at full size, with its name and its remark above it. mm, x to the right, y down. */
typedef struct {
  const FlatPiece *piece;     /* lent */
  bool turned;                /* a quarter to the left: its words are read from the right */
  Point origin;               /* where its own 0, 0 lies */
  Box box;                    /* around all of it, words too */
  Point caption;              /* how wide and high name and remark are */
  Point step;                 /* from tile to tile, which begin at 0, 0; 0, 0 without tiles */
} TemplateCell;

/** Measured, the upper left corner of its box at 0, 0. step: NULL without tiles. */
TemplateCell template_cell       (const SheetPen *pen, const FlatPiece *piece, bool turned, const Point *step);
void         template_cell_move  (TemplateCell *self, Point by);      /* further to the right and down, mm */
/** Where a place of the piece's own lies. */
Point        template_cell_place (const TemplateCell *self, Point own);

/** In this order, so that words break thin lines and never a firm one: see template_line_is_firm. */
typedef enum { TEMPLATE_THIN, TEMPLATE_WORDS, TEMPLATE_FIRM, TEMPLATE_INK_COUNT } TemplateInk;
/** Paints what of it is of that ink, black, lines as template_line_set says; straight marks with their triangle. */
void template_cell_draw         (const SheetPen *pen, const TemplateCell *self, TemplateInk ink);
/** Its name and remark alone. */
void template_cell_caption_draw (const SheetPen *pen, const TemplateCell *self);

/** Told of each place; what lies between two is nearer than 2 mm to one of them. */
typedef void (*TemplateVisit) (Point place, void *data);
/** Walks along all that is drawn of it, and through its words. */
void         template_cell_visit       (const SheetPen *pen, const TemplateCell *self, TemplateVisit visit, void *data);
/** Walks along its lines of some purposes: 1 << FLAT_CUT and so on. */
void         template_cell_visit_lines (const TemplateCell *self, unsigned purposes, TemplateVisit visit, void *data);
/** Walks through a box. */
void         template_box_visit        (Box box, TemplateVisit visit, void *data);
