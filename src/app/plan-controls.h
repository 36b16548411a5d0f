#pragma once
#include "app/sheet-canvas.h"

/** What the strip holds at its end for the step in hand: the ways to square up, or the views and what each of them is. */
typedef struct PlanControls PlanControls;

PlanControls *plan_controls_new     (TrammelSheetCanvas *sheet);      /* the sheet is lent and must outlive it */
void          plan_controls_free    (PlanControls *self);           /* not its widget */
GtkWidget    *plan_controls_widget  (PlanControls *self);           /* lent; whoever puts it somewhere owns it */
void          plan_controls_refresh (PlanControls *self);
