#pragma once
#include "document/part-box.h"
#include "drawing/wall-sheet-pen.h"

/** The balance point's symbol on the plan, and what is kept clear round it. mm on the paper. */
typedef struct {
  Point at;
  double disc, keep;      /* from its middle to beyond the disc, and to beyond its arms; 0: there is none */
} PlanDisc;

/** Where it stands in that view of the sheet, as large as it is drawn there. */
PlanDisc plan_disc_of (const SheetPen *pen, const SheetView *view);
/** The square round it; empty without. */
Box      plan_disc_box (const PlanDisc *self);
/** What a balloon (its radius in mm) and its leader cost, a number without a unit: INFINITY where the balloon stands too near or the leader goes
 *  over the disc; something where it goes by the arms' ends; nothing where it comes no nearer than it ends on the part. */
double   plan_disc_cost (const PlanDisc *self, Point on_part, Point balloon, double radius);
/** Where on the part a leader ends: in its middle, or off that where the symbol lies on it. */
Point    plan_disc_anchor (const PlanDisc *self, const SheetView *view, const Part *part);

/** How near the place p comes to a line, mm. */
double   plan_distance_to_line (Point p, Point a, Point b);
