#include "document/aeroplane-index.h"
#include <stdint.h>
#include <stdlib.h>
#include <string.h>

typedef struct { const char *id; guint32 hash, place; } IdEntry;

struct AeroplaneIndex {
  gatomicrefcount references;
  guint32 starts[PIECE_KIND_COUNT + 1];   /* into by_kind */
  guint32 *by_kind;                       /* places sorted by kind, in order within one */
  IdEntry *ids;                           /* sorted by hash, id, place; the texts are copies in `texts` */
  size_t id_count;
  char *texts;
};

static int
entry_compare (const void *a, const void *b)
{
  const IdEntry *one = a, *other = b;
  int order;

  if (one->hash != other->hash)
    return one->hash < other->hash ? -1 : 1;
  if ((order = strcmp (one->id, other->id)) != 0)
    return order;
  return one->place < other->place ? -1 : one->place > other->place;
}

static void
index_kinds (AeroplaneIndex *self, Piece *const pieces[], size_t count)
{
  guint32 next[PIECE_KIND_COUNT];

  for (size_t i = 0; i < count; i++)
    self->starts[pieces[i]->kind + 1]++;
  for (int kind = 0; kind < PIECE_KIND_COUNT; kind++)
    {
      self->starts[kind + 1] += self->starts[kind];
      next[kind] = self->starts[kind];
    }
  self->by_kind = g_new (guint32, count);
  for (size_t i = 0; i < count; i++)
    self->by_kind[next[pieces[i]->kind]++] = (guint32) i;
}

/* The texts are copied: the index outlives the pieces it was made from once an aeroplane with others of the same ids shares it. */
static void
index_ids (AeroplaneIndex *self, Piece *const pieces[], size_t count)
{
  size_t bytes = 0;
  char *text;

  for (size_t i = 0; i < count; i++)
    if (pieces[i]->id)
      bytes += strlen (pieces[i]->id) + 1, self->id_count++;
  text = self->texts = g_malloc (bytes);
  self->ids = g_new (IdEntry, self->id_count);
  self->id_count = 0;
  for (size_t i = 0; i < count; i++)
    if (pieces[i]->id)
      {
        self->ids[self->id_count++] = (IdEntry) { text, g_str_hash (pieces[i]->id), (guint32) i };
        text = stpcpy (text, pieces[i]->id) + 1;
      }
  if (self->id_count)
    qsort (self->ids, self->id_count, sizeof *self->ids, entry_compare);
}

AeroplaneIndex *
aeroplane_index_new (Piece *const pieces[], size_t count)
{
  AeroplaneIndex *self = g_new0 (AeroplaneIndex, 1);

  g_atomic_ref_count_init (&self->references);
  index_kinds (self, pieces, count);
  index_ids (self, pieces, count);
  return self;
}

AeroplaneIndex *
aeroplane_index_ref (AeroplaneIndex *self)
{
  g_atomic_ref_count_inc (&self->references);
  return self;
}

void
aeroplane_index_unref (AeroplaneIndex *self)
{
  if (!g_atomic_ref_count_dec (&self->references))
    return;
  g_free (self->by_kind);
  g_free (self->ids);
  g_free (self->texts);
  g_free (self);
}

size_t
aeroplane_index_count (const AeroplaneIndex *self, PieceKind kind)
{
  return self->starts[kind + 1] - self->starts[kind];
}

size_t
aeroplane_index_nth (const AeroplaneIndex *self, PieceKind kind, size_t nth)
{
  const size_t at = self->starts[kind] + nth;

  return at < self->starts[kind + 1] ? self->by_kind[at] : SIZE_MAX;
}

size_t
aeroplane_index_find (const AeroplaneIndex *self, const char *id)
{
  const IdEntry wanted = { id, g_str_hash (id), 0 };
  size_t low = 0, high = self->id_count;

  while (low < high)
    {
      const size_t middle = low + (high - low) / 2;

      if (entry_compare (&self->ids[middle], &wanted) < 0)
        low = middle + 1;
      else
        high = middle;
    }
  if (low < self->id_count && self->ids[low].hash == wanted.hash && strcmp (self->ids[low].id, id) == 0)
    return self->ids[low].place;
  return SIZE_MAX;
}
