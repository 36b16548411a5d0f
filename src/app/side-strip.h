#pragma once
#include "app/sheet-canvas.h"

G_BEGIN_DECLS

#define TRAMMEL_TYPE_SIDE_STRIP (trammel_side_strip_get_type ())
G_DECLARE_FINAL_TYPE (TrammelSideStrip, trammel_side_strip, TRAMMEL, SIDE_STRIP, GtkWidget)

/** The aeroplane from the left beside the sheet, nose up, at the sheet's zoom and scroll. What is dragged across changes its height, along
 *  moves it in both views. */
GtkWidget *trammel_side_strip_new (TrammelSheetCanvas *sheet);

G_END_DECLS
