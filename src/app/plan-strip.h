#pragma once
#include "app/sheet-canvas.h"

G_BEGIN_DECLS

#define TRAMMEL_TYPE_PLAN_STRIP (trammel_plan_strip_get_type ())
G_DECLARE_FINAL_TYPE (TrammelPlanStrip, trammel_plan_strip, TRAMMEL, PLAN_STRIP, GtkWidget)

/** The strip below the ruler that leads from a picture to an outline: Known Length, Square Up, View, Trace, and Done. It slides in with the
 *  Plan tool, stays while the plan is traced, and locks nothing. */
GtkWidget *trammel_plan_strip_new (TrammelSheetCanvas *sheet);
/** Where fins and bodies from the side are seen, lent as long as both live in one window: while it is not there, the strip says so. */
void trammel_plan_strip_set_side (TrammelPlanStrip *self, GtkWidget *side);
/** Puts the keyboard on the step in hand; false while the strip is not shown. */
bool trammel_plan_strip_focus (TrammelPlanStrip *self);

G_END_DECLS
