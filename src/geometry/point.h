#pragma once
#include <math.h>
#include <stdbool.h>

/** A place in the plan: x aft of the datum, y to starboard. The geometry room is homogeneous in length: any one unit,
 *  the caller's, and results in the same unit (areas in its square). The document's is the millimetre. */
typedef struct {
  double x;
  double y;
} Point;

static inline Point  point_add   (Point a, Point b)            { return (Point) { a.x + b.x, a.y + b.y }; }
static inline Point  point_sub   (Point a, Point b)            { return (Point) { a.x - b.x, a.y - b.y }; }
static inline Point  point_scale (Point a, double k)           { return (Point) { a.x * k, a.y * k }; }
static inline Point  point_mix   (Point a, Point b, double t)  { return (Point) { a.x + (b.x - a.x) * t, a.y + (b.y - a.y) * t }; }
static inline double point_distance (Point a, Point b)         { return hypot (a.x - b.x, a.y - b.y); }
static inline bool   point_is_finite (Point a)                 { return isfinite (a.x) && isfinite (a.y); }
