#pragma once
#include <gtk/gtk.h>
#include "app/plan-store.h"

G_BEGIN_DECLS

#define TRAMMEL_TYPE_PANEL (trammel_panel_get_type ())
G_DECLARE_FINAL_TYPE (TrammelPanel, trammel_panel, TRAMMEL, PANEL, GtkWidget)

/** The side panel: the answer on top, then the groups that follow the selection, with a list of real widgets that mirrors the sheet.
 *  Signals: "part-class-chosen" (const char *word): the person picked what the Part tool puts. */
GtkWidget *trammel_panel_new (TrammelSession *session);
/** The plans beneath the sheet; without them the panel says nothing of plans. */
void       trammel_panel_set_plan_store (TrammelPanel *self, TrammelPlanStore *store);
/** Puts the keyboard into the first field of the selection; `text` (may be "") replaces what stands there: typing begins. */
void       trammel_panel_edit_first (TrammelPanel *self, const char *text);
/** Opens the fields of "Start from Numbers" for a new surface. */
void       trammel_panel_start_from_numbers (TrammelPanel *self);
/** Opens "Arrange": which parts may move, and where they go. */
void       trammel_panel_arrange (TrammelPanel *self);
/** Opens the choices of the usual fit; only where they make sense (fit_offer_is_useful). */
void       trammel_panel_offer_fit (TrammelPanel *self);
/** In a low window the answer keeps to one sentence, so that room is left for what follows it. */
void       trammel_panel_set_low (TrammelPanel *self, bool low);
/** Focuses the answer's label so that a screen reader says it. */
void       trammel_panel_read_answer (TrammelPanel *self);

G_END_DECLS
