#pragma once
#include <gtk/gtk.h>
#include "app/session.h"

G_BEGIN_DECLS

#define TRAMMEL_TYPE_EXPLAIN_BUTTON (trammel_explain_button_get_type ())
G_DECLARE_FINAL_TYPE (TrammelExplainButton, trammel_explain_button, TRAMMEL, EXPLAIN_BUTTON, GtkButton)

/** A small button that opens how a figure came about; there as long as the figure can be had. What it opens is made when it is opened.
 *  label  what the figure is called beside it, translated
 *  id     the piece, or the place of its mark, that it is about; NULL: whatever is selected, else the aeroplane */
GtkWidget *trammel_explain_button_new (TrammelSession *session, ExplainedFigure what, const char *label, const char *id);

G_END_DECLS
