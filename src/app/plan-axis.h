#pragma once
#include "app/sheet-canvas.h"
#include "plan/axis-frame.h"

/** How an axis lies on a sheet that was squared up, where it runs along or across it but for a little. */
typedef struct {
  double off_deg;       /* by so much it runs off the sheet's own way, as it was clicked, degrees > 0; 0: the sheet tells nothing of it */
  bool taken;           /* no more than so short an axis may: it lies along the sheet's own way now */
} PlanAxisOff;

/** Makes a view's axis of two clicks, px of the picture: along the printed line between them, `found` (NULL: none was, or the hand lets go
 *  of it); where the sheet was squared up and the axis runs along or across it as nearly as such clicks can tell, exactly so.
 *  off      set; may be NULL
 *  returns  false where the two are so near one another that they tell no direction; they stay untouched then. There is a plan. */
bool plan_axis_settle (TrammelSheetCanvas *sheet, const ViewAxis *found, Point *fore, Point *aft, PlanAxisOff *off);

/** What is to be said of that, a new string; NULL: nothing. A view a little off a sheet that is level turns what is traced in it. */
char *plan_axis_words (const PlanAxisOff *off);
