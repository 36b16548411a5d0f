#pragma once
#include "plan/axis-frame.h"

/** Where a picture lies beneath the sheet: through its mapping onto the paper, by a view's axis onto the aeroplane. A value. */
typedef struct {
  Mapping mapping;
  AxisFrame frame;
  double x;                /* where the axis' forward end stands, mm aft of the datum */
} Placing;

/** The place on the sheet, mm (x aft of the datum, y to starboard), of one in the picture, px of the file; NAN where there is none. */
Point placing_sheet (const Placing *self, Point px);
/** And back. */
Point placing_px    (const Placing *self, Point sheet);
