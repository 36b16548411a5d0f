#pragma once
#include <gtk/gtk.h>
#include "app/session.h"
#include "document/brought.h"

G_BEGIN_DECLS

#define TRAMMEL_TYPE_BROUGHT_STRIP (trammel_brought_strip_get_type ())
G_DECLARE_FINAL_TYPE (TrammelBroughtStrip, trammel_brought_strip, TRAMMEL, BROUGHT_STRIP, GtkWidget)

/** "Bring In Outline": a strip under the header with what is to become of a line drawn elsewhere, which stands on the sheet as a proposal
 *  meanwhile; one undo step. Goes when it is used or given up, or when another hand changes the aeroplane. Emits "used" when the outline
 *  has become part of it, "gone" whenever it goes. */
GtkWidget *trammel_brought_strip_new   (TrammelSession *session);
/** Offers what a file holds; takes it. Given up before, where something else was on offer. */
void       trammel_brought_strip_offer (TrammelBroughtStrip *self, Brought *takes);
/** Gives up what is on offer; the sheet is as it was. */
void       trammel_brought_strip_leave (TrammelBroughtStrip *self);

G_END_DECLS
