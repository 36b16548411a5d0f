#pragma once
#include "app/sheet-canvas.h"
#include "document/plan-marks.h"
#include "plan/ink.h"
#include "plan/placing.h"

/** Edits of the plan in hand, each one step that carries along what was traced in it. A `takes` of NULL changes nothing. What is refused is
 *  said in the work's note. Labels are translated. */

const Plan *plan_edit_plan    (TrammelSheetCanvas *sheet);      /* in hand, as it is shown; NULL none */
const Ink  *plan_edit_ink     (TrammelSheetCanvas *sheet);      /* of its picture; NULL while it comes */
/** Pixels of the file to a millimetre about a place, px; 8 where that cannot be said. */
double      plan_edit_px_per_mm (TrammelSheetCanvas *sheet, Point px);
/** How far off a place a click is there, px of the file, one standard deviation: half a pixel of the screen. */
double      plan_edit_click_sigma (TrammelSheetCanvas *sheet, Point px);
/** What of the picture is in the middle of the window, and how it lies; to be kept there when the plan lies otherwise afterwards. */
typedef struct { Placing placing; Point px; } PlanSight;
PlanSight   plan_sight_of     (TrammelSheetCanvas *sheet);      /* not finite where the plan lies nowhere */
/** Moves and zooms the sheet; does nothing when the plan lies as before. */
void        plan_sight_keep   (TrammelSheetCanvas *sheet, const PlanSight *sight);

/** Puts that plan in the place of the one in hand, one step, in sight as before; false, and nothing done, for NULL. */
bool        plan_edit_do      (TrammelSheetCanvas *sheet, Plan *takes, const char *label);
/** While a hand moves something; and what is offered until somebody accepts it. */
bool        plan_edit_preview (TrammelSheetCanvas *sheet, Plan *takes);
bool        plan_edit_propose (TrammelSheetCanvas *sheet, Plan *takes);      /* offered; false for NULL */

/** What an edit of such a mark is called, a step of the history: "Move Corner", "Remove View". Translated. */
const char *plan_edit_moved_label   (PlanMarkKind kind);
const char *plan_edit_removed_label (PlanMarkKind kind);      /* constant */
