#pragma once
#include "app/sheet-canvas.h"

/** The strip's controls for the views of a plan: which is in hand, what it shows, which half, whether turned over; one more, one less. */
typedef struct PlanViews PlanViews;

PlanViews *plan_views_new     (TrammelSheetCanvas *sheet);      /* the sheet is lent and must outlive it */
void       plan_views_free    (PlanViews *self);            /* not its widget */
GtkWidget *plan_views_widget  (PlanViews *self);            /* lent; whoever puts it somewhere owns it */
void       plan_views_refresh (PlanViews *self);
