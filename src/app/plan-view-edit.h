#pragma once
#include "app/sheet-canvas.h"

/** The view in hand (there is one then, and none is being added), or the one that comes. There is a plan. */
PlanView plan_view_shown (TrammelSheetCanvas *sheet, bool *there);
/** What it shows, which half, and whether it is flipped becomes so: of the view in hand in one step, of the next one beforehand. */
void     plan_view_set   (TrammelSheetCanvas *sheet, PlanView wanted);
/** The next axis clicked is a further view's, on the sheet as it was scanned. */
void     plan_view_add    (TrammelSheetCanvas *sheet);
/** Its place is clicked next, in the side view. */
void     plan_view_place  (TrammelSheetCanvas *sheet);
bool     plan_view_can_be_placed (TrammelSheetCanvas *sheet);      /* whether there is a side view to place the view in hand by */
void     plan_view_remove (TrammelSheetCanvas *sheet);      /* takes out the view in hand, one step; nothing without one */
