#include "trammel-config.h"
#include "app/brought-io.h"
#include <errno.h>
#include <glib/gi18n-lib.h>
#include <glib/gstdio.h>
#include <string.h>

static const char *const endings[] = { "svg", "svgz", "dxf", "csv", "tsv", "txt", NULL };

typedef struct {
  char *path, *name;
  GBytes *text;                /* NULL: the file's */
} Job;

static void
job_free (gpointer data)
{
  Job *job = data;

  g_free (job->path);
  g_free (job->name);
  g_clear_pointer (&job->text, g_bytes_unref);
  g_free (job);
}

const char *const *
brought_io_endings (void)
{
  return endings;
}

bool
brought_io_takes (const char *path)
{
  const char *dot = strrchr (path, '.');

  for (size_t i = 1; dot != NULL && endings[i] != NULL; i++)
    if (g_ascii_strcasecmp (dot + 1, endings[i]) == 0)
      return true;
  return false;
}

static GBytes *
unreadable (const char *name, const char *why, GError **error)
{
  g_set_error (error, G_IO_ERROR, G_IO_ERROR_FAILED, _("%s cannot be read: %s."), name, why);
  return NULL;
}

/* A pipe or a device would never end; a file of gigabytes is refused by its size. */
static GBytes *
job_load (Job *job, GError **error)
{
  GStatBuf about;
  char *text;
  size_t length;

  if (g_stat (job->path, &about) != 0)
    return unreadable (job->name, g_strerror (errno), error);
  if (!S_ISREG (about.st_mode))
    return unreadable (job->name, _("it is no file"), error);
  if (about.st_size > BROUGHT_BYTES_MOST)
    return unreadable (job->name, _("it is larger than 16 MB"), error);
  if (!g_file_get_contents (job->path, &text, &length, NULL))
    return unreadable (job->name, g_strerror (errno), error);
  return g_bytes_new_take (text, length);
}

static void
read_in_thread (GTask *task, gpointer source, gpointer data, GCancellable *cancellable)
{
  Job *job = data;
  GError *error = NULL;
  Brought *made;

  if (job->text == NULL)
    job->text = job_load (job, &error);
  made = job->text == NULL ? NULL : brought_read (g_bytes_get_data (job->text, NULL), g_bytes_get_size (job->text), job->name, &error);
  if (made == NULL)
    g_task_return_error (task, error);
  else
    g_task_return_pointer (task, made, (GDestroyNotify) brought_free);
}

static void
job_start (Job *job, GAsyncReadyCallback done, gpointer data)
{
  g_autoptr (GTask) task = g_task_new (NULL, NULL, done, data);

  g_task_set_task_data (task, job, job_free);
  g_task_run_in_thread (task, read_in_thread);
}

void
brought_io_read_async (const char *path, GAsyncReadyCallback done, gpointer data)
{
  Job *job = g_new0 (Job, 1);

  job->path = g_strdup (path);
  job->name = g_filename_display_basename (path);
  job_start (job, done, data);
}

void
brought_io_text_async (GBytes *text, const char *name, GAsyncReadyCallback done, gpointer data)
{
  Job *job = g_new0 (Job, 1);

  job->text = g_bytes_ref (text);
  job->name = g_strdup (name);
  job_start (job, done, data);
}

Brought *
brought_io_finish (GAsyncResult *result, GError **error)
{
  return g_task_propagate_pointer (G_TASK (result), error);
}
