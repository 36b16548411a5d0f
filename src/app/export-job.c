#include "trammel-config.h"
#include "app/export-job.h"
#include <glib/gi18n-lib.h>
#include "app/export-memory.h"
#include "app/window-private.h"

/* Shorter work is done before anybody could read that it is under way. */
enum { QUIET_MS = 500 };

/* Held by whatever is under way. */
typedef struct {
  Figures *figures;
  ExportOptions options;
  char *path, *remark;
  ExportReturned returned;
  TrammelWindow *window;
  GCancellable *cancellable;
  GPtrArray *files;             /* as they will be written; NULL until they are made */
  guint timer;                  /* will say that it takes its time; 0 once said or done */
} Job;

static void
job_clear (gpointer data)
{
  Job *job = data;

  figures_unref (job->figures);
  g_object_unref (job->window);
  g_object_unref (job->cancellable);
  g_clear_pointer (&job->files, g_ptr_array_unref);
  g_free (job->path);
  g_free (job->remark);
}

static void
job_unref (gpointer job)
{
  g_atomic_rc_box_release_full (job, job_clear);
}

/* All of it, before any file is touched. */
static void
make_in_thread (GTask *task, gpointer source, gpointer data, GCancellable *cancellable)
{
  Job *job = data;
  GError *error = NULL;

  job->files = export_files (job->figures, &job->options, job->path, &error);
  if (g_task_return_error_if_cancelled (task))
    g_clear_error (&error);
  else if (error != NULL)
    g_task_return_error (task, error);
  else
    g_task_return_boolean (task, TRUE);
}

static void
write_in_thread (GTask *task, gpointer source, gpointer data, GCancellable *cancellable)
{
  const Job *job = data;
  GError *error = NULL;

  if (g_task_return_error_if_cancelled (task))
    return;
  if (export_files_write (job->files, &error))
    g_task_return_boolean (task, TRUE);
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
job_start (Job *job, GTaskThreadFunc work, GAsyncReadyCallback arrived)
{
  g_autoptr (GTask) task = g_task_new (job->window, job->cancellable, arrived, NULL);

  job->timer = g_timeout_add_once (QUIET_MS, job_say_busy, job);
  /* Once written it is written: only what the thread itself gave up counts as cancelled. */
  g_task_set_check_cancellable (task, FALSE);
  g_task_set_task_data (task, g_atomic_rc_box_acquire (job), job_unref);
  g_task_run_in_thread (task, work);
}

/* What the thread did is over; false when it came to nothing, which is said. */
static bool
job_went_well (Job *job, GAsyncResult *result)
{
  g_autoptr (GError) error = NULL;

  g_clear_handle_id (&job->timer, g_source_remove);
  trammel_window_tell_busy (job->window, NULL, job->cancellable);
  if (g_task_propagate_boolean (G_TASK (result), &error))
    return !window_is_gone (job->window);
  if (!g_error_matches (error, G_IO_ERROR, G_IO_ERROR_CANCELLED) && !window_is_gone (job->window))
    job->returned (job->window, &job->options, error->message);
  return false;
}

static void
written (GObject *window, GAsyncResult *result, gpointer data)
{
  Job *job = g_task_get_task_data (G_TASK (result));
  g_autofree char *folder = g_path_get_dirname (job->path);
  g_autoptr (GVariant) target = g_variant_ref_sink (g_variant_new_string (folder));
  g_autofree char *action = g_action_print_detailed_name ("app.open-folder", target);
  g_autofree char *text = NULL;

  if (!job_went_well (job, result))
    return;
  export_memory_keep_folder (trammel_session_settings (trammel_window_session (job->window)), job->path);
  text = words_of_files (job->files);
  trammel_window_toast (job->window, text, _("_Open Folder"), action);
  if (job->remark != NULL)
    trammel_window_tell (job->window, job->remark);
}

static void
made (GObject *window, GAsyncResult *result, gpointer data)
{
  Job *job = g_task_get_task_data (G_TASK (result));

  if (job_went_well (job, result))
    job_start (job, write_in_thread, written);
}

void
export_job_run (TrammelWindow *window, const Figures *figures, const ExportOptions *options, const char *path, const char *remark,
                ExportReturned returned)
{
  Job *job = g_atomic_rc_box_new0 (Job);

  job->figures = figures_ref (figures);
  job->options = *options;
  job->path = g_strdup (path);
  job->remark = g_strdup (remark);
  job->returned = returned;
  job->window = g_object_ref (window);
  job->cancellable = g_cancellable_new ();
  job_start (job, make_in_thread, made);
  job_unref (job);
}
