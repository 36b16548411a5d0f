#pragma once
#include "drawing/export.h"
#include "drawing/flat-develop.h"
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

/** The surface laid flat: one piece of each half that is asked for, a fin one; of a tail or foreplane that is flat as it is, one
 *  of both. Adds them to `pieces`; nothing of one that is not drawn, or whose outline encloses no surface. */
void flat_surface_add (GPtrArray *pieces, const Figures *figures, const SurfaceFigures *surface, Units units, ExportHalves halves);

/** Both halves of one that is flat as they are, each with its edge as its first line, as one piece. */
FlatPiece *flat_halves_joined (const FlatPiece *starboard, const FlatPiece *port, const char *name);

/* What else is drawn on one. Each adds nothing where there is nothing of it. */
void flat_half_add_centre   (const FlatHalf *half);      /* the centre line, and where the dihedral breaks */
void flat_half_add_ribs     (const FlatHalf *half);
void flat_half_add_spars    (const FlatHalf *half);      /* what runs by the span and whose place is told */
void flat_half_add_marks    (const FlatHalf *half);      /* balance marks with their limits, on the reference wing */
void flat_half_add_controls (const FlatHalf *half);      /* hinge lines, bevels and throws */
void flat_half_add_parts    (const FlatHalf *half);      /* what is built into it on this side */
void flat_half_add_leads    (const FlatHalf *half);      /* the ways of leads within it on this side */

/** Adds words in capitals `caps` mm high that begin `off` mm right of and below where that place of the surface's own lies. */
void flat_half_add_words (const FlatHalf *half, FlatPurpose purpose, double caps, Point own, Point off, const char *text);
