#pragma once
#include "geometry/outline.h"

/* Outlines that several tests build. Each function ends the test when the outline cannot be made, and gives one reference away. */

/** An outline of `count` segments, its nodes' kinds told from the shape. */
Outline *outline_from (Point start, const Segment segments[], size_t count);
/** A polygon through `count` nodes, left open between the last and the first. */
Outline *polygon_from (const Point nodes[], size_t count);
/** A straight or cranked taper. */
Outline *taper_from (const double station[], const double leading_x[], const double chord[], size_t count);
/** Two quarter ellipses, root leading edge at x_root. */
Outline *ellipse_from (double x_root, double semispan, double ahead, double behind);
/** A half wing of every kind of segment: a line, a curve, an arc, a curve with a bend, a line. Box 0..236 x 0..407. */
Outline *mixed_wing (void);
/** A body's half width, nose to tail, whose curves are smooth at every node. */
Outline *leaf_of_curves (void);
