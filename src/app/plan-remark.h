#pragma once
#include "app/sheet-canvas.h"

/** What there is to say, in the step that is taken, about the plan in hand beyond what to do next: what was just refused, what cannot be
 *  seen, what is a guess, how well what is known agrees. A new string; NULL: nothing.
 *  side_is_seen   whether the side view is there to be looked at */
char *plan_remark (TrammelSheetCanvas *sheet, bool side_is_seen);
/** Whether an outline drawn over the plan that is shown would lack something: a size, or a view to be traced in. */
bool  plan_remark_is_pressing (TrammelSheetCanvas *sheet);
