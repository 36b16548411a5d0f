#pragma once
#include <gtk/gtk.h>
#include "app/session.h"
#include "figures/report.h"

G_BEGIN_DECLS

#define TRAMMEL_TYPE_FIGURE_LIST (trammel_figure_list_get_type ())
G_DECLARE_FINAL_TYPE (TrammelFigureList, trammel_figure_list, TRAMMEL, FIGURE_LIST, GtkBox)

/** One list (see list-rows.h) as a table that follows the session, also while something is dragged, as long as it is seen. A row chooses
 *  what it is about; a heading sorts, the third press gives back the list's own order. Ctrl+C and its menu copy all of it as a table; the
 *  menu saves it by the window's action "save-list". */
GtkWidget *trammel_figure_list_new (TrammelSession *session, ReportList list, const char *heading);

G_END_DECLS
