#pragma once
#include <gio/gio.h>
#include "app/file-stamp.h"

/** Watches one file and says when another program has changed it: its stamp is then no longer the one that we know. */
typedef struct FileWatch FileWatch;
typedef void (*FileWatchChanged) (gpointer data);

/** `known` is the file as last read or written; `changed` runs on the main loop, at most once for each new stamp. */
FileWatch       *file_watch_new   (const char *path, const FileStamp *known, FileWatchChanged changed, gpointer data);
void             file_watch_free  (FileWatch *self);             /* NULL is fine */
const FileStamp *file_watch_known (const FileWatch *self);
/** Takes the file as it is now for known: ours, or accepted. */
void             file_watch_accept     (FileWatch *self, const FileStamp *known);
void             file_watch_accept_now (FileWatch *self);      /* asks the disk */
