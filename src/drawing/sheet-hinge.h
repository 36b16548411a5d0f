#pragma once
#include <cairo.h>
#include "document/piece.h"
#include "drawing/look.h"
#include "drawing/view.h"

/** A control about to be put on a surface, drawn over the sheet or over the side view. A value; the surface is lent. */
typedef struct {
  const Surface *surface;
  Control line;              /* its inner end alone where there is no line yet */
  bool has_line;
  bool wrong;                /* it cannot be put so; the plate beside the pointer says why */
  bool port;                 /* the hand is on the port half */
  bool laid_down;            /* a fin's, over the plan's view of it: on the sheet, its height across the sheet */
  double lift;               /* then: where heights begin, mm off the centre line, on the side of the hand */
} SheetHinge;

/** Where a place of the surface's own (mm aft, station) is drawn on one side: px. `lift` is added to the station. */
Point hinge_px (const SheetView *view, double x, double station, double lift, double side);
/** Strokes a hinge line and its cuts to the trailing edge, on one side (1 starboard, -1 port), as cr's line stands. `lift` in mm. */
void  hinge_stroke (cairo_t *cr, const SheetView *view, const Surface *surface, const Control *control, double lift, double side);
/** Paints the one about to be put on one side: broken, with grips where the hand is. `lift` in mm. */
void  hinge_draw_proposal (cairo_t *cr, const Look *look, const SheetView *view, const SheetHinge *hinge, double lift, double side);
