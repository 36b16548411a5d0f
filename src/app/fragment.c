#include "app/fragment.h"
#include "figures/figures.h"

static bool
piece_travels (const Piece *piece)
{
  return piece->id != NULL && (piece->kind == PIECE_SURFACE || piece->kind == PIECE_BODY || piece->kind == PIECE_PART);
}

static bool
piece_is_chosen (const Piece *piece, const Selection *selection)
{
  return piece_travels (piece) && selection_has (selection, piece->id);
}

/* A structure goes with what it is of, a lead with all its ends. */
static bool
piece_goes_with (const Piece *piece, const Selection *selection)
{
  if (piece->kind == PIECE_STRUCTURE) {
    const char *of = ((const Structure *) piece)->of;
    return of != NULL && selection_has (selection, of);
  }
  if (piece->kind == PIECE_LEAD) {
    const Lead *lead = (const Lead *) piece;
    return lead->from != NULL && lead->to != NULL && selection_has (selection, lead->from) && selection_has (selection, lead->to)
           && (lead->also == NULL || selection_has (selection, lead->also));
  }
  return piece_is_chosen (piece, selection);
}

/* Bays belong to the body they are in, so a part leaves them behind. */
static Piece *
piece_packed (const Piece *piece)
{
  Part *part;

  if (piece->kind != PIECE_PART || ((const Part *) piece)->bays == NULL)
    return piece_ref (piece);
  part = (Part *) piece_dup (piece);
  g_clear_pointer (&part->bays, g_free);
  return &part->piece;
}

static void
aeroplane_take (Aeroplane **self, Aeroplane *next)
{
  aeroplane_unref (*self);
  *self = next;
}

Aeroplane *
fragment_of (const Aeroplane *self, const Selection *selection)
{
  Aeroplane *fragment;

  if (fragment_count (self, selection) == 0)
    return NULL;
  fragment = aeroplane_new ();
  for (size_t i = 0; i < aeroplane_piece_count (self); i++) {
    const Piece *piece = aeroplane_piece (self, i);
    if (piece_goes_with (piece, selection))
      aeroplane_take (&fragment, aeroplane_with_added (fragment, piece_packed (piece)));
  }
  return fragment;
}

size_t
fragment_count (const Aeroplane *self, const Selection *selection)
{
  size_t count = 0;

  for (size_t i = 0; i < aeroplane_piece_count (self); i++)
    count += piece_is_chosen (aeroplane_piece (self, i), selection) ? 1 : 0;
  return count;
}

double
fragment_structures (const Aeroplane *fragment, size_t *count)
{
  FiguresCache *cache = figures_cache_new ();
  g_autoptr (Figures) figures = figures_of (cache, fragment);
  double mass = 0;

  *count = figures->structure_count;
  for (size_t i = 0; i < *count; i++)
    mass += figures->structures[i].mass_g;
  figures_cache_free (cache);
  return mass;
}

Selection
fragment_all (const Aeroplane *self)
{
  Selection all = selection_none ();

  for (size_t i = 0; i < aeroplane_piece_count (self); i++) {
    const Piece *piece = aeroplane_piece (self, i);
    if (piece_travels (piece))
      selection_toggle (&all, piece->id);
  }
  return all;
}
