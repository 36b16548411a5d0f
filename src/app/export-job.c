#include "trammel-config.h"
#include "app/export-job.h"
#include <glib/gi18n-lib.h>

typedef struct {
  Figures *figures;
  ExportOptions options;
  char *path;
} Job;

static void
job_free (gpointer data)
{
  Job *job = data;

  figures_unref (job->figures);
  g_free (job->path);
  g_free (job);
}

static void
export_in_thread (GTask *task, gpointer source, gpointer data, GCancellable *cancellable)
{
  const Job *job = data;
  GError *error = NULL;

  if (export_write (job->figures, &job->options, job->path, &error))
    g_task_return_boolean (task, TRUE);
  else
    g_task_return_error (task, error);
}

static void
export_arrived (GObject *window, GAsyncResult *result, gpointer data)
{
  const Job *job = g_task_get_task_data (G_TASK (result));
  g_autofree char *name = g_path_get_basename (job->path);
  g_autofree char *folder = g_path_get_dirname (job->path);
  g_autoptr (GVariant) target = g_variant_ref_sink (g_variant_new_string (folder));
  g_autofree char *action = g_action_print_detailed_name ("app.open-folder", target);
  g_autoptr (GError) error = NULL;
  g_autofree char *text = NULL;

  if (!g_task_propagate_boolean (G_TASK (result), &error)) {
    trammel_window_tell (TRAMMEL_WINDOW (window), error->message);
    return;
  }
  /* Translators: %s is the name of the file that was written. */
  text = g_strdup_printf (_("Exported %s"), name);
  trammel_window_toast (TRAMMEL_WINDOW (window), text, _("_Open Folder"), action);
}

void
export_job_run (TrammelWindow *window, const Figures *figures, const ExportOptions *options, const char *path)
{
  g_autoptr (GTask) task = g_task_new (window, NULL, export_arrived, NULL);
  Job *job = g_new0 (Job, 1);

  job->figures = figures_ref (figures);
  job->options = *options;
  job->path = g_strdup (path);
  g_task_set_task_data (task, job, job_free);
  g_task_run_in_thread (task, export_in_thread);
}
