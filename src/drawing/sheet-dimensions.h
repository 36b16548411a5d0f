#pragma once
#include "drawing/dimension.h"
#include "drawing/hit.h"
#include "drawing/sheet-places.h"

enum { SHEET_DIMENSION_ROOM = 16 };

/** A dimension that the sheet shows just now: what it is, and where, px. The figure is the entry's own text. */
typedef struct {
  Hit hit;                   /* of kind HIT_DIMENSION */
  Dimension dimension;
  char text[32];
} SheetDimension;

/** All dimensions of the scene, the outermost first; writes at most SHEET_DIMENSION_ROOM and returns how many. */
size_t sheet_dimensions (const SheetScene *scene, SheetDimension list[SHEET_DIMENSION_ROOM]);
