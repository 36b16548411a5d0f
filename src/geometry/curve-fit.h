#pragma once
#include "geometry/drawn-run.h"
#include "geometry/segment.h"

/** What a measured line becomes: straight lines and cubic curves through few nodes. */
typedef struct {
  Point start;
  Segment *segments;
  bool *corner;              /* of each segment: whether the node at its end is a corner (the last is) */
  size_t count;
} FittedCurve;

typedef struct {
  double tolerance;          /* how far a segment may pass the run's middle, averaged over `window` */
  double window;             /* a width or two of the line: what is shorter is grain */
  double reach;              /* over how much of the run a node's place and direction are measured, each way */
  double least_turn;         /* the smallest corner, radians */
} CurveFitOptions;

/** Fits a measured run with few lines and cubic curves that are tangent to each other except at corners, which are found. The first and
 *  last place are kept as they are. Where nothing is trusted (a gap) the curves go on as they come.
 *  all lengths in the run's unit (mm)
 *  made     set on success; fitted_curve_clear gives it back
 *  returns  CORE_OK; CORE_TOO_FEW_NODES for less than two places or no length; CORE_OUT_OF_RANGE where no place is trusted;
 *           CORE_NO_MEMORY
 *  method   from corner to corner: the longest line or curve that keeps the tolerance, then the next; handles by least squares with the
 *           feet drawn to the nearest places by Newton's steps
 *  source   Schneider, An Algorithm for Automatically Fitting Digitized Curves, Graphics Gems, 1990 */
CoreStatus curve_fit (const DrawnRun *run, const CurveFitOptions *options, FittedCurve *made);
void       fitted_curve_clear (FittedCurve *self);      /* frees what it holds; all zeros then, which may be cleared again */
