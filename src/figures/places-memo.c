#include "figures/places-memo.h"

typedef struct { GArray *places; Piece *part; bool asked; } KeptPlaces;

struct PlacesMemo {
  GHashTable *of;               /* of KeptPlaces, by part; each holds a reference to it */
  GPtrArray *rooms;             /* of Piece: bodies, bays and surfaces as they were looked into */
};

static void
kept_free (gpointer data)
{
  KeptPlaces *kept = data;

  g_array_unref (kept->places);
  piece_unref (kept->part);
  g_free (kept);
}

static void
room_free (gpointer room)
{
  piece_unref (room);
}

PlacesMemo *
places_memo_new (void)
{
  PlacesMemo *self = g_new (PlacesMemo, 1);

  self->of = g_hash_table_new_full (NULL, NULL, NULL, kept_free);
  self->rooms = g_ptr_array_new_with_free_func (room_free);
  return self;
}

void
places_memo_free (PlacesMemo *self)
{
  if (!self)
    return;
  g_hash_table_unref (self->of);
  g_ptr_array_unref (self->rooms);
  g_free (self);
}

static GPtrArray *
rooms_of (const Aeroplane *aeroplane)
{
  static const PieceKind kinds[] = { PIECE_BODY, PIECE_BAY, PIECE_SURFACE };
  GPtrArray *rooms = g_ptr_array_new_with_free_func (room_free);

  for (size_t k = 0; k < G_N_ELEMENTS (kinds); k++)
    for (size_t i = 0; i < aeroplane_count (aeroplane, kinds[k]); i++)
      g_ptr_array_add (rooms, piece_ref (aeroplane_nth (aeroplane, kinds[k], i)));
  return rooms;
}

static bool
same_rooms (const GPtrArray *one, const GPtrArray *other)
{
  if (one->len != other->len)
    return false;
  for (guint i = 0; i < one->len; i++)
    if (one->pdata[i] != other->pdata[i])
      return false;
  return true;
}

static gboolean
is_stale (gpointer part, gpointer data, gpointer all)
{
  KeptPlaces *kept = data;
  const bool stale = all || !kept->asked;

  kept->asked = false;
  return stale;
}

void
places_memo_turn (PlacesMemo *self, const Aeroplane *aeroplane)
{
  GPtrArray *rooms = rooms_of (aeroplane);
  const bool same = same_rooms (self->rooms, rooms);

  g_hash_table_foreach_remove (self->of, is_stale, GINT_TO_POINTER (!same));
  g_ptr_array_unref (self->rooms);
  self->rooms = rooms;
}

const GArray *
places_memo_of (PlacesMemo *self, const Aeroplane *aeroplane, const Part *part)
{
  KeptPlaces *kept = g_hash_table_lookup (self->of, part);

  if (!kept)
    {
      kept = g_new (KeptPlaces, 1);
      kept->places = part_places (aeroplane, part);
      kept->part = piece_ref (&part->piece);
      g_hash_table_insert (self->of, (gpointer) part, kept);
    }
  kept->asked = true;
  return kept->places;
}
