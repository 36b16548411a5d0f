#pragma once
#include <gtk/gtk.h>
#include "drawing/sheet.h"

/** What a sheet shows while a hand only points at it: ground, plan, aeroplane, words, scale bar. Kept as it was recorded, so that a frame in
 *  which none of it changed neither draws nor paints it again. Begins as all zeros, is given back by sheet_paper_clear, and holds on to what
 *  it shows, lest something else come to stand at the same address. */
typedef struct {
  GskRenderNode *sheet, *scale_bar;      /* NULL: nothing recorded */
  Look look;
  SheetView view;
  Units units;
  Figures *figures;
  Selection selection;
  InkLevels *shown[4];                   /* the plan's ink and its three colours */
  Placing placing;
  double strength, device_scale;
  Plan *printed;                         /* the plan that is worked on; NULL: none */
  char *printed_view;
  bool has_plan, bare, named_places, show_grid, show_names, show_figures, arranging;
} SheetPaper;

/** Forgets what was recorded; where fonts or the like have changed, which the scene does not tell. */
void sheet_paper_clear    (SheetPaper *self);
/** Paints the scene: from what was recorded where it still holds, and over it what is being done. */
void sheet_paper_snapshot (SheetPaper *self, GtkSnapshot *snapshot, const SheetScene *scene);
