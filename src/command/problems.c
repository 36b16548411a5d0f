#include "command/problems.h"

#include <stdio.h>
#include "document/reader.h"

static Figures *
figures_alone (const Aeroplane *aeroplane)
{
  FiguresCache *cache = figures_cache_new ();
  Figures *figures = figures_of (cache, aeroplane);

  figures_cache_free (cache);
  return figures;
}

Figures *
problems_read (const char *path)
{
  g_autoptr (GPtrArray) problems = g_ptr_array_new_with_free_func (g_free);
  g_autoptr (GError) error = NULL;
  g_autoptr (Aeroplane) aeroplane = reader_read_file (path, problems, &error);

  if (aeroplane)
    return figures_alone (aeroplane);
  for (guint i = 0; i < problems->len && i < PROBLEMS_AT_MOST; i++)
    fprintf (stderr, "%s\n", (const char *) g_ptr_array_index (problems, i));
  if (!problems->len)
    fprintf (stderr, "%s\n", error->message);
  return NULL;
}

static void
print_problem (const Note *note, const char *path)
{
  if (note->piece && note->piece->line > 0)
    fprintf (stderr, "%s:%d: %s\n", path, note->piece->line, note->text);
  else
    fprintf (stderr, "%s: %s\n", path, note->text);
}

size_t
problems_of_figures (const Figures *figures, const char *path)
{
  size_t found = 0;

  for (guint i = 0; i < figures->notes->len; i++)
    {
      const Note *note = g_ptr_array_index (figures->notes, i);

      if (note->problem && found++ < PROBLEMS_AT_MOST)
        print_problem (note, path);
    }
  return found;
}
