#pragma once
#include <check.h>
#include <glib.h>
#include <string.h>
#include "document/reader.h"
#include "document/writer.h"

/* What the tests of documents share. New strings are the caller's; a test ends when one of these cannot do its work. */

static inline char *
samples_folder (void)
{
  return g_build_filename (g_getenv ("TRAMMEL_SOURCE_ROOT"), "tests", "document", "samples", NULL);
}

static inline char *
sample_path (const char *name)
{
  g_autofree char *folder = samples_folder ();

  return g_build_filename (folder, name, NULL);
}

static inline char *
file_text (const char *path, size_t *length)
{
  char *text = NULL;

  ck_assert_msg (g_file_get_contents (path, &text, length, NULL), "%s cannot be read", path);
  return text;
}

static inline Aeroplane *
read_bytes (const char *text, size_t length)
{
  g_autoptr (GError) error = NULL;
  Aeroplane *read = reader_read_data (text, length, "text", NULL, &error);

  ck_assert_msg (read != NULL, "%s", error ? error->message : "no reason");
  return read;
}

/** The aeroplane of these elements, its root with these attributes besides. */
static inline Aeroplane *
read_elements_of (const char *attributes, const char *elements)
{
  g_autofree char *text = g_strdup_printf ("<aeroplane xmlns=\"urn:trammel:aeroplane\" version=\"1\"%s>%s</aeroplane>", attributes, elements);

  return read_bytes (text, strlen (text));
}

/** The aeroplane of these elements. */
static inline Aeroplane *
read_elements (const char *elements)
{
  return read_elements_of ("", elements);
}

static inline Aeroplane *
read_sample (const char *name)
{
  g_autofree char *path = sample_path (name);
  size_t length;
  g_autofree char *text = file_text (path, &length);

  return read_bytes (text, length);
}

/** What is said of bytes that cannot be read, with its code. */
static inline char *
complaint_of (const char *text, size_t length, ReaderError code)
{
  g_autoptr (GError) error = NULL;
  char *sentence;

  ck_assert_ptr_null (reader_read_data (text, length, "text", NULL, &error));
  ck_assert_msg (error && error->domain == READER_ERROR && error->code == (int) code, "%s", error ? error->message : "no error");
  sentence = g_strdup (error->message);
  return sentence;
}

/** A fresh folder; folder_remove takes it away with all that is in it. */
static inline char *
folder_make (void)
{
  char *folder = g_dir_make_tmp ("trammel-test-XXXXXX", NULL);

  ck_assert_ptr_nonnull (folder);
  return folder;
}

static inline void
folder_remove (char *takes)
{
  const char *const command[] = { "rm", "-rf", takes, NULL };

  g_spawn_sync (NULL, (char **) command, NULL, G_SPAWN_SEARCH_PATH, NULL, NULL, NULL, NULL, NULL, NULL);
  g_free (takes);
}

static inline int
name_compare (gconstpointer a, gconstpointer b)
{
  return strcmp (*(const char *const *) a, *(const char *const *) b);
}

/** The names in a folder, sorted and joined by blanks. */
static inline char *
folder_names (const char *folder)
{
  GDir *dir = g_dir_open (folder, 0, NULL);
  GPtrArray *names = g_ptr_array_new_with_free_func (g_free);
  const char *name;
  char *joined;

  ck_assert_ptr_nonnull (dir);
  while ((name = g_dir_read_name (dir)))
    g_ptr_array_add (names, g_strdup (name));
  g_dir_close (dir);
  g_ptr_array_sort (names, name_compare);
  g_ptr_array_add (names, NULL);
  joined = g_strjoinv (" ", (char **) names->pdata);
  g_ptr_array_unref (names);
  return joined;
}
