#pragma once
#include "app/export-memory.h"
#include "app/export-preview.h"
#include "support/stage.h"

/** The dialog of prints and exports over the example, for tests of it. */

static inline GtkWidget *
export_preview (GtkWindow *dialog)
{
  return gui_find_type (GTK_WIDGET (dialog), TRAMMEL_TYPE_EXPORT_PREVIEW);
}

static inline bool
preview_is_settled (gpointer preview)
{
  return trammel_export_preview_is_settled (preview);
}

/** The page that is shown, once what was last chosen is. */
static inline GdkPaintable *
preview_page (GtkWindow *dialog)
{
  ck_assert (gui_wait (preview_is_settled, export_preview (dialog)));
  return gtk_picture_get_paintable (GTK_PICTURE (gui_find_type (GTK_WIDGET (dialog), GTK_TYPE_PICTURE)));
}

/** Opened with its key over that window, its page drawn. */
static inline GtkWindow *
export_dialog (TrammelWindow *window)
{
  GtkWindow *dialog;

  gui_key ("<Control>e");
  dialog = gui_await_window ("Print or Export");
  gui_present (dialog);
  ck_assert (gui_wait (preview_is_settled, export_preview (dialog)));
  return dialog;
}

/** Opened where that sheet in that format was chosen last: what takes long to lay out need not be waited for before another is chosen. */
static inline GtkWindow *
export_dialog_at (TrammelWindow *window, ExportSheet sheet, ExportFormat format)
{
  TrammelSettings *settings = trammel_application_settings (stage_application ());
  ExportOptions options = export_memory_read (settings);

  options.sheet = sheet;
  options.format = format;
  export_memory_keep (settings, &options);
  return export_dialog (window);
}

/** What a person reads in it, or a row by its title; NULL when it is not there. */
static inline GtkWidget *
export_row (GtkWindow *dialog, const char *title)
{
  return gui_find (GTK_WIDGET (dialog), title);
}

/** Types into the row of that title, in place of what it holds. */
static inline void
export_type (GtkWindow *dialog, const char *title, const char *text)
{
  gtk_widget_grab_focus (gui_await (GTK_WIDGET (dialog), title));
  gui_key ("<Control>a");
  gui_type (text);
  gui_settle ();
}

/** Presses Export… and gives the path. */
static inline void
export_to (GtkWindow *dialog, const char *path)
{
  gui_click (gui_await (GTK_WIDGET (dialog), "Export…"));
  stage_choose ("Export", path, true);
}
