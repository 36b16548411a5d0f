#pragma once
#include "document/plan-marks.h"
#include "drawing/sheet-draft.h"
#include "plan/placing.h"

/** What is being marked on a plan before it is one of its marks. */
typedef enum { PLAN_PENDING_LENGTH, PLAN_PENDING_LEVEL, PLAN_PENDING_CORNERS, PLAN_PENDING_STRAIGHT, PLAN_PENDING_AXIS } PlanPendingKind;

/** The marks of a plan as the Plan tool shows them. */
typedef struct SheetPlanMarks {
  const Plan *plan;             /* as it is being edited; lent */
  Placing placing;
  const PlanMarkKind *kinds;    /* which marks are shown; lent */
  size_t kind_count;
  PlanMark chosen;              /* drawn as selected */
  const char *view;             /* id of the view in hand: the others' axes are drawn faint; NULL none */
  PlanPendingKind pending_kind;
  Point pending[12];            /* px of the file: clicked so far, the last where the pointer would put one */
  size_t pending_count;
} SheetPlanMarks;

enum { PLAN_PENDING_MOST = 12 };

/** Paints them over everything else on the sheet, clear of what is printed. */
void sheet_draw_plan_marks (const SheetDraft *draft, const SheetPlanMarks *marks);

/** The mark nearest a place on the screen within `catch_px` pixels, of the kinds shown; of kind PLAN_MARK_NONE where there is none. */
PlanMark plan_marks_hit (const SheetPlanMarks *marks, const SheetView *view, Point screen, double catch_px);
/** Where a mark stands on the screen, px; false when it is nowhere. */
bool     plan_marks_screen (const SheetPlanMarks *marks, const SheetView *view, PlanMark mark, Point *screen);
/** The two corners, by number, between which the rectangle's width (side 0) or height (side 1) is written; false without a rectangle. */
bool     plan_marks_side (const Plan *plan, int side, size_t ends[2]);
