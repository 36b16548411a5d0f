#pragma once
#include "drawing/sheet.h"
#include "support/canvas.h"

/* A scene with all that it lends, for tests of what is drawn and what is hit. */

typedef struct {
  Figures *figures;
  Look look;
  SheetView view;
  Selection selection;
  SheetOverlay overlay;
  SheetScene scene;
} Easel;

/** The aeroplane (taken) fitted into a window of 731 × 704 px, light, metric, nothing selected, grid, names and figures shown. */
Easel *easel_new  (Aeroplane *takes);
void   easel_free (Easel *self);
void   easel_select (Easel *self, Selection takes);
void   easel_take_look (Easel *self, LookTheme theme);
/** A picture of the sheet as it stands. */
Canvas easel_painted (const Easel *self, double scale);

/** An overlay that shows nothing. */
SheetOverlay overlay_none (void);

/** The racer with a side outline, formers, hinge lines, boxes of its parts, leads; and the same with its wing's outline replaced (taken). */
Aeroplane *racer_in_full (void);
Aeroplane *racer_with_wing (Outline *takes);
