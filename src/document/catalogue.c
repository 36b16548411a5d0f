#include "document/catalogue-private.h"
#include <math.h>
#include <string.h>
#include "document/data-path.h"
#include "document/reader-bytes.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>

/* Counted too: catalogues share the entries that they did not change. */
typedef struct { CatalogueEntry *entry; gatomicrefcount references; } Shelved;

struct Catalogue {
  gatomicrefcount references;
  GPtrArray *entries;           /* of Shelved */
  GHashTable *places;           /* id -> place + 1; ids lent by the entries */
};

static void
shelved_unref (gpointer data)
{
  Shelved *shelved = data;

  if (!g_atomic_ref_count_dec (&shelved->references))
    return;
  catalogue_entry_free (shelved->entry);
  g_free (shelved);
}

/* One in the making: nobody else has it yet. */
static Catalogue *
catalogue_begin (const Catalogue *before)
{
  Catalogue *self = g_new0 (Catalogue, 1);

  g_atomic_ref_count_init (&self->references);
  self->entries = g_ptr_array_new_with_free_func (shelved_unref);
  self->places = g_hash_table_new (g_str_hash, g_str_equal);
  for (size_t i = 0; before && i < before->entries->len; i++)
    {
      Shelved *shelved = g_ptr_array_index (before->entries, i);

      g_atomic_ref_count_inc (&shelved->references);
      g_ptr_array_add (self->entries, shelved);
      g_hash_table_insert (self->places, shelved->entry->id, GUINT_TO_POINTER (self->entries->len));
    }
  return self;
}

/* Where its ids were met in the file that is being read. */
typedef struct { Catalogue *made; GHashTable *lines; Problems *problems; } Shelving;

static void
tell_twice (Shelving *shelving, const CatalogueEntry *entry, int line)
{
  g_autofree char *quote = problems_quote (entry->id, -1);

  problems_add (shelving->problems, READER_ERROR_VALUE, line, _("the id “%s” is used already in line %d; write another"), quote,
                GPOINTER_TO_INT (g_hash_table_lookup (shelving->lines, entry->id)));
}

static void
shelve (void *taker, CatalogueEntry *takes, int line)
{
  Shelving *shelving = taker;
  Catalogue *made = shelving->made;
  const guint place = GPOINTER_TO_UINT (g_hash_table_lookup (made->places, takes->id));
  Shelved *shelved;

  if (g_hash_table_contains (shelving->lines, takes->id))
    {
      tell_twice (shelving, takes, line);
      catalogue_entry_free (takes);
      return;
    }
  shelved = g_new0 (Shelved, 1);
  shelved->entry = takes;
  g_atomic_ref_count_init (&shelved->references);
  g_hash_table_insert (shelving->lines, takes->id, GINT_TO_POINTER (line));
  if (place == 0)
    {
      g_ptr_array_add (made->entries, shelved);
      g_hash_table_insert (made->places, takes->id, GUINT_TO_POINTER (made->entries->len));
      return;
    }
  g_hash_table_replace (made->places, takes->id, GUINT_TO_POINTER (place));      /* the key with it: it was the old entry's */
  shelved_unref (g_ptr_array_index (made->entries, place - 1));
  g_ptr_array_index (made->entries, place - 1) = shelved;
}

static Catalogue *
read_bytes (const Catalogue *before, const char *data, size_t length, Problems *problems)
{
  Shelving shelving = { catalogue_begin (before), g_hash_table_new (g_str_hash, g_str_equal), problems };

  if (reader_bytes_check (data, length, problems))
    catalogue_parse (data, length, &(CatalogueSink) { shelve, &shelving }, problems);
  g_hash_table_unref (shelving.lines);
  return shelving.made;
}

Catalogue *
catalogue_read_data (const Catalogue *before, const char *data, size_t length, const char *name, GPtrArray *texts)
{
  Problems *problems = problems_new (name);
  Catalogue *made = read_bytes (before, data, length, problems);

  problems_tell (problems, texts, NULL);
  problems_free (problems);
  return made;
}

Catalogue *
catalogue_read_file (const Catalogue *before, const char *path, GPtrArray *texts)
{
  Problems *problems = problems_new (path);
  GByteArray *bytes = reader_bytes_of_file (path, problems);
  Catalogue *made = bytes ? read_bytes (before, (const char *) bytes->data, bytes->len, problems) : catalogue_begin (before);

  if (bytes)
    g_byte_array_unref (bytes);
  problems_tell (problems, texts, NULL);
  problems_free (problems);
  return made;
}

char *
catalogue_own_path (void)
{
  return g_build_filename (g_get_user_data_dir (), "trammel", "catalogue.xml", NULL);
}

Catalogue *
catalogue_load (GPtrArray *problems)
{
  g_autofree char *path = data_path ("catalogue.xml"), *own = catalogue_own_path ();
  g_autoptr (Catalogue) usual = catalogue_read_file (NULL, path, problems);

  return g_file_test (own, G_FILE_TEST_EXISTS) ? catalogue_read_file (usual, own, problems) : g_steal_pointer (&usual);
}

Catalogue *
catalogue_ref (const Catalogue *self)
{
  Catalogue *counted = (Catalogue *) self;

  g_atomic_ref_count_inc (&counted->references);
  return counted;
}

void
catalogue_unref (Catalogue *self)
{
  if (!self || !g_atomic_ref_count_dec (&self->references))
    return;
  g_hash_table_unref (self->places);
  g_ptr_array_unref (self->entries);
  g_free (self);
}

size_t
catalogue_count (const Catalogue *self)
{
  return self->entries->len;
}

const CatalogueEntry *
catalogue_entry (const Catalogue *self, size_t index)
{
  return ((const Shelved *) g_ptr_array_index (self->entries, index))->entry;
}

const CatalogueEntry *
catalogue_find (const Catalogue *self, const char *id)
{
  const guint place = id ? GPOINTER_TO_UINT (g_hash_table_lookup (self->places, id)) : 0;

  return place > 0 ? catalogue_entry (self, place - 1) : NULL;
}

bool
catalogue_entry_matches (const CatalogueEntry *entry, const char *words)
{
  g_autofree char *all = g_strjoin ("\n", entry->name, entry->class_name, entry->id, entry->use, NULL);
  g_autofree char *folded = g_utf8_casefold (all, -1), *wanted = g_utf8_casefold (words, -1);
  g_auto (GStrv) each = g_strsplit_set (wanted, " \t\n", -1);

  for (char **word = each; *word; word++)
    if (!strstr (folded, *word))
      return false;
  return true;
}

/* 0 on a part is what NAN is in an entry: not given. */
static double
given (double value)
{
  return isnan (value) ? 0 : value;
}

void
catalogue_entry_give (const CatalogueEntry *entry, Part *part)
{
  part->cells = given (entry->cells);
  part->capacity = given (entry->capacity);
  part->rpm_per_volt = given (entry->rpm_per_volt);
  part->power = given (entry->power);
  part->current = given (entry->current);
  part->pitch = given (entry->pitch);
  part->input = 0;
}

Part *
catalogue_entry_part (const CatalogueEntry *entry)
{
  Part *part = part_new (NULL, entry->class_name);

  part->name = g_strdup (entry->name);
  part->kind = g_strdup (entry->id);
  part->mass = entry->mass;
  part->mass_sigma = entry->mass_sigma;
  part->length = entry->length;
  part->width = entry->width;
  part->height = entry->height;
  catalogue_entry_give (entry, part);
  return part;
}
