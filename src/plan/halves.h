#pragma once
#include "geometry/outline.h"

/** How two halves of one outline, each as the right half, differ. */
typedef struct {
  double most;        /* mm: how far they are apart at most */
  Point at;           /* there, on the mean of both */
  double mean;        /* mm: how far on the average */
} HalvesDifference;

/** The outline halfway between two halves that were drawn either side of one axis, fitted anew.
 *  a, b       half-outlines that run the same way, mm
 *  tolerance  of the fit, mm
 *  made       set on success (one reference, the caller's)
 *  difference set on success
 *  returns    CORE_OK, what curve_fit and outline_new return
 *  method     from each place of `a` half the way to the nearest of `b`; both ends stand at the mean of theirs */
CoreStatus halves_mean (const Outline *a, const Outline *b, double tolerance, Outline **made, HalvesDifference *difference);
