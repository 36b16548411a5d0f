#pragma once
#include "app/sheet-canvas.h"

G_BEGIN_DECLS

#define TRAMMEL_TYPE_RULER_WIDGET (trammel_ruler_widget_get_type ())
G_DECLARE_FINAL_TYPE (TrammelRulerWidget, trammel_ruler_widget, TRAMMEL, RULER_WIDGET, GtkWidget)

/** A ruler beside the sheet: HORIZONTAL along the top, counting from the centre line both ways; VERTICAL at its left edge, counting aft of
 *  the datum. Shows where the pointer is and how far the selection reaches. Reads all of it from the canvas. */
GtkWidget *trammel_ruler_widget_new (TrammelSheetCanvas *sheet, GtkOrientation orientation);

G_END_DECLS
