#include "trammel-config.h"
#include "app/export-job.h"
#include <glib/gi18n-lib.h>
#include "app/window-private.h"

/* Shorter work is done before anybody could read that it is under way. */
enum { QUIET_MS = 500 };

typedef struct {
  Figures *figures;
  ExportOptions options;
  char *path;
  ExportFailed failed;
  TrammelWindow *window;        /* lent: the task keeps it */
  GCancellable *cancellable;
  guint timer;                  /* will say that it takes its time; 0 once said or done */
} Job;

static void
job_free (gpointer data)
{
  Job *job = data;

  figures_unref (job->figures);
  g_object_unref (job->cancellable);
  g_free (job->path);
  g_free (job);
}

/* The file is touched only when all of it is ready and nobody has changed their mind. */
static void
export_in_thread (GTask *task, gpointer source, gpointer data, GCancellable *cancellable)
{
  const Job *job = data;
  GError *error = NULL;
  g_autoptr (GPtrArray) files = export_files (job->figures, &job->options, job->path, &error);

  if (g_task_return_error_if_cancelled (task)) {
    g_clear_error (&error);
    return;
  }
  if (files != NULL && export_files_write (files, &error))
    g_task_return_pointer (task, g_steal_pointer (&files), (GDestroyNotify) g_ptr_array_unref);
  else
    g_task_return_error (task, error);
}

static void
job_say_busy (gpointer data)
{
  Job *job = data;
  g_autofree char *name = g_path_get_basename (job->path);
  /* Translators: %s is the name of the file that is being written. */
  g_autofree char *sentence = g_strdup_printf (_("Exporting %s…"), name);

  job->timer = 0;
  trammel_window_tell_busy (job->window, sentence, job->cancellable);
}

/* "Exported Saltmarsh.pdf"; of several the first and the last. A new string. */
static char *
words_of_files (const GPtrArray *files)
{
  const ExportFile *first = files->pdata[0], *last = files->pdata[files->len - 1];
  g_autofree char *name = g_path_get_basename (first->path), *name_of_last = g_path_get_basename (last->path);

  if (files->len > 1)
    /* Translators: the names of the first and the last of several files that were written. */
    return g_strdup_printf (_("Exported %s to %s"), name, name_of_last);
  /* Translators: %s is the name of the file that was written. */
  return g_strdup_printf (_("Exported %s"), name);
}

static void
export_arrived (GObject *window, GAsyncResult *result, gpointer data)
{
  Job *job = g_task_get_task_data (G_TASK (result));
  g_autofree char *folder = g_path_get_dirname (job->path);
  g_autoptr (GVariant) target = g_variant_ref_sink (g_variant_new_string (folder));
  g_autofree char *action = g_action_print_detailed_name ("app.open-folder", target);
  g_autoptr (GError) error = NULL;
  g_autofree char *text = NULL;
  g_autoptr (GPtrArray) files = NULL;

  g_clear_handle_id (&job->timer, g_source_remove);
  trammel_window_tell_busy (TRAMMEL_WINDOW (window), NULL, job->cancellable);
  files = g_task_propagate_pointer (G_TASK (result), &error);
  if (files == NULL) {
    if (!g_error_matches (error, G_IO_ERROR, G_IO_ERROR_CANCELLED) && !window_is_gone (TRAMMEL_WINDOW (window)))
      job->failed (TRAMMEL_WINDOW (window), &job->options, error->message);
    return;
  }
  text = words_of_files (files);
  trammel_window_toast (TRAMMEL_WINDOW (window), text, _("_Open Folder"), action);
}

void
export_job_run (TrammelWindow *window, const Figures *figures, const ExportOptions *options, const char *path, ExportFailed failed)
{
  Job *job = g_new0 (Job, 1);
  g_autoptr (GTask) task = NULL;

  job->figures = figures_ref (figures);
  job->options = *options;
  job->path = g_strdup (path);
  job->failed = failed;
  job->window = window;
  job->cancellable = g_cancellable_new ();
  job->timer = g_timeout_add_once (QUIET_MS, job_say_busy, job);
  task = g_task_new (window, job->cancellable, export_arrived, NULL);
  /* Once written it is written: only what the thread itself gave up counts as cancelled. */
  g_task_set_check_cancellable (task, FALSE);
  g_task_set_task_data (task, job, job_free);
  g_task_run_in_thread (task, export_in_thread);
}
