#pragma once
#include <gtk/gtk.h>
#include "app/session.h"

G_BEGIN_DECLS

#define TRAMMEL_TYPE_OBJECT_LIST (trammel_object_list_get_type ())
G_DECLARE_FINAL_TYPE (TrammelObjectList, trammel_object_list, TRAMMEL, OBJECT_LIST, GtkBox)

/** Real widgets that mirror the sheet, for keyboard and screen reader: surfaces, bodies, parts, and the nodes of the one selected;
 *  choosing a row selects the thing. */
GtkWidget *trammel_object_list_new (TrammelSession *session);

G_END_DECLS
