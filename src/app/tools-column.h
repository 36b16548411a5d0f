#pragma once
#include "app/sheet-canvas.h"

G_BEGIN_DECLS

#define TRAMMEL_TYPE_TOOLS_COLUMN (trammel_tools_column_get_type ())
G_DECLARE_FINAL_TYPE (TrammelToolsColumn, trammel_tools_column, TRAMMEL, TOOLS_COLUMN, GtkWidget)

/** The drawing tools, one button each; what has nothing to act on yet is not shown. */
GtkWidget *trammel_tools_column_new (TrammelSheetCanvas *sheet);
/** Puts the keyboard on the tool in hand; false when it cannot be. */
bool       trammel_tools_column_focus (TrammelToolsColumn *self);

G_END_DECLS
