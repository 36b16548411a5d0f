#include "figures/unweighed.h"

bool
airframe_is_weighed (const Aeroplane *aeroplane)
{
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_STRUCTURE); i++)
    if (structure_is_given (aeroplane_structure (aeroplane, i)))
      return true;
  return false;
}

bool
piece_is_unweighed (const Aeroplane *aeroplane, const Piece *piece)
{
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_STRUCTURE); i++)
    {
      const Structure *structure = aeroplane_structure (aeroplane, i);

      if (structure_is_given (structure) && g_strcmp0 (structure->of, piece->id) == 0)
        return false;
    }
  return true;
}

size_t
unweighed_pieces (const Aeroplane *aeroplane, const Piece *first[], size_t room)
{
  static const PieceKind kinds[] = { PIECE_SURFACE, PIECE_BODY };
  size_t found = 0;

  for (size_t k = 0; k < G_N_ELEMENTS (kinds); k++)
    for (size_t i = 0; i < aeroplane_count (aeroplane, kinds[k]); i++)
      {
        const Piece *piece = aeroplane_nth (aeroplane, kinds[k], i);

        if (!piece_is_unweighed (aeroplane, piece))
          continue;
        if (found < room)
          first[found] = piece;
        found++;
      }
  return found;
}

const Part *
weightless_slider (const Figures *figures)
{
  for (size_t i = 0; i < figures->solution_count; i++)
    {
      const Part *part = figures->solutions[i].part;

      if (part->aboard && !(part->mass > 0))
        return part;
    }
  return NULL;
}
