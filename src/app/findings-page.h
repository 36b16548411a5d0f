#pragma once
#include <gtk/gtk.h>
#include "app/session.h"

G_BEGIN_DECLS

#define TRAMMEL_TYPE_FINDINGS_PAGE (trammel_findings_page_get_type ())
G_DECLARE_FINAL_TYPE (TrammelFindingsPage, trammel_findings_page, TRAMMEL, FINDINGS_PAGE, GtkBox)

/** What the figures have to say, gravest first, a row each; choosing one selects its thing on the sheet. */
GtkWidget *trammel_findings_page_new   (TrammelSession *session);
typedef struct { guint to_change, to_look_at; } FindingsCount;
/** How many of them need a change, and of the others how many are to be looked at. */
FindingsCount trammel_findings_page_count (TrammelSession *session);
/** Whether what is just now being selected is selected by choosing a finding. */
bool       trammel_findings_page_is_choosing (TrammelFindingsPage *self);

G_END_DECLS
