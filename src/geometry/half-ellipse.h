#pragma once
#include <stdbool.h>
#include "geometry/drawn-run.h"

/** The outer part of a half-outline as two quarters of ellipses that share their tip: leading edge and trailing edge bend differently,
 *  as a wing of three semi-axes does. Lengths in the run's unit (mm). */
typedef struct {
  Point centre;              /* x aft, y outboard: where the quarters begin; y = 0 for a wing that is elliptical altogether */
  double ahead, behind;      /* semi-axes along x, > 0 */
  double outboard;           /* semi-axis along y, > 0 */
} HalfEllipse;

/** Fits a half-ellipse to what of a run lies outboard of its centre's station.
 *  run        a half-outline from its leading edge outboard to the tip and back
 *  from       the centre's station, >= 0: kept exactly when `held`, else where the search for it begins
 *  usual      how far places lie off as a rule, > 0; those further off count the less
 *  ellipse    set on success
 *  returns    CORE_OK; CORE_OUT_OF_RANGE where there is too little to trust or no ellipse comes out
 *  method     least squares on the distances, to first order, by Gauss–Newton's steps
 *  all lengths in the run's unit (mm) */
CoreStatus half_ellipse_fit (const DrawnRun *run, double from, bool held, double usual, HalfEllipse *ellipse);

/** How far it passes the run's places outboard of its centre's station, averaged over every `window` that is trusted, each counted as `most`
 *  at most: the root of the mean square, >= 0, infinite where nothing is trusted; and the share of windows *beyond that; the run's unit
 *  (mm). */
double half_ellipse_miss (const DrawnRun *run, const HalfEllipse *ellipse, double window, double most, double *beyond);
