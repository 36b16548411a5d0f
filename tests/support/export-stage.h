#pragma once
#include "app/export-preview.h"
#include "support/stage.h"

/** The dialog of prints and exports over the example, for tests of it. */

static inline TrammelWindow *
racer (void)
{
  return stage_open (stage_example ("saltmarsh-racer", "racer.trammel"));
}

static inline bool
preview_is_settled (gpointer preview)
{
  return trammel_export_preview_is_settled (preview);
}

static inline GtkWindow *
export_dialog (TrammelWindow *window)
{
  GtkWindow *dialog;

  gui_key ("<Control>e");
  dialog = gui_await_window ("Print or Export");
  gui_present (dialog);
  ck_assert (gui_wait (preview_is_settled, gui_find_type (GTK_WIDGET (dialog), TRAMMEL_TYPE_EXPORT_PREVIEW)));
  return dialog;
}
