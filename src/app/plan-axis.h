#pragma once
#include "app/sheet-canvas.h"
#include "plan/axis-frame.h"

/** Makes a view's axis of two clicks, px of the picture: along the printed line between them, `found` (NULL: none was, or the hand lets go of it); where the sheet
 *  was squared up and the axis runs along or across it as nearly as such clicks can tell, exactly so.
 *  returns  false where the two are so near one another that they tell no direction; they stay untouched then. There is a plan. */
bool plan_axis_settle (TrammelSheetCanvas *sheet, const ViewAxis *found, Point *fore, Point *aft);
