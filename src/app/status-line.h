#pragma once
#include "app/sheet-canvas.h"

G_BEGIN_DECLS

#define TRAMMEL_TYPE_STATUS_LINE (trammel_status_line_get_type ())
G_DECLARE_FINAL_TYPE (TrammelStatusLine, trammel_status_line, TRAMMEL, STATUS_LINE, GtkWidget)

/** Below the sheet: what the tool does, where the pointer is, snapping, zoom. */
GtkWidget *trammel_status_line_new (TrammelSheetCanvas *sheet);

/** "222 aft" or "12 ahead"; a new string. mm */
char *status_place_along  (Units units, double x);
/** "205 to starboard", "205 to port" or "0"; a new string. mm */
char *status_place_side (Units units, double y);
/** "205 to starboard", "205 to port" or "on the centre line"; a new string. mm */
char *status_place_across (Units units, double y);

G_END_DECLS
