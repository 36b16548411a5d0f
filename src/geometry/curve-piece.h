#pragma once
#include "geometry/drawn-run.h"
#include "geometry/segment.h"

/* Private to the geometry room. */

/** A stretch of a measured run between two nodes. */
typedef struct {
  double from, to;                 /* along the run */
  RunPassage begin, end;           /* the nodes and the run's directions there */
} CurvePiece;

/** The cubic curve between the piece's nodes with their directions that lies nearest to the run; the line where that is none. */
Segment curve_piece_cubic (const DrawnRun *run, const CurvePiece *piece);

/** How far a segment passes the piece's places at most, averaged over every `window` (much less where nothing is trusted); >= 0, the
 *  run's unit (mm in a document), as is `window`. */
double curve_piece_miss (const DrawnRun *run, const CurvePiece *piece, const Segment *segment, double window);

/** The sum of the weighted squares by which the segment passes the piece's places, times their distance along the run: the run's unit
 *  cubed, in a document mm cubed. */
double curve_piece_cost (const DrawnRun *run, const CurvePiece *piece, const Segment *segment);
