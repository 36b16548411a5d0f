#pragma once
#include "app/sheet-canvas.h"

/** A button that says which half the view in hand shows, or the one that comes, and opens what else can be said and done of it. */
GtkWidget *plan_view_details_new     (TrammelSheetCanvas *sheet);
/** Says what is so now. There is a plan. */
void       plan_view_details_refresh (GtkWidget *button);
