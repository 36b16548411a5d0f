#pragma once
#include <gtk/gtk.h>
#include "drawing/export.h"

G_BEGIN_DECLS

#define TRAMMEL_TYPE_EXPORT_PREVIEW (trammel_export_preview_get_type ())
G_DECLARE_FINAL_TYPE (TrammelExportPreview, trammel_export_preview, TRAMMEL, EXPORT_PREVIEW, GtkWidget)

/** What an export will hold: a page as a picture, with the way to the others below it, or the list as text. Made away from the main thread; the
 *  last wish wins, and only the page that is shown is drawn. Actions: preview.previous, preview.next. */
GtkWidget *trammel_export_preview_new (void);
/** Shows that export of these figures, at the page that was shown; another sheet at its first. */
void trammel_export_preview_set (TrammelExportPreview *self, const Figures *figures, const ExportOptions *options);
/** Goes `by` pages on, negative back; false where no such page is. */
bool trammel_export_preview_turn (TrammelExportPreview *self, int by);
/** How many pages what was last set has; 0 while that is not known, or where it is text. */
size_t trammel_export_preview_count (TrammelExportPreview *self);
/** Whether what is shown is what was last set. */
bool trammel_export_preview_is_settled (TrammelExportPreview *self);

G_END_DECLS
