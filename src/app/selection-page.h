#pragma once
#include <gtk/gtk.h>
#include "app/plan-store.h"

G_BEGIN_DECLS

#define TRAMMEL_TYPE_SELECTION_PAGE (trammel_selection_page_get_type ())
G_DECLARE_FINAL_TYPE (TrammelSelectionPage, trammel_selection_page, TRAMMEL, SELECTION_PAGE, GtkBox)

/** The groups of rows that follow what is selected; rebuilt when that changes, refreshed when the aeroplane does. */
GtkWidget *trammel_selection_page_new        (TrammelSession *session);
/** The plans beneath the sheet, whose group is shown while nothing else is selected. */
void       trammel_selection_page_set_plan_store (TrammelSelectionPage *self, TrammelPlanStore *store);
/** Puts the keyboard into the first field; `text` (may be "") begins the typing. */
void       trammel_selection_page_edit_first (TrammelSelectionPage *self, const char *text);
/** Puts the keyboard into the field of the mass of what is selected, and brings it into view. */
void       trammel_selection_page_edit_mass  (TrammelSelectionPage *self);

G_END_DECLS
