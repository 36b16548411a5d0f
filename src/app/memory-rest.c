#define _GNU_SOURCE               /* malloc_trim */
#include "app/memory-rest.h"
#include <glib.h>
#include <malloc.h>

static const guint rest_ms = 1000;
static guint rest;

static gboolean
memory_rest (gpointer nothing)
{
  rest = 0;
  malloc_trim (0);
  return G_SOURCE_REMOVE;
}

void
memory_rest_soon (void)
{
  g_clear_handle_id (&rest, g_source_remove);
  rest = g_timeout_add (rest_ms, memory_rest, NULL);
}
