#include "figures/place-notes.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "figures/names.h"
#include "figures/notes.h"
#include "figures/part-places.h"

/* The view that tells how far aft a surface or a body stands; NULL none. A body's is that from above, which is reckoned with. */
static const PlanView *
view_of (const Aeroplane *aeroplane, const Piece *piece)
{
  const char *traced = piece->kind == PIECE_SURFACE ? ((const Surface *) piece)->traced
                     : piece->kind == PIECE_BODY ? ((const Body *) piece)->traced : NULL;

  return traced ? aeroplane_view_by_id (aeroplane, traced, NULL) : NULL;
}

/* Fins lift nothing up or down: where they stand the neutral point does not heed. */
static bool
moves_mark (const Piece *piece)
{
  return piece->kind != PIECE_SURFACE || surface_is_horizontal ((const Surface *) piece);
}

/* Of that number from 0, in the document's order; NULL: no more. */
static const Piece *
place_guessed (const Aeroplane *aeroplane, size_t number)
{
  for (size_t i = 0; i < aeroplane_piece_count (aeroplane); i++)
    {
      const Piece *piece = aeroplane_piece (aeroplane, i);
      const PlanView *view = view_of (aeroplane, piece);

      if (view && view->for_now && number-- == 0)
        return piece;
    }
  return NULL;
}

const Piece *
place_guessed_of_mark (const Aeroplane *aeroplane)
{
  const Piece *piece;

  for (size_t i = 0; (piece = place_guessed (aeroplane, i)); i++)
    if (moves_mark (piece))
      return piece;
  return NULL;
}

static void
note_bays (const Aeroplane *aeroplane, GPtrArray *notes)
{
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_PART); i++)
    if (!part_has_room (aeroplane, aeroplane_part (aeroplane, i)))
      notes_add (notes, NOTE_LOOK, &aeroplane_part (aeroplane, i)->piece,
                 _("None of the bays in which “%s” may be is there: give it others, or put their formers in."),
                 piece_name (&aeroplane_part (aeroplane, i)->piece));
}

void
place_note (const Figures *figures, GPtrArray *notes)
{
  const Piece *piece;

  for (size_t i = 0; (piece = place_guessed (figures->aeroplane, i)); i++)
    notes_add (notes, NOTE_LOOK, piece, moves_mark (piece)
               ? _("How far aft “%s” stands is a guess, and the balance mark with it: in the Plan tool, drag its view of the plan to its "
                   "own place, or type that place.")
               : _("How far aft “%s” stands is a guess: in the Plan tool, drag its view of the plan to its own place, or type that place."),
               piece_name (piece));
  note_bays (figures->aeroplane, notes);
}
