#include "document/reader-bytes.h"
#include <errno.h>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>
#include "document/sniff.h"
#include "document/xml-scan.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>

enum { SIZE_MOST_MB = 64, SIZE_MOST = SIZE_MOST_MB * 1024 * 1024 };

static void
tell_scan (Problems *problems, ScanResult found, int line)
{
  switch (found)
    {
    case SCAN_SOUND:
      break;
    case SCAN_DECLARATION:
      problems_add (problems, READER_ERROR_HOSTILE, line,
                    _("a document type declaration (<!DOCTYPE …>) is not read; take it out"));
      break;
    case SCAN_ATTRIBUTES:
      problems_add (problems, READER_ERROR_HOSTILE, line,
                    _("more than %d attributes stand in one tag here; no document needs that, so nothing was read"), SCAN_ATTRIBUTES_MOST);
      break;
    case SCAN_ENCODING:
    case SCAN_NOT_UTF8:
      problems_add (problems, READER_ERROR_FOREIGN, line, _("this text is not UTF-8; save it as UTF-8"));
      break;
    }
}

static void
tell_too_large (Problems *problems)
{
  problems_add (problems, READER_ERROR_HOSTILE, 0,
                _("this file is larger than %d MB; no document needs that, so nothing was read"), SIZE_MOST_MB);
}

bool
reader_bytes_check (const char *data, size_t length, Problems *problems)
{
  const char *foreign = sniff_foreign (data, length);
  ScanResult found;
  int line;

  if (foreign)
    problems_add (problems, READER_ERROR_FOREIGN, 0, "%s", foreign);
  else if (length > SIZE_MOST)
    tell_too_large (problems);
  else if ((found = xml_scan (data, length, &line)) != SCAN_SOUND)
    tell_scan (problems, found, line);
  else
    return true;
  return false;
}

static void
tell_unreadable (Problems *problems, int reason)
{
  switch (reason)
    {
    case ENOENT:
    case ENOTDIR:
      problems_add (problems, READER_ERROR_UNREADABLE, 0, _("there is no such file; look at its name and folder"));
      break;
    case EACCES:
    case EPERM:
      problems_add (problems, READER_ERROR_UNREADABLE, 0, _("you may not read this file; ask its owner, or change its permissions"));
      break;
    case EISDIR:
      problems_add (problems, READER_ERROR_UNREADABLE, 0, _("this is a folder; name a file in it"));
      break;
    default:
      problems_add (problems, READER_ERROR_UNREADABLE, 0, _("this file cannot be read (%s); try a copy of it"), g_strerror (reason));
    }
}

/* All that can be read from the descriptor, one byte beyond the limit at most; NULL with errno. */
static GByteArray *
read_all (int file)
{
  GByteArray *bytes = g_byte_array_new ();
  guint length = 0;
  ssize_t got;

  do
    {
      g_byte_array_set_size (bytes, length + 65536);
      got = read (file, bytes->data + length, 65536);
      if (got > 0)
        length += (guint) got;
    }
  while ((got > 0 && length <= SIZE_MOST) || (got < 0 && errno == EINTR));
  g_byte_array_set_size (bytes, length);
  if (got < 0)
    g_clear_pointer (&bytes, g_byte_array_unref);
  return bytes;
}

GByteArray *
reader_bytes_of_file (const char *path, Problems *problems)
{
  const int file = open (path, O_RDONLY | O_CLOEXEC);
  GByteArray *bytes = file >= 0 ? read_all (file) : NULL;

  if (!bytes)
    tell_unreadable (problems, errno);
  if (file >= 0)
    close (file);
  if (bytes && bytes->len > SIZE_MOST)
    {
      tell_too_large (problems);
      g_clear_pointer (&bytes, g_byte_array_unref);
    }
  return bytes;
}
