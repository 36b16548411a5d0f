#pragma once
#include "drawing/part-symbols.h"
#include "drawing/sheet.h"

/** Where things stand on the sheet: shared by what paints them, what finds them under the pointer, and what measures the extent.
 *  Millimetres unless it says px. */

/** A place of the plan, mm, in pixels of the window: .x to the right, .y down. */
static inline Point
sheet_px (const SheetView *view, double x, double y)
{
  return view_to_screen (view, (Point) { x, y });
}

/* Boxes of any unit, mm or pixels. */
Box  box_empty   (void);                       /* holds nothing, not even a place */
bool box_is_empty (Box box);                   /* a single place or line is not */
Box  box_joined  (Box a, Box b);               /* the smallest around both; an empty one adds nothing */
Box  box_with    (Box box, Point place);       /* the smallest around the box and a place */
Box  box_grown   (Box box, double by);         /* by that much on all four sides, its own unit (mm or pixels); empty stays empty */
bool box_holds   (Box box, Point place);       /* the rim counts */
bool boxes_meet  (Box a, Box b);               /* whether they overlap; touching rims do not */
/** A box of the plan (x aft, y to starboard) as px (x to the right, y down). */
Box  box_to_screen (const SheetView *view, Box box);

Box  sheet_part_box    (const Part *part);       /* as it is turned, mm; its size may be 0 */
Box  sheet_part_own_box (const Part *part);      /* the same before it is turned */
/** Both halves; a fin: the line of its foot. */
Box  sheet_surface_box (const Surface *surface);
/** Both sides; with a side outline alone its line on the centre line; empty without either. */
Box  sheet_body_box    (const Body *body);
/** All that is drawn to scale, without signs and dimensions; empty for an empty aeroplane. */
Box  sheet_shapes_box  (const Aeroplane *aeroplane);
/** How far a dimension stands off the shapes, mm; 0 on an empty sheet. */
double sheet_dimension_gap (const Aeroplane *aeroplane);

/** Half the width, mm, of the widest body at x, mm; 0 where there is none. */
double sheet_half_width (const Aeroplane *aeroplane, double x);
/** Half the width, mm, of the widest body anywhere; 0 without one. */
double sheet_greatest_half_width (const Aeroplane *aeroplane);
/** Whether a horizontal surface lies on the body and hides it, rather than passing under or through it. */
bool   sheet_surface_covers_body (const Aeroplane *aeroplane, const Surface *surface);

/** The wanted band: its stations on either side, outside the body where fingers go, and its x. */
typedef struct { double inner, outer, forward_x, aft_x; } SheetBand;
/** Where it is drawn; false when there is no target, or no wing outside the body. */
bool sheet_band (const Figures *figures, SheetBand *band);
/** Where the neutral point is drawn, beside the body to port; false when there is none. */
bool sheet_neutral_point (const Figures *figures, Point *place);
/** Whether there is such a point to select; SHEET_POINT_NONE is none. */
bool sheet_has_point (const Figures *figures, SheetPoint point);
/** A mark's place at its own station, to starboard; false when it has none. */
bool sheet_mark_place (const Figures *figures, size_t mark, Point *place);
/** x, mm, at which a control's cut end at `station` meets the trailing edge; NAN where no end is cut (at the centre line, beyond the
 *  tip, hinge aft of it). */
double sheet_control_cut (const Surface *surface, double station, double hinge_x);
/** How a part is drawn: left out, still to come, settled, or selected. */
PartState part_state_of (const Part *part, bool selected);
/** Where a part's middle should be, mm aft of the datum, for its broken box; false when it stands there (within 1 mm), is left out, its
 *  rail does not reach, or nothing is known. */
bool sheet_proposed_x (const Figures *figures, const Part *part, double *x);
/** Where across the window, pixels, a part's rail is drawn: at the left of its box. */
double sheet_rail_px (const Look *look, const SheetView *view, const Part *part);

/** The grid's lines across the page alone, as they run on into the side view. */
void sheet_draw_levels (cairo_t *cr, const SheetScene *scene);
