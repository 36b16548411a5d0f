#pragma once
#include "geometry/outline.h"

/** Half-outlines for drawing plans of, invented: mm, root's leading edge at (0, 0), x aft, y to the tip. */
typedef enum {
  SHAPE_TAPER,          /* straight taper, rounded tip */
  SHAPE_ELLIPSE,        /* three semi-axes */
  SHAPE_CRANKED,        /* both edges bend at a station */
  SHAPE_BOWED,          /* bowed leading edge, a cut-out at the root of the trailing edge */
  SHAPE_SQUARE,         /* square-cornered tip */
  SHAPE_CONSTANT,       /* constant chord, elliptical tip */
  SHAPE_END
} PlanShape;

/** One reference, the caller's. */
Outline *plan_shape (PlanShape shape);
