#include "document/writer.h"
#include <errno.h>
#include "document/replace-file.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>

static char *
sentence_of (int reason, const char *path)
{
  g_autofree char *shown = g_filename_display_name (path);

  switch (reason)
    {
    case EEXIST_PROTECTED:
      return g_strdup_printf (_("“%s” was not saved: the file is write-protected. Save it under another name."), shown);
    case EACCES:
    case EPERM:
      return g_strdup_printf (_("“%s” was not saved: you may not write into that folder. Save it in another."), shown);
    case EROFS:
      return g_strdup_printf (_("“%s” was not saved: that disk cannot be written to. Save it on another."), shown);
    case ENOSPC:
    case EDQUOT:
      return g_strdup_printf (_("“%s” was not saved: the disk is full. Make room on it, or save on another."), shown);
    case EFBIG:
      return g_strdup_printf (_("“%s” was not saved: files as large as that are not allowed there. Save it in another folder."), shown);
    case ENOENT:
    case ENOTDIR:
      return g_strdup_printf (_("“%s” was not saved: there is no such folder. Save it in another."), shown);
    case EISDIR:
      return g_strdup_printf (_("“%s” was not saved: a folder has that name. Choose another name."), shown);
    case ENAMETOOLONG:
      return g_strdup_printf (_("“%s” was not saved: the name is too long. Choose a shorter one."), shown);
    case ELOOP:
      return g_strdup_printf (_("“%s” was not saved: it is a link that leads nowhere. Save it under another name."), shown);
    default:
      return g_strdup_printf (_("“%s” was not saved (%s). Save it in another folder."), shown, g_strerror (reason));
    }
}

bool
writer_replace_file (const char *path, const void *bytes, size_t length, bool backup, GError **error)
{
  const int reason = replace_file (path, bytes, length, backup);
  g_autofree char *sentence = reason ? sentence_of (reason, path) : NULL;

  if (reason)
    g_set_error_literal (error, G_FILE_ERROR, reason == EEXIST_PROTECTED ? G_FILE_ERROR_ACCES : g_file_error_from_errno (reason), sentence);
  return reason == 0;
}

bool
writer_save_file (const Aeroplane *aeroplane, const char *path, GError **error)
{
  size_t length;
  g_autofree char *text = writer_text (aeroplane, &length);

  return writer_replace_file (path, text, length, true, error);
}
