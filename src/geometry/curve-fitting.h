#pragma once
#include "geometry/curve-fit.h"
#include "geometry/curve-piece.h"

/* Private to the geometry room. */

/** A fit under way: pieces from the run's first place to its last, in their order. */
typedef struct {
  const DrawnRun *run;
  const CurveFitOptions *options;
  CurvePiece *pieces;
  bool *line, *corner;             /* of each piece: whether it is a line; whether the node at its end is a corner */
  size_t count, room;
} CurveFitting;

/** The piece as it stands: its line, or the cubic that fits best between its nodes. */
Segment curve_fitting_segment (const CurveFitting *self, size_t piece);

/** Moves the nodes from first to last (0 is the run's beginning, count its end) across the run, between curves along it, and turns their
 *  directions, to where the pieces beside them fit best: what was measured over a few millimetres gives way to all of the two pieces. */
void    curve_fitting_polish (CurveFitting *self, size_t first, size_t last);

/** Takes out nodes between curves, and between a line and a curve, for as long as what is left keeps the tolerance: a node's direction
 *  measured over a few millimetres ends curves early that do fit when it is turned a little. Corners stay, and so do lines that are
 *  longer than what they would be merged with. */
void    curve_fitting_merge (CurveFitting *self);
