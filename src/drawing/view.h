#pragma once
#include "geometry/outline.h"

/** Where the sheet is looked at from: the nose at the top, x running down, y to the right. screen = origin + mm × scale. */
typedef struct {
  double scale;              /* px a mm, > 0 */
  double origin_x, origin_y; /* px: where the centre line (y = 0) and the datum (x = 0) meet */
  double width, height;      /* px: of the window on the sheet */
} SheetView;

Point     view_to_screen   (const SheetView *view, Point place);     /* of a place, mm: .x to the right, .y down, px */
Point     view_from_screen (const SheetView *view, double x, double y);      /* and back, of pixels: .x aft, .y to starboard, mm */
/** The same window with the whole box, mm, inside, `margin` pixels around it; scale kept within 0.05..80 px a mm. Unchanged for an empty
 *  box. */
SheetView view_fitted      (const SheetView *view, Box box, double margin);
/** Zoomed by a factor > 0 about (x, y), pixels, which stays where it is; scale kept within 0.05..80 px a mm. */
SheetView view_zoomed      (const SheetView *view, double factor, double x, double y);
/** Everything moved dx pixels to the right and dy down. */
SheetView view_panned      (const SheetView *view, double dx, double dy);
