#pragma once
#include "drawing/wall-sheet-blocks.h"
#include "drawing/wall-sheet-plan.h"

/** Where a block stands, and in which form. */
typedef struct { int form; Box box; } BlockPlace;

/** One arrangement of a sheet: complete once layout_search has found it. */
typedef struct {
  double scale;                    /* of the views; 0 without any */
  SheetView plan, side;            /* scale and origins, mm on the paper */
  bool has_side;
  bool small;                      /* tables in small print */
  BlockPlace blocks[BLOCK_COUNT];  /* form -1: there is no such block */
  double off;                      /* mm that the blocks stand off their wishes, by the weights of these */
  PlanNotes notes;                 /* NULLs without a plan */
} SheetArrangement;

/** Tries scales from the largest down, the section whole, broken off or left out, tables in text size or small, and takes the arrangement
 *  that a reader has most of: a step of scale against a whole section against larger print. False when nothing fits on the paper.
 *  blocks  measured in text size and in small print */
bool layout_search (const WallSheet *sheet, const Look *look, const SheetBlocks blocks[2], SheetArrangement *found);

/** The same, its blocks made here: with where trays go in the parts list when that costs neither scale nor print, nor a form of section,
 *  control lines or list. The blocks are the caller's whether it is found or not. */
bool layout_arrange (const WallSheet *sheet, const Look *look, SheetBlocks blocks[2], SheetArrangement *found);

/** Both views with their words and numbers; on an empty sheet, that it is empty. */
void views_draw (const SheetPen *pen, const SheetArrangement *arrangement);
