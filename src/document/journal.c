#include "document/journal.h"
#include <errno.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>
#include "document/journal-head.h"
#include "document/reader.h"
#include "document/writer.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>

struct Journal {
  char *file;       /* its own; made at the first put */
  char *path;       /* the document's; NULL none */
};

static char *
journal_folder (void)
{
  return g_build_filename (g_get_user_state_dir (), GETTEXT_PACKAGE, NULL);
}

/* No two journals ever have the same: one of an earlier run may be waiting to be looked at. */
static char *
free_name (void)
{
  g_autofree char *folder = journal_folder ();
  g_autofree char *name = g_strdup_printf ("%d-%08x%08x.journal", getpid (), g_random_int (), g_random_int ());

  return g_build_filename (folder, name, NULL);
}

Journal *
journal_new (const char *path)
{
  Journal *self = g_new0 (Journal, 1);

  self->file = free_name ();
  self->path = g_strdup (path);
  return self;
}

void
journal_set_path (Journal *self, const char *path)
{
  char *copy = g_strdup (path);

  g_free (self->path);
  self->path = copy;
}

void
journal_leave (Journal *self)
{
  if (!self)
    return;
  g_free (self->file);
  g_free (self->path);
  g_free (self);
}

void
journal_close (Journal *self)
{
  if (self)
    unlink (self->file);
  journal_leave (self);
}

/* The folder is for its owner's eyes alone. */
static bool
make_folder (const char *file, GError **error)
{
  g_autofree char *folder = g_path_get_dirname (file);

  if (g_mkdir_with_parents (folder, 0700) == 0)
    return true;
  g_set_error (error, G_FILE_ERROR, g_file_error_from_errno (errno),
               _("The folder “%s”, which keeps your work safe from a crash, cannot be made. Save often."), folder);
  return false;
}

bool
journal_put (Journal *self, const Aeroplane *aeroplane, GError **error)
{
  JournalHead head = journal_head_now ();
  g_autofree char *lines = NULL, *text = NULL;
  GString *whole;
  size_t length;
  bool done;

  if (!make_folder (self->file, error))
    return false;
  head.path = self->path;
  head.name = (char *) aeroplane_traits (aeroplane).name;      /* both only lent to it */
  lines = journal_head_text (&head);
  text = writer_text (aeroplane, &length);
  whole = g_string_new (lines);
  g_string_append_len (whole, text, (gssize) length);
  done = writer_replace_file (self->file, whole->str, whole->len, false, error);
  g_string_free (whole, TRUE);
  return done;
}

static void
entry_free (gpointer data)
{
  JournalEntry *entry = data;

  g_free (entry->file);
  g_free (entry->path);
  g_free (entry->name);
  g_free (entry);
}

/* The entry of an orphan; NULL for another file or one whose program runs. */
static JournalEntry *
entry_of (const char *folder, const char *name)
{
  g_autofree char *file = g_build_filename (folder, name, NULL);
  g_autofree char *text = NULL;
  JournalEntry *entry;
  JournalHead head;
  const char *body;

  if (!g_str_has_suffix (name, ".journal") || !g_file_get_contents (file, &text, NULL, NULL) || !journal_head_read (text, &head, &body))
    return NULL;
  if (journal_head_is_running (&head))
    {
      journal_head_clear (&head);
      return NULL;
    }
  entry = g_new0 (JournalEntry, 1);
  *entry = (JournalEntry) { g_steal_pointer (&file), head.path, head.name, head.time };
  return entry;
}

static int
entry_compare (gconstpointer a, gconstpointer b)
{
  const JournalEntry *one = *(JournalEntry *const *) a, *other = *(JournalEntry *const *) b;

  if (one->time != other->time)
    return one->time > other->time ? -1 : 1;
  return strcmp (one->file, other->file);
}

GPtrArray *
journal_list_orphans (void)
{
  g_autofree char *folder = journal_folder ();
  GPtrArray *orphans = g_ptr_array_new_with_free_func (entry_free);
  GDir *dir = g_dir_open (folder, 0, NULL);
  const char *name;

  while (dir && (name = g_dir_read_name (dir)))
    {
      JournalEntry *entry = entry_of (folder, name);

      if (entry)
        g_ptr_array_add (orphans, entry);
    }
  if (dir)
    g_dir_close (dir);
  g_ptr_array_sort (orphans, entry_compare);
  return orphans;
}

Aeroplane *
journal_recover (const JournalEntry *entry, Journal **journal, GError **error)
{
  g_autofree char *text = NULL;
  g_autoptr (Aeroplane) aeroplane = NULL;
  const char *body;
  JournalHead head;
  Journal *made;
  gsize length;

  if (!g_file_get_contents (entry->file, &text, &length, error))
    return NULL;
  if (!journal_head_read (text, &head, &body))
    {
      g_set_error (error, READER_ERROR, READER_ERROR_BROKEN, _("%s: this is not a journal; it was left where it is"), entry->file);
      return NULL;
    }
  journal_head_clear (&head);
  aeroplane = reader_read_data (body, length - (size_t) (body - text), entry->file, NULL, error);
  if (!aeroplane)
    return NULL;
  made = g_new0 (Journal, 1);
  made->file = g_strdup (entry->file);
  made->path = g_strdup (entry->path);
  if (!journal_put (made, aeroplane, error))      /* from here on it is this program's */
    {
      journal_leave (made);
      return NULL;
    }
  *journal = made;
  return g_steal_pointer (&aeroplane);
}
