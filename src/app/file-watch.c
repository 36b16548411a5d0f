#include "app/file-watch.h"

struct FileWatch {
  char *path;
  GFileMonitor *monitor;
  FileStamp known, last_told;
  FileWatchChanged changed;
  gpointer data;
};

static void
file_watch_look (FileWatch *self)
{
  const FileStamp now = file_stamp_of (self->path);

  /* A file that has gone is no danger: saving puts it back. */
  if (!now.there || file_stamp_equal (&now, &self->known) || file_stamp_equal (&now, &self->last_told))
    return;
  self->last_told = now;
  self->changed (self->data);
}

FileWatch *
file_watch_new (const char *path, const FileStamp *known, FileWatchChanged changed, gpointer data)
{
  FileWatch *self = g_new0 (FileWatch, 1);
  g_autoptr (GFile) file = g_file_new_for_path (path);

  self->path = g_strdup (path);
  self->known = self->last_told = *known;
  self->changed = changed;
  self->data = data;
  /* Where a disk cannot be watched, the look before saving still holds. */
  self->monitor = g_file_monitor_file (file, G_FILE_MONITOR_WATCH_MOVES, NULL, NULL);
  if (self->monitor != NULL) {
    g_file_monitor_set_rate_limit (self->monitor, 200);
    g_signal_connect_swapped (self->monitor, "changed", G_CALLBACK (file_watch_look), self);
  }
  return self;
}

void
file_watch_free (FileWatch *self)
{
  if (self == NULL)
    return;
  if (self->monitor != NULL)
    g_signal_handlers_disconnect_by_data (self->monitor, self);
  g_clear_object (&self->monitor);
  g_free (self->path);
  g_free (self);
}

const FileStamp *
file_watch_known (const FileWatch *self)
{
  return &self->known;
}

void
file_watch_accept (FileWatch *self, const FileStamp *known)
{
  self->known = self->last_told = *known;
}

void
file_watch_accept_now (FileWatch *self)
{
  const FileStamp now = file_stamp_of (self->path);

  file_watch_accept (self, &now);
}
