#include "drawing/pdf-finish.h"
#include <stdbool.h>
#include <string.h>

/* What a trailer holds that the next one must repeat: object numbers, but for the last. */
typedef struct { guint64 size, root, info, table; } Trailer;

/* The last place of `key`; NULL where it is not. Streams hold zero bytes, which end no file. */
static const char *
last_of (const GString *file, const char *key)
{
  const size_t length = strlen (key);

  for (size_t at = file->len; at >= length; at--)
    if (memcmp (file->str + at - length, key, length) == 0)
      return file->str + at - length;
  return NULL;
}

static bool
number_behind (const char *text, const char *key, guint64 *number)
{
  const char *found = strstr (text, key);
  char *end;

  if (found == NULL)
    return false;
  *number = g_ascii_strtoull (found + strlen (key), &end, 10);
  return end != found + strlen (key);
}

static bool
read_trailer (const char *text, Trailer *trailer)
{
  return number_behind (text, "/Size", &trailer->size) && number_behind (text, "/Root", &trailer->root)
         && number_behind (text, "/Info", &trailer->info) && number_behind (text, "startxref", &trailer->table);
}

/* The catalogue names its tree of pages first; 0 where it is none. */
static guint64
pages_of (const char *file, guint64 root)
{
  g_autofree char *head = g_strdup_printf ("\n%" G_GUINT64_FORMAT " 0 obj\n<< /Type /Catalog", root);
  const char *catalogue = strstr (file, head);
  guint64 pages = 0;

  return catalogue != NULL && number_behind (catalogue, "/Pages", &pages) ? pages : 0;
}

static void
append_update (GString *file, const Trailer *trailer, guint64 pages, const char *language)
{
  const size_t catalogue = file->len;

  g_string_append_printf (file, "%" G_GUINT64_FORMAT " 0 obj\n<< /Type /Catalog\n   /Pages %" G_GUINT64_FORMAT " 0 R\n   /Lang (%s)\n"
                          "   /ViewerPreferences << /PrintScaling /None /DisplayDocTitle true >>\n>>\nendobj\n", trailer->root, pages, language);
  const size_t table = file->len;
  g_string_append_printf (file, "xref\n%" G_GUINT64_FORMAT " 1\n%010zu 00000 n \ntrailer\n<< /Size %" G_GUINT64_FORMAT "\n"
                          "   /Root %" G_GUINT64_FORMAT " 0 R\n   /Info %" G_GUINT64_FORMAT " 0 R\n   /Prev %" G_GUINT64_FORMAT "\n>>\n"
                          "startxref\n%zu\n%%%%EOF\n", trailer->root, catalogue, trailer->size, trailer->root, trailer->info, trailer->table, table);
}

GBytes *
pdf_finished (GBytes *takes, const char *language)
{
  size_t length;
  const char *bytes = g_bytes_get_data (takes, &length);
  GString *file = g_string_new_len (bytes, (gssize) length);
  const char *end = last_of (file, "trailer");
  /* Behind the last stream the file is a text, and the catalogue stands there. */
  const char *last = last_of (file, "endstream");
  Trailer trailer;
  const guint64 pages = end != NULL && last != NULL && read_trailer (end, &trailer) ? pages_of (last, trailer.root) : 0;

  if (pages == 0)
    {
      g_string_free (file, TRUE);
      return takes;
    }
  append_update (file, &trailer, pages, language);
  g_bytes_unref (takes);
  return g_string_free_to_bytes (file);
}
