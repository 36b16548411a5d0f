#pragma once
#include "drawing/flat-piece.h"
#include "drawing/wall-sheet-pen.h"

/** A flat piece on its place, at full size, with its name and its remark above it. mm, x to the right, y down. */
typedef struct {
  const FlatPiece *piece;     /* lent */
  bool turned;                /* a quarter to the left: its words are read from the right */
  Point origin;               /* where its own 0, 0 lies */
  Box box;                    /* around all of it, words too */
} TemplateCell;

/** Measured, the upper left corner of its box at 0, 0. */
TemplateCell template_cell      (const SheetPen *pen, const FlatPiece *piece, bool turned);
void         template_cell_move (TemplateCell *self, Point by);
/** Paints it: black; edges 0.5 mm wide, hinges 0.25, stations 0.18, centre lines chained, rooms dashed, the mark thick with its triangle. */
void         template_cell_draw (const SheetPen *pen, const TemplateCell *self);

/** Told of each place; what lies between two is nearer than 2 mm to one of them. */
typedef void (*TemplateVisit) (Point place, void *data);
/** Walks along all that is drawn of it, and through its words. */
void         template_cell_visit (const SheetPen *pen, const TemplateCell *self, TemplateVisit visit, void *data);
/** Walks through a box. */
void         template_box_visit  (Box box, TemplateVisit visit, void *data);
