#pragma once
#include <stddef.h>
#include "geometry/point.h"
#include "geometry/status.h"

typedef enum { SEGMENT_LINE, SEGMENT_CURVE, SEGMENT_ARC } SegmentKind;

/** One stretch of an outline. Where it begins is the node before it, so each function takes `from` as well.
 *  A curve is a cubic Bézier; an arc is a piece of an axis-parallel ellipse, taken the shorter way round
 *  (half-way round exactly: the side of greater y). Fields of the other kinds are zero. */
typedef struct {
  SegmentKind kind;
  Point to;                   /* where it ends */
  Point control1, control2;   /* curve: the handles, absolute */
  Point centre;               /* arc: the ellipse's middle */
  double rx, ry;              /* arc: semi-axes along x and along y, > 0 */
} Segment;

/** The box around something; empty when min exceeds max. */
typedef struct { Point min, max; } Box;

/* Nothing is checked until an outline is made of them. Lengths in any one unit, mm in a document. */

/** A straight line to `to`. */
Segment segment_line  (Point to);
/** A cubic curve to `to` with these handles, absolute places. */
Segment segment_curve (Point control1, Point control2, Point to);
/** A piece of the ellipse about `centre` with semi-axes rx along x and ry along y, both > 0 (mm in a document), to `to`. */
Segment segment_arc   (Point centre, double rx, double ry, Point to);

/** The place at parameter t between 0 and 1; exactly `from` at 0 and `to` at 1. An arc's t is proportional to its angle. */
Point segment_at (Point from, const Segment *segment, double t);
/** The derivative by t at t (between 0 and 1), a length a unit of t. Zero only where the segment stands still. */
Point segment_slope (Point from, const Segment *segment, double t);
/** Splits at t between 0 and 1 into two of the same kind that together run exactly where it ran. */
void segment_split (Point from, const Segment *segment, double t, Segment *first, Segment *second);
/** The same stretch run the other way: from its end to `from`. */
Segment segment_reversed (Point from, const Segment *segment);
/** Tight box around the stretch. */
Box segment_bounds (Point from, const Segment *segment);
/** Parameters between 0 and 1 (neither end) at which y turns round, rising order. Returns how many (at most 2). */
size_t segment_y_turns (Point from, const Segment *segment, double t[2]);
/** Parameters between 0 and 1 at which the stretch meets station y, rising order; touching ends included (for a line along the station
 *  both). Returns how many (at most 3). */
size_t segment_at_station (Point from, const Segment *segment, double y, double t[3]);
/** The parameter, between 0 and 1, of the place nearest to `point`; the distance, >= 0, in the places' unit goes to *distance (may be
 *  NULL). */
double segment_nearest (Point from, const Segment *segment, Point point, double *distance);
/** Length along the stretch, >= 0, in its places' unit (mm in a document), relative 1e-9. */
double segment_length (Point from, const Segment *segment);
/** An arc as cubic curves, at most 4, each within 3e-4 of the larger semi-axis; a line or curve as itself. Returns how many. */
size_t segment_as_curves (Point from, const Segment *segment, Segment curves[4]);
