#include "trammel-config.h"
#include "app/document-io.h"
#include <glib/gi18n-lib.h>
#include "document/reader.h"
#include "document/writer.h"

G_DEFINE_QUARK (document-io-error-quark, document_io_error)

typedef struct {
  char *path;
  Aeroplane *aeroplane;        /* to write, or what was read */
  PlanBeside *beside;          /* what is to be copied beside it; NULL: nothing */
  bool has_known;
  FileStamp known, stamp;
} Job;

static void
job_free (gpointer data)
{
  Job *job = data;

  g_free (job->path);
  aeroplane_unref (job->aeroplane);
  plan_beside_free (job->beside);
  g_free (job);
}

static void
job_start (Job *job, GTaskThreadFunc work, GAsyncReadyCallback done, gpointer data)
{
  g_autoptr (GTask) task = g_task_new (NULL, NULL, done, data);

  g_task_set_task_data (task, job, job_free);
  g_task_run_in_thread (task, work);
}

static Job *
result_job (GAsyncResult *result)
{
  return g_task_get_task_data (G_TASK (result));
}

static void
read_in_thread (GTask *task, gpointer source, gpointer data, GCancellable *cancellable)
{
  Job *job = data;
  GError *error = NULL;

  /* The stamp first: a change while reading is then seen as one. */
  job->stamp = file_stamp_of (job->path);
  job->aeroplane = reader_read_file (job->path, NULL, &error);
  if (job->aeroplane == NULL)
    g_task_return_error (task, error);
  else
    g_task_return_boolean (task, TRUE);
}

void
document_read_async (const char *path, GAsyncReadyCallback done, gpointer data)
{
  Job *job = g_new0 (Job, 1);

  job->path = g_strdup (path);
  job_start (job, read_in_thread, done, data);
}

Aeroplane *
document_read_finish (GAsyncResult *result, FileStamp *stamp, GError **error)
{
  Job *job = result_job (result);

  if (!g_task_propagate_boolean (G_TASK (result), error))
    return NULL;
  *stamp = job->stamp;
  return g_steal_pointer (&job->aeroplane);
}

const char *
document_read_path (GAsyncResult *result)
{
  return result_job (result)->path;
}

static bool
job_target_is_known (const Job *job)
{
  const FileStamp now = file_stamp_of (job->path);

  /* A file that has gone can be written again without losing anything. */
  return !job->has_known || !now.there || file_stamp_equal (&now, &job->known);
}

static void
write_in_thread (GTask *task, gpointer source, gpointer data, GCancellable *cancellable)
{
  Job *job = data;
  GError *error = NULL;

  if (!job_target_is_known (job)) {
    g_task_return_new_error (task, DOCUMENT_IO_ERROR, DOCUMENT_IO_ERROR_CHANGED, _("The file was changed by another program"));
    return;
  }
  if (!writer_save_file (job->aeroplane, job->path, &error)) {
    g_task_return_error (task, error);
    return;
  }
  job->stamp = file_stamp_of (job->path);
  plan_beside_copy (job->beside, job->path);
  g_task_return_boolean (task, TRUE);
}

void
document_write_async (const Aeroplane *aeroplane, const char *path, const FileStamp *known, PlanBeside *takes_beside,
                      GAsyncReadyCallback done, gpointer data)
{
  Job *job = g_new0 (Job, 1);

  job->path = g_strdup (path);
  job->aeroplane = aeroplane_ref (aeroplane);
  job->beside = takes_beside;
  job->has_known = known != NULL;
  if (known != NULL)
    job->known = *known;
  job_start (job, write_in_thread, done, data);
}

bool
document_write_finish (GAsyncResult *result, FileStamp *stamp, GError **error)
{
  if (!g_task_propagate_boolean (G_TASK (result), error))
    return false;
  *stamp = result_job (result)->stamp;
  return true;
}

const char *
document_write_path (GAsyncResult *result)
{
  return result_job (result)->path;
}

const PlanBeside *
document_write_beside (GAsyncResult *result)
{
  return result_job (result)->beside;
}

const Aeroplane *
document_write_aeroplane (GAsyncResult *result)
{
  return result_job (result)->aeroplane;
}
