#include "app/window-private.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "app/export-job.h"
#include "app/export-memory.h"
#include "app/file-chooser.h"

typedef struct { TrammelWindow *window; ReportList list; } Saving;

/* A list is one file: the chooser asked whether it is to be replaced. */
static void
save_returned (TrammelWindow *window, const ExportOptions *options, const char *sentence)
{
  trammel_window_tell (window, sentence);
}

static void
place_refused (gpointer data)
{
  Saving *saving = data;

  g_object_unref (saving->window);
  g_free (saving);
}

static char *
place_complete (const char *typed, gpointer data)
{
  return export_path_with (typed, EXPORT_CSV);
}

/* Written as the command line writes it: all of it or nothing. */
static void
place_chosen (const char *path, gpointer data)
{
  const Saving *saving = data;
  ExportOptions options = export_default_options ("");

  options.format = EXPORT_CSV;
  options.list = saving->list;
  export_job_run (saving->window, trammel_session_figures (saving->window->session), &options, path, NULL, save_returned);
  place_refused (data);
}

static void
save_list (GSimpleAction *action, GVariant *word, gpointer window)
{
  TrammelWindow *self = window;
  g_autofree char *folder = export_memory_folder (trammel_session_settings (self->session));
  Saving *saving;
  ReportList list;

  if (!report_list_from_word (g_variant_get_string (word, NULL), &list))
    return;
  saving = g_new0 (Saving, 1);
  saving->window = g_object_ref (self);
  saving->list = list;
  file_chooser_save (GTK_WINDOW (self), &(SaveChoice) {
    .heading = _("Save List"), .folder = folder, .folder_of = trammel_session_path (self->session), .name = report_list_word (list), .ending = ".csv",
    .kind = _("Comma-separated lists"), .complete = place_complete, .chosen = place_chosen, .refused = place_refused, .data = saving });
}

void
window_lists_begin (TrammelWindow *self)
{
  static const GActionEntry entries[] = { { .name = "save-list", .activate = save_list, .parameter_type = "s" } };

  g_action_map_add_action_entries (G_ACTION_MAP (self), entries, G_N_ELEMENTS (entries), self);
}
