#pragma once
#include <math.h>
#include <stdbool.h>

/** A place in the plan: x aft of the datum, y to starboard. The geometry room is homogeneous in length: any one unit,
 *  the caller's, and results in the same unit (areas in its square). The document's is the millimetre. */
typedef struct {
  double x;
  double y;
} Point;

/** a moved by the way b. */
static inline Point  point_add   (Point a, Point b)            { return (Point) { a.x + b.x, a.y + b.y }; }
/** The way from b to a. */
static inline Point  point_sub   (Point a, Point b)            { return (Point) { a.x - b.x, a.y - b.y }; }
/** The way a, k times as long; k has no unit and may be negative. */
static inline Point  point_scale (Point a, double k)           { return (Point) { a.x * k, a.y * k }; }
/** The place at the fraction t of the way from a to b: a at 0; beyond b past 1. */
static inline Point  point_mix   (Point a, Point b, double t)  { return (Point) { a.x + (b.x - a.x) * t, a.y + (b.y - a.y) * t }; }
/** The straight distance, >= 0, in the places' unit (mm in a document). */
static inline double point_distance (Point a, Point b)         { return hypot (a.x - b.x, a.y - b.y); }
/** Whether neither coordinate is NaN or infinite. */
static inline bool   point_is_finite (Point a)                 { return isfinite (a.x) && isfinite (a.y); }
