#pragma once
#include <string.h>
#include "figures/figures.h"

/** The figures of an aeroplane from a cache of their own; one reference. */
static inline Figures *
figures_once (const Aeroplane *aeroplane)
{
  FiguresCache *cache = figures_cache_new ();
  Figures *figures = figures_of (cache, aeroplane);

  figures_cache_free (cache);
  return figures;
}

/** The first note whose text holds these words; NULL when there is none. */
static inline const Note *
note_with (const Figures *figures, const char *words)
{
  for (guint i = 0; i < figures->notes->len; i++)
    {
      const Note *note = g_ptr_array_index (figures->notes, i);

      if (strstr (note->text, words))
        return note;
    }
  return NULL;
}
