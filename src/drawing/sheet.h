#pragma once
#include <cairo.h>
#include "document/units.h"
#include "drawing/look.h"
#include "drawing/selection.h"
#include "drawing/sheet-hinge.h"
#include "drawing/sheet-plan.h"
#include "drawing/sheet-print.h"
#include "drawing/sheet-trace.h"
#include "drawing/view.h"
#include "figures/figures.h"

/** What is being done on the sheet just now, drawn over it. */
typedef struct {
  const Outline *draft;          /* outline being drawn point by point; NULL */
  Point draft_end; bool has_draft_end;      /* where the pointer would put the next node, mm */
  double guide_x, guide_y;       /* a snap guide across the sheet at this x or y, mm; NAN: none */
  Box band;                      /* rubber band, mm; empty: none */
  bool focus;                    /* the sheet has the keyboard: ring around the selection */
  Point cursor; bool has_cursor; /* the key cursor of drawing tools, mm */
  double dimension_from_x, dimension_from_y, dimension_to_x, dimension_to_y; bool has_dimension;   /* being measured, mm */
  bool named_places;             /* ribs and formers are being put: shown with their names */
  const Point *lead; size_t lead_count;     /* one being laid, from place to place, mm; NULL */
  const Part *part_ghost;        /* a part about to be put, at its place; NULL */
  const struct SheetPlanMarks *plan_marks;  /* of the plan that is being made true (sheet-plan-marks.h); NULL */
  Point magnified; bool has_magnified;      /* the plan there, mm, enlarged in a corner (sheet-magnifier.c) */
  const SheetTrace *trace;       /* being laid over a plan; NULL */
  const SheetHinge *hinge;       /* a control about to be put; NULL */
  const SheetDepartures *departures;        /* of the selected outline from its printed line; NULL */
  const SheetDoubt *doubt;       /* of the outline traced last; NULL */
} SheetOverlay;

typedef struct {
  const Look *look;
  Units units;
  const SheetView *view;
  const Figures *figures;        /* holds the aeroplane */
  const Selection *selection;
  const SheetOverlay *overlay;   /* may be NULL */
  const Figures *offered;        /* the same parts arranged otherwise: where they would stand, and an arrow there; NULL: nothing */
  const SheetPlan *plan;         /* beneath it all; NULL: none */
  const SheetPrint *print;       /* that plan is worked on; NULL: it is only the ground, or there is none */
  bool show_grid, show_names, show_figures;
  bool arranging;                /* parts are: every bay stands there, its formers named */
} SheetScene;

/** Paints the sheet on cr, whose user units are px. Reads its arguments and nothing else; leaves cr as it found it; a failure stays in
 *  cairo_status (cr). */
void draw_sheet (cairo_t *cr, const SheetScene *scene);
/** Its two halves, one over the other: what stays while a hand only points, and what is being done. Of the overlay the first heeds nothing
 *  but whether places are named. */
void draw_sheet_at_rest (cairo_t *cr, const SheetScene *scene);
void draw_sheet_overlay (cairo_t *cr, const SheetScene *scene);      /* what is being done */

/** Everything that is drawn, dimensions included, in mm: what Fit Sheet shows. An empty aeroplane gives a box of a usual size. */
Box  sheet_extent (const Figures *figures);
/** What is selected, in mm; empty when nothing is. */
Box  sheet_selection_extent (const Figures *figures, const Selection *selection);
