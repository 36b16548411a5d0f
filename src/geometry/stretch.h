#pragma once
#include "geometry/segment.h"

/* Private to the geometry room. */

/** A segment together with the place where it begins, made ready to be evaluated often. */
typedef struct {
  Point from;
  Segment segment;       /* as it was given */
  SegmentKind kind;      /* as it is evaluated: an arc between two places in one direction from its centre is a line */
  Point power[4];        /* line, curve: the place is power[0] + power[1] t + power[2] t² + power[3] t³ */
  Point centre;          /* arc: the ellipse moved and grown (by rounding, at most by what outline_new lets pass) so that it */
  double rx, ry;         /*      runs exactly through both ends */
  double begin, sweep;   /* arc: the angle in the unit circle where it begins, and how far it goes (signed, at most half) */
} Stretch;

/** Makes a segment that begins at `from` ready; the segment is copied. */
Stretch stretch_make (Point from, const Segment *segment);

/** How far a place lies from the ellipse of an arc, >= 0, in the places' unit (mm in a document), to first order; infinite at its
 *  centre. */
double stretch_off_ellipse (Point place, const Segment *arc);

/** The place at t: the beginning for t <= 0 and the end for t >= 1, exactly; between 0 and 1 as segment_at. */
Point stretch_at (const Stretch *self, double t);
/** The derivative by t at t between 0 and 1, a length a unit of t. */
Point stretch_slope (const Stretch *self, double t);
/** Unit vector along the run at its beginning, also where a handle has no length; zero for a run without length. */
Point stretch_leaves (const Stretch *self);
/** Unit vector along the run at its end, likewise. */
Point stretch_arrives (const Stretch *self);
/** The farthest that the run between t0 and t1 (between 0 and 1) can lie from its chord, a length >= 0: the second derivative's
 *  bound times (t1 - t0)² / 8. */
double stretch_sagitta (const Stretch *self, double t0, double t1);
/** The run between t0 and t1 (between 0 and 1) as one curve with the same ends and tangents: exact for lines and
 *  curves (the whole of one, t0 0 and t1 1, as it is), within 2.8e-4 of the larger semi-axis for a quarter of an ellipse. */
Segment stretch_as_curve (const Stretch *self, double t0, double t1);
/** Twice the area between the run and the origin, counted positive from x towards y; the places' unit squared (mm² in a
 *  document). */
double stretch_twice_area (const Stretch *self, Point origin);
/** Tight box of the run between t0 < t1 (between 0 and 1). */
Box stretch_bounds (const Stretch *self, double t0, double t1);
/** Parameters between 0 and 1 (not within 1e-8 of an end, where a turn is less than rounding) at which y turns round, rising.
 *  Returns how many (at most 2). */
size_t stretch_y_turns (const Stretch *self, double t[2]);
/** Parameters between 0 and 1 at which x turns round, likewise. */
size_t stretch_x_turns (const Stretch *self, double t[2]);
/** The parameter, between 0 and 1, at which the run meets station y: between `low`, where it is below y, and `high`, where it is above;
 *  it must run one way between them. */
double stretch_t_at_station (const Stretch *self, double low, double high, double y);

/** Scalar product of two ways, in their unit squared (mm² in a document). */
static inline double point_dot (Point a, Point b)     { return a.x * b.x + a.y * b.y; }
/** Cross product of two ways, positive when b turns from x towards y of a; their unit squared (mm² in a document). */
static inline double point_cross (Point a, Point b)   { return a.x * b.y - a.y * b.x; }
/** Length of a way, >= 0, in its unit (mm in a document). */
static inline double point_length (Point a)           { return hypot (a.x, a.y); }
/** Whether two places are one, to the last bit; signed zeros are equal. */
static inline bool   point_same (Point a, Point b)    { return a.x == b.x && a.y == b.y; }

/** The box with a and b at opposite corners. */
static inline Box
box_around (Point a, Point b)
{
  return (Box) { .min = { fmin (a.x, b.x), fmin (a.y, b.y) }, .max = { fmax (a.x, b.x), fmax (a.y, b.y) } };
}

/** The smallest box around two. */
static inline Box
box_join (Box a, Box b)
{
  return (Box) { .min = { fmin (a.min.x, b.min.x), fmin (a.min.y, b.min.y) },
                 .max = { fmax (a.max.x, b.max.x), fmax (a.max.y, b.max.y) } };
}
