#include "figures/piece-key.h"

static void
release_piece (gpointer piece)
{
  piece_unref (piece);
}

void
piece_key_clear (PieceKey *key)
{
  g_clear_pointer (&key->pieces, g_ptr_array_unref);
}

static bool
key_counts (const PieceKey *key, const Piece *piece)
{
  return key->kinds & (1u << piece->kind);
}

bool
piece_key_matches (const PieceKey *key, const Aeroplane *aeroplane)
{
  const size_t count = aeroplane_piece_count (aeroplane);
  size_t met = 0;

  if (!key->pieces)
    return false;
  for (size_t i = 0; i < count; i++)
    {
      const Piece *piece = aeroplane_piece (aeroplane, i);

      if (!key_counts (key, piece))
        continue;
      if (met == key->pieces->len || g_ptr_array_index (key->pieces, met) != piece)
        return false;
      met++;
    }
  return met == key->pieces->len;
}

void
piece_key_take (PieceKey *key, const Aeroplane *aeroplane)
{
  const size_t count = aeroplane_piece_count (aeroplane);
  GPtrArray *pieces = g_ptr_array_new_full ((guint) count, release_piece);

  for (size_t i = 0; i < count; i++)
    if (key_counts (key, aeroplane_piece (aeroplane, i)))
      g_ptr_array_add (pieces, piece_ref (aeroplane_piece (aeroplane, i)));
  piece_key_clear (key);
  key->pieces = pieces;
}
