#include "document/plan-file.h"
#include <errno.h>
#include <fcntl.h>
#include <limits.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>
#include "trammel-config.h"
#include <glib/gi18n-lib.h>

/* Whether each step of the path goes down: no root, no "..", nothing empty. */
static bool
goes_down (char *const steps[])
{
  for (; *steps; steps++)
    if (!**steps || strcmp (*steps, ".") == 0 || strcmp (*steps, "..") == 0)
      return false;
  return true;
}

static PlanFileStatus
status_of (int reason)
{
  switch (reason)
    {
    case ENOENT: return PLAN_FILE_MISSING;
    case ELOOP:
    case ENOTDIR: return PLAN_FILE_OUTSIDE;      /* a link on the way: with O_DIRECTORY it is no directory */
    default:     return PLAN_FILE_UNREADABLE;
    }
}

/* Step by step, each in the folder that was opened before: what is exchanged meanwhile leads nowhere else. Takes `folder`. */
static int
open_down (int folder, char *const steps[])
{
  int at = folder;

  for (; at >= 0 && *steps; steps++)
    {
      const int kind = steps[1] ? O_DIRECTORY : O_NONBLOCK;      /* a pipe must not keep anybody waiting */
      const int next = openat (at, *steps, O_RDONLY | O_CLOEXEC | O_NOFOLLOW | kind);
      const int reason = errno;

      close (at);
      errno = reason;
      at = next;
    }
  return at;
}

static PlanFileStatus
open_within (const char *document_path, const char *file, int *descriptor)
{
  g_autofree char *folder = g_path_get_dirname (document_path);
  g_auto (GStrv) steps = g_strsplit (file, "/", -1);
  struct stat about;
  int opened;

  if (!*steps || !goes_down (steps))
    return PLAN_FILE_OUTSIDE;
  opened = open (folder, O_RDONLY | O_CLOEXEC | O_DIRECTORY);
  if (opened < 0)
    return PLAN_FILE_MISSING;
  opened = open_down (opened, steps);
  if (opened < 0)
    return status_of (errno);
  if (fstat (opened, &about) != 0 || !S_ISREG (about.st_mode))
    {
      close (opened);
      return PLAN_FILE_UNREADABLE;
    }
  *descriptor = opened;
  return PLAN_FILE_SOUND;
}

char *
plan_file_checksum (int descriptor)
{
  g_autoptr (GChecksum) sum = g_checksum_new (G_CHECKSUM_SHA256);
  g_autofree guchar *bytes = g_malloc (65536);
  ssize_t got = 0;

  if (lseek (descriptor, 0, SEEK_SET) != 0)
    return NULL;
  while ((got = read (descriptor, bytes, 65536)) > 0 || (got < 0 && errno == EINTR))
    if (got > 0)
      g_checksum_update (sum, bytes, got);
  if (got < 0 || lseek (descriptor, 0, SEEK_SET) != 0)
    return NULL;
  return g_strconcat ("sha256:", g_checksum_get_string (sum), NULL);
}

PlanFileStatus
plan_file_open (const Plan *plan, const char *document_path, int *descriptor)
{
  g_autofree char *checksum = NULL;
  PlanFileStatus status;
  int opened;

  if (!plan->file)
    return PLAN_FILE_NONE;
  if (!document_path)
    return PLAN_FILE_UNSAVED;
  status = open_within (document_path, plan->file, &opened);
  if (status != PLAN_FILE_SOUND)
    return status;
  checksum = plan_file_checksum (opened);
  if (!checksum)
    {
      close (opened);
      return PLAN_FILE_UNREADABLE;
    }
  *descriptor = opened;
  return plan->checksum && g_ascii_strcasecmp (plan->checksum, checksum) != 0 ? PLAN_FILE_CHANGED : PLAN_FILE_SOUND;
}

const char *
plan_file_sentence (PlanFileStatus status)
{
  static const char *const sentences[PLAN_FILE_STATUS_COUNT] = {
    [PLAN_FILE_SOUND]      = N_("The plan’s picture is there, and as it was."),
    [PLAN_FILE_CHANGED]    = N_("The plan’s picture has changed since it was put here. "
                              "Look whether it still lies beneath the outline."),
    [PLAN_FILE_NONE]       = N_("This plan has no picture. Open one for it."),
    [PLAN_FILE_UNSAVED]    = N_("The plan’s picture is found from the document’s folder. Save the document beside it."),
    [PLAN_FILE_OUTSIDE]    = N_("The plan’s picture lies outside the document’s folder, or behind a link, and is not opened. "
                              "Copy it into that folder and open it for this plan."),
    [PLAN_FILE_MISSING]    = N_("The plan’s picture is no longer there. "
                              "Put it back into the document’s folder, or open another for this plan."),
    [PLAN_FILE_UNREADABLE] = N_("The plan’s picture cannot be read. Look at its permissions, or open another for this plan."),
  };

  return _(sentences[status]);
}

char *
plan_file_within (const char *document_path, const char *file_path)
{
  g_autofree char *folder = g_path_get_dirname (document_path);
  char *real_folder = realpath (folder, NULL), *real_file = realpath (file_path, NULL);
  const size_t length = real_folder ? strlen (real_folder) : 0;
  const char *rest = real_file && real_folder && g_str_has_prefix (real_file, real_folder) ? real_file + length : NULL;
  char *within = NULL;

  if (rest && *rest == '/' && rest[1])
    within = g_strdup (rest + 1);
  else if (rest && length == 1 && *rest)      /* the root itself */
    within = g_strdup (rest);
  free (real_folder);
  free (real_file);
  return within;
}
