#pragma once
#include "app/sheet-canvas.h"
#include "document/piece.h"
#include "plan/printed-sides.h"

/** What is printed near a hand's clicks, looked for away from the main thread: fine scans take their time. One at a time for each sheet;
 *  another takes the place of the one before. What takes longer than a moment stands in the window's strip and can be stopped there. */

typedef struct {
  Point a, b;                     /* px of the file: what was clicked */
  bool found;                     /* the line or the sides below; false: nothing is printed there, or there is no picture */
  ViewAxis line;
  PrintedSides sides;
} PlanLooked;
/** In the main thread, once, unless it was stopped or the plan in hand is another by then. */
typedef void (*PlanLookDone) (TrammelSheetCanvas *sheet, const PlanLooked *looked, gconstpointer data);

/** The line printed from a to b. `takes` is passed on and freed; NULL is fine. There is a plan in hand. */
void plan_look_line  (TrammelSheetCanvas *sheet, Point a, Point b, PlanLookDone done, gpointer takes);
/** The lines printed along a rectangle's sides; likewise. */
void plan_look_sides (TrammelSheetCanvas *sheet, const KnownRectangle *clicked, PlanLookDone done, gpointer takes);
bool plan_look_is_busy (TrammelSheetCanvas *sheet);      /* whether a look is under way */
/** Nothing comes of what is being looked for. false: nothing is. */
bool plan_look_stop  (TrammelSheetCanvas *sheet);
