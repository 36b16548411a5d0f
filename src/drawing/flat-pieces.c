#include "drawing/flat-pieces.h"
#include "drawing/flat-aids.h"
#include "drawing/flat-half.h"

static void
free_piece (gpointer data)
{
  flat_piece_free (data);
}

GPtrArray *
flat_pieces_of (const Figures *figures, Units units, ExportHalves halves)
{
  static FlatPiece *(*const aids[]) (const Figures *, Units) = { flat_lid_of, flat_hatch_frame_of, flat_floor_of, flat_strip_of, flat_stand_of };
  GPtrArray *pieces = g_ptr_array_new_with_free_func (free_piece);

  for (size_t i = 0; i < figures->surface_count; i++)
    flat_surface_add (pieces, figures, &figures->surfaces[i], units, halves);
  for (size_t i = 0; i < G_N_ELEMENTS (aids); i++)
    {
      FlatPiece *piece = aids[i] (figures, units);

      if (piece)
        g_ptr_array_add (pieces, piece);
    }
  return pieces;
}
