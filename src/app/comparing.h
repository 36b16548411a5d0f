#pragma once
#include "app/sheet-canvas.h"
#include "plan/compare.h"

G_BEGIN_DECLS

#define TRAMMEL_TYPE_COMPARING (trammel_comparing_get_type ())
G_DECLARE_FINAL_TYPE (TrammelComparing, trammel_comparing, TRAMMEL, COMPARING, GObject)

/** How the selected surface or body lies over the printed line that it was traced from, while its plan and view are in hand. Looked up away from
 *  the main thread whenever outline, selection or plan change; the last one asked for wins. Signal, without arguments:
 *    "changed"   another comparison, or none */
TrammelComparing *trammel_comparing_of (TrammelSession *session);         /* the session's; lent */
/** Follows that sheet from now on and shows on it where the outline leaves its line. */
void trammel_comparing_watch (TrammelComparing *self, TrammelSheetCanvas *sheet);
/** What was found; NULL while nothing can be compared. Lent, until "changed". */
const Comparison *trammel_comparing_result (TrammelComparing *self);
/** Where it is off its line most, mm from the datum, as printed, and what the view shows that it was compared in. Only with a result. */
Point trammel_comparing_worst (TrammelComparing *self, ViewShows *shows);

G_END_DECLS
