#pragma once
#include "app/plan-store.h"
#include "app/window.h"
#include "document/plan-marks.h"

/** A picture or page on its way to becoming a plan: looked at, its page asked for, decoded, and put into the document as one step.
 *  Nothing of the document changes before, and nothing at all when it cannot be had. */
typedef struct PlanOpening PlanOpening;

/** What is opened: a file, or what was pasted. */
typedef struct {
  const char *path;         /* NULL: pasted */
  GdkTexture *texture;      /* what was pasted; NULL: a file */
  const char *replaces;     /* id of the plan that gets this picture; NULL: it is a new plan */
} PlanToOpen;

/** How far it is, 0 to 1, in the main thread a few times a second; NAN while a person is asked. */
typedef void (*PlanOpeningProgress) (PlanOpening *self, double done, gpointer data);
/** It is over. `fault` is what to say, a whole sentence, lent; NULL: the plan is there, or nobody wants it any more. */
typedef void (*PlanOpeningDone)     (PlanOpening *self, const char *fault, gpointer data);

/** Begins. The window outlives nothing: what arrives after it was closed is thrown away. */
PlanOpening *plan_opening_begin (TrammelWindow *window, TrammelPlanStore *store, const PlanToOpen *what,
                                 PlanOpeningProgress progress, PlanOpeningDone done);
/** Ends it without a word; `done` is not called any more. */
void         plan_opening_stop  (PlanOpening *self);
/** What it is called, for people. Lent. */
const char  *plan_opening_name  (const PlanOpening *self);
/* When it is done. */
/** How many of the picture's pixels make one of what is shown, each way; 1: all of them are; 0: there is no picture. */
int          plan_opening_reduced (const PlanOpening *self);
/** Whether it is another picture of a plan that is there already. */
bool         plan_opening_replaces (const PlanOpening *self);
/** Whether its picture is to be copied beside the document when that is saved. */
bool         plan_opening_comes_beside (const PlanOpening *self);
/** Whether the marks of the plan that got this picture fit it. */
PlanRescaled plan_opening_marks (const PlanOpening *self);
