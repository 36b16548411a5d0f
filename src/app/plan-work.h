#pragma once
#include "app/sheet-canvas.h"
#include "document/piece.h"

G_BEGIN_DECLS

/** The steps from a picture to an outline; each can be gone back to at any time. */
typedef enum { PLAN_STEP_LENGTH, PLAN_STEP_SQUARE, PLAN_STEP_VIEW, PLAN_STEP_TRACE, PLAN_STEP_COUNT } PlanStep;
/** What a hand does to square the plan up: one line level, a photograph's four corners, a line that the lens has bent. */
typedef enum { PLAN_SQUARE_LEVEL, PLAN_SQUARE_CORNERS, PLAN_SQUARE_STRAIGHT, PLAN_SQUARE_COUNT } PlanSquare;

#define TRAMMEL_TYPE_PLAN_WORK (trammel_plan_work_get_type ())
G_DECLARE_FINAL_TYPE (TrammelPlanWork, trammel_plan_work, TRAMMEL, PLAN_WORK, GObject)

/** What is being done to the plan just now, shared by the Plan tool and its strip. No fact of the document. One signal, without
 *  arguments: "changed". */

/** The canvas's own; made when first asked for, lent as long as the canvas lives. */
TrammelPlanWork *trammel_plan_work_of (TrammelSheetCanvas *sheet);

PlanStep    trammel_plan_work_step     (TrammelPlanWork *self);      /* what is done now */
void        trammel_plan_work_set_step (TrammelPlanWork *self, PlanStep step);      /* leaves off whatever view was being added or placed */
PlanSquare  trammel_plan_work_way      (TrammelPlanWork *self);      /* how the picture is made square */
void        trammel_plan_work_set_way  (TrammelPlanWork *self, PlanSquare way);      /* "changed" unless it is so already */
/** What the next view clicked will be: what it shows, its side, flipped. Only these count. */
PlanView    trammel_plan_work_next_view     (TrammelPlanWork *self);
void        trammel_plan_work_set_next_view (TrammelPlanWork *self, PlanView view);      /* "changed" */
/** Whether the next axis is a further view's though there is one in hand. */
bool        trammel_plan_work_adds_view     (TrammelPlanWork *self);
/** `came_from` is the id of the view to go back to when nothing comes of it; NULL none. */
void        trammel_plan_work_begin_view    (TrammelPlanWork *self, const char *came_from);
void        trammel_plan_work_end_view      (TrammelPlanWork *self);      /* no further view is asked for; nothing unless one was */
/** Lent, until it ends. */
const char *trammel_plan_work_came_from     (TrammelPlanWork *self);
/** The view of that id was added, coming from the view of the other (NULL none): with undo its axis is asked for again. */
void        trammel_plan_work_set_added     (TrammelPlanWork *self, const char *view_id, const char *came_from);
const char *trammel_plan_work_added         (TrammelPlanWork *self);      /* its id, lent; NULL none */
/** It was undone: begins that view again. And whether that is so, until it ends. */
void        trammel_plan_work_begin_again   (TrammelPlanWork *self);
bool        trammel_plan_work_begins_again  (TrammelPlanWork *self);      /* true while the view undone is asked for */
/** The id of the view whose place is clicked next, in the side view; NULL none. */
const char *trammel_plan_work_places     (TrammelPlanWork *self);
void        trammel_plan_work_set_places (TrammelPlanWork *self, const char *view_id);      /* copied; NULL: none is */
/** Whether the strip is open: it says what to do then, and the status line need not. */
bool        trammel_plan_work_is_told  (TrammelPlanWork *self);
void        trammel_plan_work_set_told (TrammelPlanWork *self, bool told);      /* by the strip itself */
/** A sentence about what was just tried; NULL none. It goes with the next step or edit, and holds of the plan alone that it was said of:
 *  with undo it is not said any more. `plan` is the one in hand. */
const char *trammel_plan_work_note     (TrammelPlanWork *self, const Plan *plan);
void        trammel_plan_work_set_note (TrammelPlanWork *self, const Plan *plan, const char *sentence);      /* copied; NULL takes it away */

G_END_DECLS
