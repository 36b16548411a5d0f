#pragma once
#include "drawing/flat-develop.h"
#include "drawing/export.h"
#include "figures/figures.h"

/** A half of a wing or tail, or a fin, that is being laid flat: what adds to it works with the surface's own places, as for starboard; a
 *  port half is turned over when all is on it. */
typedef struct {
  const Figures *figures;      /* lent, as is the surface */
  const Surface *surface;
  Units units;
  double side;                 /* 1 starboard and a fin, -1 port */
  FlatPiece *piece;
} FlatHalf;

/** The surface laid flat: one piece of each half that is asked for, a fin one. Adds them to `pieces`; nothing of one that is not drawn,
 *  or whose outline encloses no surface. */
void flat_surface_add (GPtrArray *pieces, const Figures *figures, const SurfaceFigures *surface, Units units, ExportHalves halves);
