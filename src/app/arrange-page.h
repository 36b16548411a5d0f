#pragma once
#include <gtk/gtk.h>
#include "app/session.h"

G_BEGIN_DECLS

#define TRAMMEL_TYPE_ARRANGE_PAGE (trammel_arrange_page_get_type ())
G_DECLARE_FINAL_TYPE (TrammelArrangePage, trammel_arrange_page, TRAMMEL, ARRANGE_PAGE, GtkBox)

/** "Arrange": which parts may move, and the best arrangements of them, each offered on the sheet until it is used. One undo step. Emits "done"
 *  when one was used or it was given up. */
GtkWidget *trammel_arrange_page_new   (TrammelSession *session);
/** Looks at what is there now, and begins to look for arrangements. */
void       trammel_arrange_page_begin (TrammelArrangePage *self);
/** Gives up: nothing is offered any more. */
void       trammel_arrange_page_leave (TrammelArrangePage *self);

G_END_DECLS
