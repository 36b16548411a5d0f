#pragma once
#include <cairo.h>
#include "drawing/look.h"
#include "drawing/view.h"
#include "plan/ink-levels.h"
#include "plan/placing.h"

/** What was painted of a plan last, so that it is not looked up again while the window stays where it is; begins as all zeros and
 *  is given back by sheet_plan_copy_clear. It holds on to what it shows, lest something else come to stand at the same address. */
typedef struct {
  cairo_surface_t *surface;
  InkLevels *shown[3];
  Placing placing;
  SheetView view;
  double device_scale;
} SheetPlanCopy;
void sheet_plan_copy_clear (SheetPlanCopy *self);      /* gives back what it holds; again is fine */

/** A plan beneath the sheet. */
typedef struct {
  const InkLevels *ink;          /* shown as ink in the look's colour; lent */
  const InkLevels *scanned[3];   /* or, where these are there, in its own red, green and blue; lent */
  Placing placing;
  double strength;               /* of the ink, 0 to 1 */
  double device_scale;           /* the screen's px to a px of the view, >= 1 */
  SheetPlanCopy *copy;           /* the caller's; NULL: none is kept */
  SheetPlanCopy *enlarged;       /* the same of what the magnifier shows */
} SheetPlan;

/** Paints the plan over the sheet's ground: nothing but its own marks (its paper is the sheet), or as scanned the whole picture. */
void sheet_plan_draw (cairo_t *cr, const Look *look, const SheetView *view, const SheetPlan *plan);

/** The look in which everything is drawn first over a plan, so that it keeps clear of it: in the sheet's colour, 2 px wider on each side. */
Look sheet_plan_halo_look (const Look *look);
