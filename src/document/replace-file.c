#define _GNU_SOURCE
#include "document/replace-file.h"
#include <errno.h>
#include <fcntl.h>
#include <glib.h>
#include <stdio.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

/** One replacement under way. */
typedef struct {
  int folder;               /* descriptor */
  char *name, *backup;      /* in the folder */
  char *temporary;          /* the new file's name for the moment; NULL while it has none */
  bool exists;
  struct stat old;          /* of the file that exists */
  int file;                 /* the new one; -1 none */
} Replacement;

/* The path that a chain of links ends in, whether it exists or not. */
static char *
follow_links (const char *path)
{
  char *at = g_strdup (path);

  for (int links = 0; links < 40; links++)
    {
      char *to = g_file_read_link (at, NULL), *folder;

      if (!to)
        break;
      folder = g_path_get_dirname (at);
      g_free (at);
      at = g_path_is_absolute (to) ? g_strdup (to) : g_build_filename (folder, to, NULL);
      g_free (folder);
      g_free (to);
    }
  return at;
}

static int
write_all (int file, const char *bytes, size_t length)
{
  while (length > 0)
    {
      const ssize_t done = write (file, bytes, length);

      if (done < 0 && errno == EINTR)
        continue;
      if (done < 0)
        return errno;
      bytes += done;
      length -= (size_t) done;
    }
  return 0;
}

/* A device or a pipe is written to, not replaced. */
static int
write_through (const char *path, const void *bytes, size_t length)
{
  const int file = open (path, O_WRONLY | O_CLOEXEC);
  int failed;

  if (file < 0)
    return errno;
  failed = write_all (file, bytes, length);
  if (close (file) < 0 && !failed)
    failed = errno;
  return failed;
}

static void
name_temporary (Replacement *self)
{
  self->temporary = g_strdup_printf (".%.200s.%08x", self->name, g_random_int ());
}

/* Without a name where the file system can; else under one of its own. */
static int
open_new (Replacement *self)
{
  self->file = openat (self->folder, ".", O_TMPFILE | O_WRONLY | O_CLOEXEC, 0666);
  if (self->file >= 0 && access ("/proc/self/fd", X_OK) == 0)
    return 0;
  if (self->file >= 0)
    close (self->file);
  name_temporary (self);
  self->file = openat (self->folder, self->temporary, O_CREAT | O_EXCL | O_WRONLY | O_CLOEXEC, 0666);
  if (self->file < 0)
    {
      g_clear_pointer (&self->temporary, g_free);
      return errno;
    }
  return 0;
}

/* Contents, permissions, and all of it on the disk. */
static int
fill_new (const Replacement *self, const void *bytes, size_t length)
{
  const int failed = write_all (self->file, bytes, length);

  if (failed)
    return failed;
  if (self->exists)
    {
      /* The group may not be ours to give; then its rights are not given either. */
      const bool same = fchown (self->file, (uid_t) -1, self->old.st_gid) == 0;

      if (fchmod (self->file, self->old.st_mode & (same ? 07777 : 07707)) < 0)
        return errno;
    }
  return fsync (self->file) < 0 ? errno : 0;
}

/* Gives the new file a name that must be free. */
static int
link_new (const Replacement *self, const char *name)
{
  g_autofree char *descriptor = g_strdup_printf ("/proc/self/fd/%d", self->file);

  return linkat (AT_FDCWD, descriptor, self->folder, name, AT_SYMLINK_FOLLOW) < 0 ? errno : 0;
}

/* Links the new file as the backup and lets the two change places. */
static bool
exchange (const Replacement *self)
{
  if (self->temporary || (unlinkat (self->folder, self->backup, 0) < 0 && errno != ENOENT) || link_new (self, self->backup) != 0)
    return false;
  if (renameat2 (self->folder, self->backup, self->folder, self->name, RENAME_EXCHANGE) == 0)
    return true;
  unlinkat (self->folder, self->backup, 0);
  return false;
}

static bool
copy_old (const Replacement *self)
{
  const int from = openat (self->folder, self->name, O_RDONLY | O_CLOEXEC);
  const int to = openat (self->folder, self->backup, O_CREAT | O_EXCL | O_WRONLY | O_CLOEXEC, self->old.st_mode & 0777);
  bool copied = from >= 0 && to >= 0;
  char buffer[65536];
  ssize_t got = 1;

  while (copied && got > 0)
    {
      got = read (from, buffer, sizeof buffer);
      copied = got >= 0 && write_all (to, buffer, (size_t) got) == 0;
    }
  if (from >= 0)
    close (from);
  if (to >= 0)
    close (to);
  return copied;
}

/* Where no exchange is possible the old file gets a second name, or a copy. A backup that cannot be had hinders no saving. */
static void
back_up (const Replacement *self)
{
  if (unlinkat (self->folder, self->backup, 0) < 0 && errno != ENOENT)
    return;
  if (linkat (self->folder, self->name, self->folder, self->backup, 0) < 0)
    copy_old (self);
}

static int
put_in_place (Replacement *self, bool backup)
{
  int failed;

  if (!self->exists && !self->temporary && link_new (self, self->name) == 0)
    return 0;
  if (self->exists && backup && exchange (self))
    return 0;
  if (!self->temporary)
    {
      name_temporary (self);
      if ((failed = link_new (self, self->temporary)) != 0)
        {
          g_clear_pointer (&self->temporary, g_free);
          return failed;
        }
    }
  if (self->exists && backup)
    back_up (self);
  if (renameat (self->folder, self->temporary, self->folder, self->name) < 0)
    return errno;
  g_clear_pointer (&self->temporary, g_free);
  return 0;
}

static int
replace_in_folder (Replacement *self, const void *bytes, size_t length, bool backup)
{
  int failed = open_new (self);

  if (failed)
    return failed;
  failed = fill_new (self, bytes, length);
  if (!failed)
    failed = put_in_place (self, backup);
  if (self->temporary)
    unlinkat (self->folder, self->temporary, 0);
  close (self->file);
  if (!failed)
    fsync (self->folder);      /* some file systems cannot, and need not */
  g_free (self->temporary);
  return failed;
}

static int
replace_at (const char *path, const void *bytes, size_t length, bool backup)
{
  g_autofree char *folder = g_path_get_dirname (path);
  g_autofree char *name = g_path_get_basename (path);
  g_autofree char *tilde = g_strconcat (name, "~", NULL);
  Replacement self = { .name = name, .backup = tilde, .file = -1 };
  int failed;

  self.exists = stat (path, &self.old) == 0;
  if (!self.exists && errno != ENOENT)      /* links in a circle, a folder that may not be entered */
    return errno;
  if (self.exists && S_ISDIR (self.old.st_mode))
    return EISDIR;
  if (self.exists && !S_ISREG (self.old.st_mode))
    return write_through (path, bytes, length);
  if (self.exists && faccessat (AT_FDCWD, path, W_OK, AT_EACCESS) < 0)
    return errno == EACCES ? EEXIST_PROTECTED : errno;
  self.folder = open (folder, O_RDONLY | O_DIRECTORY | O_CLOEXEC);
  if (self.folder < 0)
    return errno;
  failed = replace_in_folder (&self, bytes, length, backup);
  close (self.folder);
  return failed;
}

int
replace_file (const char *path, const void *bytes, size_t length, bool backup)
{
  g_autofree char *end = follow_links (path);

  return replace_at (end, bytes, length, backup);
}
